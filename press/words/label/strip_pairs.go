package label

func (say Words) NoVerdict() string { return "No verdict: zone and push end are not known." }

// Means heads what the pairs mean.
func (say Words) Means(second bool) string {
	if second {
		return "means, second look"
	}
	return "means"
}
