package label

import (
	"ramplan/press/words"
)

func (say Words) SettingAxis() string { return "setting, %" }

func (say Words) ForceOfTheCurveN() string { return "force of the curve, N" }

func (say Words) AndMorePoints(float64 float64) string {
	return "and " + words.Fixed(float64, 0) + " more points"
}
