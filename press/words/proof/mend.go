package proof

import (
	"strconv"

	"ramplan/press"
	"ramplan/press/proving"
)

// CorrectionSaid says by how many steps the nest is to be entered elsewhere, and what both
// lamps then do.
func (say Words) CorrectionSaid(p *press.Plan, c *proving.Correction) string {
	s := "Enter the nest as " + say.Positions(p).SetAt(c.Nest) + ", " + say.steps(p, c.Steps) + " the plan's"
	if c.SharesNow != nil && c.SharesAfter != nil {
		s += ": " + say.SeenShare(c.SharesAfter.OnOn) + " of the parts then give both lamps, as it is " + say.SeenShare(c.SharesNow.OnOn)
	}
	return s + "."
}

// steps are steps of the position, and to which side.
func (say Words) steps(p *press.Plan, n int) string {
	side := " past"
	if n < 0 {
		n, side = -n, " before"
	}
	return strconv.Itoa(n) + several(n, " step of ", " steps of ") + say.Positions(p).Length(p.Station.PositionStep) + side
}

// AsFoundOf says what the plan's promise is for the station as its master study found it, which
// target it misses, and whether a correction of the nest would mend that.
func (say Words) AsFoundOf(r *press.Result, a *proving.AsFound) string {
	if a == nil {
		return ""
	}
	t := told{say: say, r: r, pos: say.Positions(r.Plan).Fine()}
	s := "As its master found it, the station reads " + t.beside(a.Bias) + " the planned places"
	if a.Met == nil {
		return s + ". What it accepts and refuses is not known: the nominal part stalls before its seat."
	}
	target, wrong, right := &r.Plan.Targets, *a.ConsumerPPM, *a.ProducerPPM
	accepts, rejects := wrong > target.FalseAcceptPPM, right > target.FalseRejectPPM
	if *a.Met {
		return s + " and keeps both targets: of all parts it accepts " + say.PPM(wrong) + " with a wrong height and refuses " + say.PPM(right) + " with a right one."
	}
	var misses string
	accepted := "it accepts " + say.PPM(wrong) + " of all parts with a wrong height, " + say.TargetPPM(target.FalseAcceptPPM) + " are allowed"
	refused := "it refuses " + say.PPM(right) + " of all parts with a right height, " + say.TargetPPM(target.FalseRejectPPM) + " are allowed"
	switch {
	case accepts && rejects:
		misses = "misses both targets: " + accepted + ", and " + refused
	case accepts:
		misses = "misses the target for wrong parts: " + accepted
	default:
		misses = "misses the target for refused parts: " + refused
	}
	s += " and " + misses + ". "
	m, ok := a.Mend(r)
	switch {
	case ok && m.Met:
		return s + "Entering the nest as " + say.Positions(r.Plan).SetAt(m.Nest) + ", " + say.steps(r.Plan, m.Steps) + " the plan's, mends it: " + say.PPM(m.ConsumerPPM) + " and " + say.PPM(m.ProducerPPM) + " are then left."
	case ok:
		return s + "Entering the nest as " + say.Positions(r.Plan).SetAt(m.Nest) + ", " + say.steps(r.Plan, m.Steps) + " the plan's, leaves " + say.PPM(m.ConsumerPPM) + " and " + say.PPM(m.ProducerPPM) + ": that alone does not mend it."
	}
	return s + "No correction of the nest mends it: the station scatters too much for this window."
}
