package label

func (say Words) ContinuedFromFront() string { return "Continued from page 1" }

func (say Words) StudiesDrawn() string { return "Studies of the station, drawn" }
