package label

func (say Words) NoVerdict() string { return "No verdict: zone and push end are not known." }
