package label

func (say Words) TimeS() string { return "time, s" }

func (say Words) RamPositionMm() string { return "ram position, mm" }
