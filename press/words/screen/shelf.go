package screen

func (say Words) ShelfTitle() string { return "Plans · ramplan" }

// OrderedByDue is what the order of the shelf is called that puts first what is due.
func (say Words) OrderedByDue() string { return "What is due" }

func (say Words) BinTitle() string { return "Bin · ramplan" }

func (say Words) InTheBin(counted string) string { return counted + " in the bin" }

func (say Words) PlanIsInBin(titled string) string { return titled + " is in the bin." }

func (say Words) NothingFound(trimSpace string) string {
	return "Nothing holds “" + trimSpace + "”."
}

func (say Words) UnnamedAtHead() string { return "The plan without a name" }

func (say Words) WithoutName() string { return "Without a name yet" }

func (say Words) HasThisDigest() string {
	return " has this digest; it is the last that was issued."
}

func (say Words) HadThisDigest(revision string) string {
	return " has this digest; it is " + say.SupersededBy(revision, "") + "."
}

func (say Words) ThisDigest() string { return "This digest" }

func (say Words) DigestIsOf(askedState string) string { return " is that of " + askedState + "." }

func (say Words) ShownHere() string { return " It is shown here." }

func (say Words) DraftDamaged() string { return "The stored draft is damaged" }

func (say Words) NotSoundYet(counted string) string {
	return "No sound plan yet: " + counted + " to mend"
}

func (say Words) NotReadyFor(counted string) string { return "Not ready: " + counted }

func (say Words) NoBlockersNoCautions() string { return "No blockers, no cautions" }
