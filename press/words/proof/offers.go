package proof

import (
	"fmt"

	"ramplan/press/proving"
)

// OffersLead says how many entries a study offers.
func (say Words) OffersLead(n int) string {
	if n == 0 {
		return "The station itself says what the draft has already."
	}
	return "What the station itself says, as " + counted(n, "entry", "entries") + " of the draft. An issued revision stays as it is."
}

// AllTaken says that the draft has everything.
func (say Words) AllTaken() string {
	return "The draft has all that this study offers. Against values that come from it a study of the machine passes by itself: what tests them is another one, the limit samples and the parts of a trial."
}

// DraftUnsound says that nothing can be said of what taking values does.
func (say Words) DraftUnsound(n int) string {
	return "The draft has " + counted(n, "fault", "faults") + ": what taking these values does is told when they are mended."
}

// NoPlanWithThem says that the draft would be no plan with the values.
func (say Words) NoPlanWithThem(why string) string {
	return "With them the draft would be no plan: " + why
}

// PairName names a pair of lamps.
func (say Words) PairName(pair string) string { return say.pairName(pair) }

// OnlySignedAreTaken says that a study must be signed, and count, before values are taken of it.
func (say Words) OnlySignedAreTaken() string {
	return "Values are taken of a signed study only, and not of one that another corrects."
}

// NothingTicked says that nothing was picked.
func (say Words) NothingTicked() string { return "Nothing is ticked, so nothing was taken." }

// DraftMoved says that the draft was changed meanwhile.
func (say Words) DraftMoved() string {
	return "The draft was changed since this page was opened. Nothing was taken: look at what it would do now, and take it again."
}

// TookValues is what was done where values that a study offers were taken into a draft.
func (say Words) TookValues(s *proving.Study) string {
	name := "took values of the study " + say.KindName(s.Kind)
	if d := dayOf(s.TakenAt); d != "" {
		name += " of " + d
	}
	return name + fmt.Sprintf(" (%.*s)", len("sha256:")+12, s.Digest())
}
