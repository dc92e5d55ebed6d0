package label

func (say Words) Continued(title string) string { return title + ", continued" }
