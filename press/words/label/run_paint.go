package label

func (say Words) RamPositionDownAxis() string { return "ram position, mm, downward" }

func (say Words) SignalsLookedAt() string { return "the signals are looked at" }
