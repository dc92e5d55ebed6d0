package label

import (
	"ramplan/press/words"
)

func (say Words) SettingAxis() string { return "setting, %" }

func (say Words) CurveForceAxis() string { return "force of the curve, N" }

func (say Words) AndMorePoints(n int) string {
	return "and " + words.Fixed(float64(n), 0) + " more points"
}
