package label

func (say Words) MeanOffAxis() string { return "mean height off by, mm" }

func (say Words) SpreadAxis() string { return "tolerances of the parts, times" }

func (say Words) NestWornAxis() string { return "nest worn by, mm" }

func (say Words) PPMAxis() string { return "ppm of all parts" }

func (say Words) WrongAccepted() string { return "wrong accepted" }

func (say Words) GoodRefused() string { return "good refused" }

func (say Words) ItsTarget() string { return "its target" }

func (say Words) BothTargets() string { return "both targets" }
