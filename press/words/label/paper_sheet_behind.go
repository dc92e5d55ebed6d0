package label

func (say Words) ContinuedFromPage1() string { return "Continued from page 1" }
