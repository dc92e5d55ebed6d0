package screen

func (say Words) StationInMotion() string { return "Station in motion" }

func (say Words) TheHeightIsNoNumber() string { return "The height is no number." }
