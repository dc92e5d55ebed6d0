package label

func (say Words) ContinuedFromFront() string { return "Continued from page 1" }
