package words

import (
	"math"
	"strconv"

	"ramplan/press"
)

// A ShareRow is one of the shares of all parts that are made: by the closed form where it
// has one, and as it is simulated, with its 95 % limits.
type ShareRow struct {
	Label, Means string
	Closed       string // empty: no closed form
	Share        string
	Limits       string
	Counted      string // empty: no parts were counted
	Strong       bool   // one of the two that the targets are about
	Apart        bool   // begins another group
}

// Shares lists what the station lets through, what it refuses, and what the parts are. Where
// a kind of joint cannot have a share, it is left out.
func (say Printer) Shares(r *press.Result, s *press.Simulation) []ShareRow {
	n := s.Shares.Named
	var c press.Named[press.CountedShare]
	if s.Counted != nil {
		c = *s.Counted
	}
	all := []struct {
		row     ShareRow
		closed  *float64
		share   press.EstimatedShare
		counted press.CountedShare
		has     bool
	}{
		{ShareRow{Label: "Accepted, not conforming", Means: "both signals on, and yet not as drawn", Strong: true}, nil, n.FalseAccept, c.FalseAccept, true},
		{ShareRow{Label: "of it too tall or too short", Means: "seated, outside the drawing's limits"}, s.Closed.ConsumerPPM, n.FalseAcceptHeight, c.FalseAcceptHeight, true},
		{ShareRow{Label: "of it not seated", Means: "stalled before the seat, by a tight fit or a weak ram"}, nil, n.FalseAcceptUnseated, c.FalseAcceptUnseated, r.Plan.Joint.Kind != press.Touch},
		{ShareRow{Label: "of it loose", Means: "grip under what is required, with its safety factor"}, nil, n.FalseAcceptLoose, c.FalseAcceptLoose, r.Plan.Joint.Kind == press.Interference},
		{ShareRow{Label: "Conforming, refused", Means: "as drawn, but not both signals on", Strong: true}, s.Closed.ProducerPPM, n.FalseReject, c.FalseReject, true},
		{ShareRow{Label: "Met in the approach", Means: "the ram meets the part before the slow push begins"}, s.Closed.EarlyContactPPM, n.EarlyContact, c.EarlyContact, true},
		{ShareRow{Label: "All parts not seated", Means: "whatever the signals say", Apart: true}, nil, n.Unseated, c.Unseated, r.Plan.Joint.Kind != press.Touch},
		{ShareRow{Label: "All parts too tall"}, nil, n.Long, c.Long, true},
		{ShareRow{Label: "All parts too short"}, nil, n.Short, c.Short, true},
		{ShareRow{Label: "All parts loose", Means: "under the margin: lowest friction, safety factor in"}, nil, n.Loose, c.Loose, r.Plan.Joint.Kind == press.Interference},
		{ShareRow{Label: "All parts that would let go", Means: "under the required holding force itself, with the friction of each part"}, nil, n.LooseFails, c.LooseFails, r.Plan.Joint.Kind == press.Interference},
		{ShareRow{Label: "All parts accepted"}, nil, n.Accepted, c.Accepted, true},
	}
	var out []ShareRow
	for _, a := range all {
		if !a.has {
			continue
		}
		if a.closed != nil {
			a.row.Closed = say.PPM(*a.closed)
		}
		a.row.Share, a.row.Limits = say.shareWithin(a.share)
		if s.Counted != nil {
			a.row.Counted = count(a.counted.Count)
		}
		out = append(out, a.row)
	}
	return out
}

// shareWithin writes a share and its limits with as many digits as they can bear.
func (say Printer) shareWithin(e press.EstimatedShare) (share, limits string) {
	if e.PPM == 0 && e.High == 0 {
		return say.PPM(0), "none can be"
	}
	if e.Low == 0 {
		return say.PPM(e.PPM), "under" + thin + say.PPM(e.High)
	}
	return say.PPM(e.PPM), say.between(e.Low, e.High)
}

// between writes two limits in one unit, with a digit more than a share has alone.
func (say Printer) between(low, high float64) string {
	switch {
	case high >= manyPPM:
		return Fixed(low/1e4, 2) + " to " + Unit(Fixed(high/1e4, 2), "%")
	case high < leastPPM:
		return say.PPM(high)
	case low < leastPPM:
		return Fixed(0, 0) + " to " + Unit(ppmDigits(high, 3), "ppm")
	}
	digits := 3 // and as many as tell the two apart
	for digits < 6 && ppmDigits(low, digits) == ppmDigits(high, digits) {
		digits++
	}
	return ppmDigits(low, digits) + " to " + Unit(ppmDigits(high, digits), "ppm")
}

// Truths name what a part can be, in the order of the simulation's matrix.
func (say Printer) Truths() []string {
	return []string{"not seated", "too tall", "too short", "loose", "conforming"}
}

// SharesSeen name what the station says, in the order of the simulation's matrix.
func (say Printer) SharesSeen(s *press.Simulation) []string {
	names := []string{"on | on", "on | off", "off | on", "off | off", "met in the approach"}
	for i, v := range s.Verdicts {
		for j, word := range v.Words {
			if j == 0 {
				names[i] += ": "
			} else {
				names[i] += " or "
			}
			names[i] += Say(word)
		}
	}
	return names
}

// MatrixCell writes one cell of the matrix.
func (say Printer) MatrixCell(e press.EstimatedShare) string {
	if e.PPM == 0 && e.High == 0 {
		return none
	}
	return say.PPM(e.PPM)
}

// SharesFrom says what the estimate rests on, so that somebody else can repeat it.
func (say Printer) SharesFrom(s *press.Simulation) string {
	text := "Estimated from " + count(int64(s.Shares.Replications)) + " times " + count(int64(s.Shares.Points)) + " points, seed " + strconv.FormatUint(s.Seed, 10) + ", with 95 % limits"
	if s.Shares.Met {
		return text + ": as precise as asked for, " + say.Share(s.Precision) + " of each leading share or of 1 ppm."
	}
	return text + "."
}

// SharesCounted says how many parts were counted.
func (say Printer) SharesCounted(s *press.Simulation) string {
	if s.Parts == 0 {
		return ""
	}
	text := count(s.Parts) + " parts counted one by one, seed " + strconv.FormatUint(s.Seed, 10)
	if !s.Complete {
		text += "; stopped before the end"
	}
	return text + "."
}

// SharesProgress says how far a count is.
func (say Printer) SharesProgress(done, all int64) string {
	return count(done) + " of " + count(all) + " parts counted, " + say.Share(math.Floor(100*float64(done)/float64(max(1, all)))/100) + "."
}

// NoShares says why there are none.
func (say Printer) NoShares() string {
	return "Without a push end and a zone nothing is accepted or refused, and there are no shares."
}

// SharesIntro says what the figures are.
func (say Printer) SharesIntro() string {
	return "Of all parts that are made, sizes, friction, force and position drawn as the plan has them. The closed form knows heights and reading errors only; the simulation also has parts that stall, parts that are loose and parts that are met too early."
}

func count(n int64) string { return Fixed(float64(n), 0) }

// What is said of a count that was asked for and cannot be.
const (
	PartsRefused     = "Parts to count: a whole number from 1 to 1e12, as 1000000 or 1e6."
	SeedRefused      = "Seed: a whole number from 0 to 18446744073709551615."
	TooManyToWaitFor = "More than ten million parts are counted here only with scripts on, or by the command line: ramplan simulate -parts."
	SharesMoved      = "The plan has changed since these shares were asked for."
)
