package screen

func (say Words) EachWithAProbabilityOf() string { return "Each with a probability of" }
