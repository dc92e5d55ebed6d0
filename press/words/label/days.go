package label

import "ramplan/press/words"

func (say Words) MeanOffAxis() string { return "mean height off by, mm" }

func (say Words) SpreadAxis() string { return "tolerances of the parts, times" }

func (say Words) NestWornAxis() string { return "nest worn by, mm" }

func (say Words) PPMAxis() string { return "ppm of all parts" }

func (say Words) WrongAccepted() string { return "wrong accepted" }

func (say Words) GoodRefused() string { return "good refused" }

func (say Words) AcceptTarget() string { return "target, accepted" }

func (say Words) RejectTarget() string { return "target, refused" }

func (say Words) TimesAsWide(x float64) string { return "× " + words.Fixed(words.KeptFactor(x), 2) }

func (say Words) OffBy(pos words.Positions, x float64) string { return pos.Length(words.KeptLength(x)) }

func (say Words) BothTargets() string { return "both targets" }
