package screen

func (say Words) UnnamedPlan() string { return "Plan without a name yet" }

func (say Words) DamagedState() string { return "Damaged: it is not what was stored." }

func (say Words) NoSoundPlan() string { return "no sound plan" }

func (say Words) WrittenOtherwise() string {
	return "The same entries, written otherwise"
}

func (say Words) StateBroughtBack(state string) string { return "State " + state + " brought back" }
