package proof

import (
	"fmt"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// OffersLead says how many entries a study offers.
func (say Words) OffersLead(n int) string {
	if n == 0 {
		return "The station itself says what the draft has already."
	}
	return "What the station itself says, as " + counted(n, "entry", "entries") + " of the draft. An issued revision stays as it is."
}

// AllTaken says that the draft has everything.
func (say Words) AllTaken() string { return "The draft has all that this study offers." }

// DraftUnsound says that nothing can be said of what taking values does.
func (say Words) DraftUnsound(n int) string {
	return "The draft has " + counted(n, "fault", "faults") + ": what taking these values does is told when they are mended."
}

// NoPlanWithThem says that the draft would be no plan with the values.
func (say Words) NoPlanWithThem(why string) string {
	return "With them the draft would be no plan: " + why
}

// PointsOffered writes a curve in short.
func (say Words) PointsOffered(points [][2]float64) string {
	if len(points) == 0 {
		return "–"
	}
	first, last := points[0], points[len(points)-1]
	return fmt.Sprintf("%s, %s to %s: %s to %s", counted(len(points), "point", "points"), words.Trimmed(first[0], 2), say.Setting(last[0]), words.Trimmed(first[1], 1), words.Unit(words.Trimmed(last[1], 1), "N"))
}

// ValueOffered writes a figure with its unit.
func (say Words) ValueOffered(x float64, unit string) string { return words.Unit(words.Full(x), unit) }

// CorrectionSaid says by how many steps the nest is to be corrected.
func (say Words) CorrectionSaid(p *press.Plan, c *proving.Correction) string {
	return fmt.Sprintf("The nest by %s of %s, from %s to %s: what of the shift the steps can take away.", stepsOf(c.Steps), words.Unit(words.Full(p.Station.PositionStep), "mm"), words.Full(p.Station.Nest), words.Unit(words.Full(c.Nest), "mm"))
}

func stepsOf(n int) string {
	if n == 1 || n == -1 {
		return words.Full(float64(n)) + " step"
	}
	return words.Full(float64(n)) + " steps"
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

// StudyNamed names a study in the history of a draft.
func (say Words) StudyNamed(s *proving.Study) string {
	name := "the study " + say.KindName(s.Kind)
	if d := dayOf(s.TakenAt); d != "" {
		name += " of " + d
	}
	return name + fmt.Sprintf(" (%.*s)", len("sha256:")+12, s.Digest())
}
