package words

import "ramplan/press"

// WhenRead says in one line when the lamps count, before anybody is told what they
// mean: on its way back a good part shows the lamps of another verdict, and between
// two parts both lamps are off. It is [ReadingRule] in a few words.
const WhenRead = "Lamps: held from the end of the push, before the ram goes back, to the next start. Signals off between."

// WhenReadIn says the same for a plan: with a probe the lamps are read twice.
func (say Printer) WhenReadIn(r *press.Result) string {
	if !TwoLooks(r) {
		return WhenRead
	}
	return "Lamps: read twice. First look, in the probe: " + lowerFirst(GoOnOnly) + " Second look, at the end of the push, before the ram goes back: only that judges the part. Both off between parts is right."
}

// CardReads is what stands over the four pairs of the card: with a probe, that they are
// those of the second look.
func (say Printer) CardReads(r *press.Result) string {
	if !TwoLooks(r) {
		return WhenRead
	}
	return "Second look, at the end of the push, before the ram goes back. Both off between parts is right."
}

// PairsHead heads the table of the four pairs.
func (say Printer) PairsHead(r *press.Result) string {
	if TwoLooks(r) {
		return "What the two lamps mean in this plan at the second look, at the end of the push"
	}
	return "What the two lamps mean in this plan"
}

// TableHead heads the same table at the bench.
func (say Printer) TableHead(r *press.Result) string {
	if TwoLooks(r) {
		return "What the two signals mean at the second look"
	}
	return "What the two signals mean"
}

// SecondOnly says, where lamps are tapped in that were seen, that those of the second look
// are meant; empty for a plan with one look.
func (say Printer) SecondOnly(r *press.Result) string {
	if TwoLooks(r) {
		return "Only what they show at the second look: the first one has the rule above, and no other."
	}
	return ""
}

// Returning is what the lamps show while the ram goes back through the zone, where
// nothing stops it.
var Returning = Pair{Zone: true}

// OffAtHome tells whether both lamps must be off at home: they must, unless the zone
// of a plan reaches as far as home.
func OffAtHome(p *press.Plan, s press.Signals) bool { return !s.InZone(p.Station.Home) }
