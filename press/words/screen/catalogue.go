package screen

func (say Words) EachWithProbability() string { return "Each with a probability of" }
