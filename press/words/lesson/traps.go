package lesson

import (
	"ramplan/press/words"
)

func (say Words) TrapsForce() string {
	return "Press the next part with the setting one step higher, and see what changes."
}

func (say Words) TrapsGoOn() string { return "Nothing: with these lamps there is nothing to check." }

func (say Words) TrapsGoOnWhy(says string) string {
	return says + " A lamp that is stuck on shows the same."
}

func (say Words) TrapsGoOnWipe() string { return "Wipe the nest and go on with the next part." }

func (say Words) TrapsGoOnWipeWhy(says string, orWords string) string {
	return says + " That is " + orWords + ". Whoever goes on without looking for the cause gets it again with the next part."
}

func (say Words) TrapsWiden() string { return "Move the zone until both lamps come on." }

func (say Words) TrapsPass() string { return "Pass the part on." }

func (say Words) TrapsPassWhy(says string, orWords string) string {
	return says + " That is " + orWords + ". Only a part that is surely good is passed on."
}

func (say Words) HandsAndLamps(hands string) string {
	return hands + ". The lamps are no safety function."
}

func (say Words) AgainAfterProbe() string {
	return "A part that is pressed a second time is seated already. The probe finds nothing to stall in and refuses it: that says nothing about the first push."
}

func (say Words) AgainMayShow(on words.Pair) string {
	return "A part that is pressed a second time may be seated by then, and may show " + on.String() + ", whatever it showed before"
}

func (say Words) SpoiledWouldPass(s string) string {
	return s + ": a spoiled joint would pass as good."
}

func (say Words) SaysNothingOfTheFirst(s string) string {
	return s + ": that says nothing about the first push."
}

func (say Words) ReadsTheSameAgain(unsure float64) string {
	return "The same part reads the same again, within " + say.Length(unsure) + ": a second push shows nothing new and may spoil the part."
}

func (say Words) ZoneIsOfThePlan(at string, at2 string) string {
	return "The zone is part of the plan. By the drawing, readings from " + at + " to " + at2 + " are good"
}

func (say Words) BothOnFrom(from float64, to float64) string {
	return "; both lamps are on from " + say.Bare(from) + " to " + say.At(to)
}

func (say Words) MovedZoneLetsPass(s string, heightHigh float64, heightLow float64) string {
	return s + ". A zone that is moved to make one part look good lets others pass that are taller than " +
		say.At(heightHigh) + " or shorter than " + say.At(heightLow) + "."
}

func (say Words) SettingIsOfThePlan(setting float64, high float64, cap float64) string {
	return "The setting of " + say.Setting(setting) + " is part of the plan. A strong ram pushes " + say.Force(high) + " with it; part and tool bear " + say.Force(cap) + " at most."
}

func (say Words) OneStepMore(size float64) string {
	return " One step more moves the reading of a nominal part by " + say.Length(size) + ", so every verdict moves with it."
}
