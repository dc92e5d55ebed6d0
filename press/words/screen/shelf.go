package screen

func (say Words) PlansRamplan() string { return "Plans · ramplan" }

func (say Words) BinRamplan() string { return "Bin · ramplan" }

func (say Words) InTheBin(counted string) string { return counted + " in the bin" }

func (say Words) IsInTheBin(titled string) string { return titled + " is in the bin." }

func (say Words) NothingHolds(trimSpace string) string {
	return "Nothing holds “" + trimSpace + "”."
}

func (say Words) ThePlanWithoutAName() string { return "The plan without a name" }

func (say Words) WithoutANameYet() string { return "Without a name yet" }

func (say Words) HasThisDigestItIs() string {
	return " has this digest; it is the last that was issued."
}

func (say Words) HadThisDigest(revision string) string {
	return " has this digest; it is " + say.SupersededBy(revision, "") + "."
}

func (say Words) ThisDigest() string { return "This digest" }

func (say Words) IsThatOf(askedState string) string { return " is that of " + askedState + "." }

func (say Words) ItIsShownHere() string { return " It is shown here." }

func (say Words) TheStoredDraftIsDamaged() string { return "The stored draft is damaged" }

func (say Words) NoSoundPlanYetTo(counted string) string {
	return "No sound plan yet: " + counted + " to mend"
}

func (say Words) NotReadyFor(counted string) string { return "Not ready: " + counted }

func (say Words) NoBlockersNoCautions() string { return "No blockers, no cautions" }
