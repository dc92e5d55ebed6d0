package words

import (
	"ramplan/press"
)

// leastShare is the bound of the computed probabilities: under it [Share] writes
// a bound, and nothing can be promised.
const leastShare = 1e-6

// NotLookedAt tells whether a row of the fault catalogue rests on a missing insert
// in a plan that does not say what goes away with it: its figures then hold only if
// nothing else stops the ram.
func NotLookedAt(p *press.Plan, row press.FaultRow) bool {
	return !p.MarksInsert() && row.Case().Absent
}

// Detected writes how surely a row of the fault catalogue is judged rightly.
func (say Printer) Detected(p *press.Plan, r *press.Result, row press.FaultRow) string {
	switch {
	case NotLookedAt(p, row):
		return "not looked at"
	case isWear(row):
		return say.Wear(p, r, row)
	}
	return say.Rarely(row.Detection)
}

// Judged says in a few words how badly a row of the fault catalogue is judged.
// It is empty where the row is judged as surely as the plan wants its limit
// samples judged.
func (say Printer) Judged(p *press.Plan, r *press.Result, row press.FaultRow) string {
	d, hardly := row.Detection, 1-p.Faults.SampleProbability
	toss := d > 0.25 && d < 0.75 && row.Case().Edge
	switch {
	case NotLookedAt(p, row):
		return "no row of the parts is marked as insert"
	case row.Verdict == press.EarlyContact:
		return notTried
	case isWear(row):
		return "" // no part is judged: see [Wear]
	case d >= p.Faults.SampleProbability:
		return ""
	case toss && row.Reading != nil && edgeOf(p, r, row) == edgeOutside:
		return "passes about half the time, though outside the drawing"
	case toss && row.Reading != nil && edgeOf(p, r, row) == edgeGood:
		return "refused about half the time, though good"
	case toss:
		return "a toss-up by nature: it reads at the edge"
	case row.Good && d < leastShare:
		return "always refused"
	case row.Good && d < hardly:
		return "nearly always refused"
	case row.Good && d < 0.5:
		return "mostly refused"
	case row.Good:
		return "refused now and then"
	case d < leastShare:
		return "never detected"
	case d < hardly:
		return "hardly ever detected"
	case d < 0.5:
		return "mostly not detected"
	}
	return "not always detected"
}
