package label

func (say Words) ForceText(from float64, to float64) string {
	return "Push force against setting, from " + say.Setting(from) + " to " + say.Setting(to) + "."
}

func (say Words) NeededAndBorne(need float64, most float64) string {
	return "Needed: " + say.Force(need) + ". Part and tool may bear: " + say.Force(most) + "."
}

func (say Words) SettingsInWindow(from float64, to float64) string {
	return "Settings from " + say.Setting(from) + " to " + say.Setting(to) + " lie in the window."
}

func (say Words) NoSettingInWindow() string { return "No setting lies in the window." }

func (say Words) ForceAtSetting(setting float64, low float64, high float64, typical float64) string {
	return "At " + say.Setting(setting) + " the ram pushes " + say.Force(low) + " to " + say.Force(high) + ", typically " + say.Force(typical) + "."
}

func (say Words) SettingOfRatedAxis() string { return "setting, % of the rated motor current" }

func (say Words) PushForceAxis() string { return "push force at the tool, N" }

func (say Words) SettingStepsAxis(step float64, step2 float64) string {
	return "setting, %; to be set every " + say.Setting(step) + ", a tick every " + say.Setting(step2)
}

func (say Words) StrongRam() string { return "strong ram" }

func (say Words) WeakRam() string { return "weak ram" }

func (say Words) FirstStep() string { return "first step" }

func (say Words) LastStep() string { return "last step" }

func (say Words) WindowOfForce() string { return "seats every part, overloads none" }
