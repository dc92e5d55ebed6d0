package label

import (
	"ramplan/press"
	"ramplan/press/words"
)

// ForcesTitle is the message of the measured forces.
func (say Words) ForcesTitle(known bool, force, setting float64, in, open, out int) string {
	s := ""
	if known {
		s = "The ram pushes " + say.Force(force) + " at " + say.Setting(setting) + "; "
	}
	n := in + open + out
	switch {
	case n == 0:
		s += "no setting lies on the plan's curve"
	case out > 0:
		s += counting(out, "setting", "settings") + " of " + whole(n) + " outside the plan's band"
	case open > 0:
		s += counting(open, "setting", "settings") + " of " + whole(n) + " not decided"
	default:
		s += "every setting inside the plan's band"
	}
	return words.UpperFirst(s)
}

func (say Words) MeasuredSettingAxis() string { return "setting, %" }

func (say Words) MeasuredForceAxis() string { return "force at the tool, N" }

func (say Words) ForceApartAxis() string { return "off the plan's typical force by, N" }

func (say Words) CapIs(n float64) string { return "cap " + say.Force(n) }

func (say Words) NeedIs(n float64) string { return "need " + say.Force(n) }

func (say Words) PlanTypical() string { return "plan, typical" }

func (say Words) PlanSetting(setting float64) string { return "plan " + say.Setting(setting) }

func (say Words) OneMorePush() string { return "one more push falls here (95 %)" }

// PlaceKey says what the mark of a mean means.
func (say Words) PlaceKey(place string) string {
	switch place {
	case "inside":
		return "mean; that push stays in the band"
	case "outside":
		return "mean; off the band"
	}
	return "mean; not decided"
}

func (say Words) PushesReach(drawn, all int) string {
	if drawn == 0 {
		return whole(all) + " pushes, drawn at each setting from lowest to highest"
	}
	return whole(drawn) + " of " + whole(all) + " pushes drawn one by one, the others from lowest to highest"
}

func (say Words) NeedAndCap(need, most float64) string {
	return "Needed: " + say.Force(need) + ". Part and tool may bear: " + say.Force(most) + "."
}

func (say Words) AtSettingPredicted(setting, force, low, high float64) string {
	return "At " + say.Setting(setting) + " the ram pushes " + say.Force(force) + "; one more push falls between " + say.Force(low) + " and " + say.Force(high) + " (95 %)."
}

func (say Words) AtSettingFound(setting, force float64) string {
	return "At " + say.Setting(setting) + " the ram pushes " + say.Force(force) + "."
}

// SettingMeasured tells of the pushes at one setting.
func (say Words) SettingMeasured(setting float64, n int, mean float64, predict *press.Pair, plan *[3]float64, place *string) string {
	s := say.Setting(setting) + ": " + counting(n, "push", "pushes") + ", mean " + say.Force(mean)
	if predict != nil {
		s += ", one more " + say.Force(predict[0]) + " to " + say.Force(predict[1])
	}
	if plan == nil {
		return s + "; the plan's curve does not reach there."
	}
	s += "; plan " + say.Force(plan[0]) + " to " + say.Force(plan[2])
	if place != nil && *place == "inside" {
		return s + ", inside."
	}
	if place != nil && *place == "outside" {
		return s + ", outside."
	}
	return s + ", not decided."
}
