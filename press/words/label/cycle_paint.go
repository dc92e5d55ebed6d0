package label

func (say Words) TimeAxis() string { return "time, s" }

func (say Words) RamPositionAxis() string { return "ram position, mm" }
