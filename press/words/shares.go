package words

import (
	"slices"
	"strconv"

	"ramplan/press"
)

// A ShareRow is one of the shares of all parts that are made, ppm: by the closed form where
// it has one, and as it is simulated, with its 95 % limits.
type ShareRow struct {
	Label, Means string
	Closed       string // empty: no closed form
	ClosedMarks  string
	Share        string
	Marks        string // of what must be known beside it
	Limits       string
	Counted      string // empty: no parts were counted
	Lot          string // in a bad lot; empty: not asked of it
	LotMarks     string
	Strong       bool // one of the two that the targets are about
	Apart        bool // begins another group
}

// Shares lists what the station lets through, what it refuses, and what the parts are. Where
// a kind of joint cannot have a share, it is left out.
func (say Printer) Shares(r *press.Result, s *press.Simulation) []ShareRow {
	seats, grips := r.Plan.Joint.Kind != press.Touch, r.Plan.Joint.Kind == press.Interference
	bad := press.BadLot{}
	if s.BadLot != nil {
		bad = *s.BadLot
	}
	all := []struct {
		key    string
		row    ShareRow
		closed *float64
		lot    *float64
		has    bool
	}{
		{"false_accept", ShareRow{Label: "Accepted, not conforming", Means: "both signals on, and yet not as drawn", Strong: true}, nil, &bad.FalseAcceptPPM, true},
		{"false_accept_height", ShareRow{Label: "of it too tall or too short", Means: "seated, outside the limits of the drawing"}, s.Closed.ConsumerPPM, nil, true},
		{"false_accept_unseated", ShareRow{Label: "of it not seated", Means: "stalled before the seat, by a tight fit or a weak ram"}, nil, nil, seats},
		{"false_accept_loose", ShareRow{Label: "of it loose", Means: "under the margin"}, nil, nil, grips},
		{"false_reject", ShareRow{Label: "Conforming, refused", Means: "as drawn, but not both signals on", Strong: true}, s.Closed.ProducerPPM, &bad.FalseRejectPPM, true},
		{"early_contact", ShareRow{Label: "Met in the approach", Means: "before the slow push begins"}, s.Closed.EarlyContactPPM, nil, true},
		{"unseated", ShareRow{Label: "All that are not seated", Means: "whatever the signals say", Apart: true}, nil, &bad.UnseatedPPM, seats},
		{"long", ShareRow{Label: "All that are too tall"}, nil, nil, true},
		{"short", ShareRow{Label: "All that are too short"}, nil, nil, true},
		{"loose", ShareRow{Label: "All that are loose, under the margin", Means: "lowest friction, safety factor in"}, nil, &bad.LoosePPM, grips},
		{"loose_fails", ShareRow{Label: "All that would let go", Means: "under the required force itself, by the friction of each"}, nil, nil, grips},
		{"accepted", ShareRow{Label: "All that are accepted"}, nil, nil, true},
	}
	tails, others := shareMarks(s)
	atSmall := func(key string, ppm float64) string {
		if ppm < press.SmallPPM {
			return tails[key]
		}
		return ""
	}
	var out []ShareRow
	for _, a := range all {
		if !a.has {
			continue
		}
		row := a.row
		if a.closed != nil {
			row.Closed, row.ClosedMarks = closedPPM(*a.closed), atSmall(a.key, *a.closed)
		}
		e := s.Shares.Named.Of(a.key)
		row.Share, row.Limits = shareWithin(*e)
		least := e.PPM
		if s.Counted != nil {
			c := s.Counted.Of(a.key)
			row.Counted, least = countedWithin(s, a.key, c), min(least, c.PPM)
		}
		row.Marks = atSmall(a.key, least) + others[a.key]
		if s.BadLot != nil && a.lot != nil {
			row.Lot, row.LotMarks = SimulatedPPM(*a.lot), atSmall(a.key, *a.lot)
		}
		out = append(out, row)
	}
	return out
}

// closedPPM writes a share of the closed form, which is good to a hundredth of a ppm.
func closedPPM(x float64) string {
	if x < leastPPM {
		return "<" + thin + Fixed(leastPPM, 2)
	}
	return SimulatedPPM(x)
}

// countedWithin writes a count and its limits: of none that were counted the one upper limit that
// the sentence under the shares names as well, not the upper one of two, which is another figure.
func countedWithin(s *press.Simulation, key string, c *press.CountedShare) string {
	for _, one := range s.Says {
		if one.Code == press.CountedNone && one.UnderPPM != nil && slices.Contains(one.Shares, key) {
			return count(c.Count) + ": under" + thin + SimulatedPPM(*one.UnderPPM)
		}
	}
	return count(c.Count) + ": " + SimulatedPPM(c.Low) + " to " + SimulatedPPM(c.High)
}

// noneCanBe stands in place of limits where a share is nothing by the plan itself.
const noneCanBe = "none can be"

// shareWithin writes a share and its limits.
func shareWithin(e press.EstimatedShare) (share, limits string) {
	switch {
	case e.High == 0:
		return SimulatedPPM(e.PPM), noneCanBe
	case e.High < leastSimulated:
		return SimulatedPPM(e.PPM), "under" + thin + Trimmed(leastSimulated, 4)
	case e.Low == 0:
		return SimulatedPPM(e.PPM), "under" + thin + SimulatedPPM(e.High)
	}
	return SimulatedPPM(e.PPM), SimulatedPPM(e.Low) + " to " + SimulatedPPM(e.High)
}

// noteMarks are no digits, which behind a figure would be a power of it.
var noteMarks = [...]string{"†", "‡", "§", "¶", "‖"}

// markOf is the mark of what is said beside shares, the one with this index: the same
// wherever the same is said. Empty: it is about all of them.
func markOf(s *press.Simulation, index int) string {
	one := &s.Says[index]
	if len(one.Shares) == 0 {
		return ""
	}
	switch one.Code {
	case press.TailAssumed:
		return noteMarks[0]
	case press.TailHard:
		return noteMarks[1]
	case press.CountedNone:
		return noteMarks[2]
	}
	n := 3 // closed form and simulated differ in up to two of them
	for _, before := range s.Says[:index] {
		if before.Code == one.Code {
			n++
		}
	}
	return noteMarks[min(n, len(noteMarks)-1)]
}

// shareMarks are the marks of each share: of what small figures hang on, and of the rest.
func shareMarks(s *press.Simulation) (tails, others map[string]string) {
	tails, others = map[string]string{}, map[string]string{}
	for i, one := range s.Says {
		of := others
		if one.Code == press.TailAssumed || one.Code == press.TailHard {
			of = tails
		}
		for _, key := range one.Shares {
			of[key] += markOf(s, i)
		}
	}
	return tails, others
}

// ClosedMarks are the marks of the three shares of the closed form, with the sentences
// that they lead to; no sentence where none of them is known.
type ClosedMarks struct {
	Accept, Reject, Early string
	Says                  []string
}

// ClosedMarks gives what must be known beside the closed form's small shares.
func (say Printer) ClosedMarks(r *press.Result) ClosedMarks {
	s := &press.Simulation{Says: r.ClosedSays()}
	tails, _ := shareMarks(s)
	return ClosedMarks{tails["false_accept_height"], tails["false_reject"], tails["early_contact"], say.SharesSay(s)}
}

// SharesSay are the sentences that stand under the shares, each with the mark by which the
// figures lead to it.
func (say Printer) SharesSay(s *press.Simulation) []string {
	var out []string
	for i := range s.Says {
		text := saying(&s.Says[i])
		if mark := markOf(s, i); mark != "" {
			text = mark + " " + text
		}
		out = append(out, text)
	}
	return out
}

// SharesSeen name what the station says, in the order of the simulation's matrix, with the
// words of the plan's table.
func (say Printer) SharesSeen(s *press.Simulation) []string {
	names := make([]string, len(Seens))
	for i, name := range Seens {
		names[i] = name
		if i < len(s.Verdicts) && len(s.Verdicts[i].Words) > 0 {
			names[i] += ": " + SayAll(s.Verdicts[i].Words)
		}
	}
	return names
}

// MatrixCell writes one cell of the matrix, ppm.
func (say Printer) MatrixCell(e press.EstimatedShare) string {
	if e.High == 0 {
		return none
	}
	return SimulatedPPM(e.PPM)
}

// limitsAre says what limits do not tell.
const limitsAre = "The limits are those of the calculation: how well the model fits a station they do not tell."

// SharesFrom says what the estimate rests on, so that somebody else can repeat it.
func (say Printer) SharesFrom(s *press.Simulation) string {
	text := "Estimated from " + count(int64(s.Shares.Replications)) + " times " + count(int64(s.Shares.Points)) + " points, seed " + strconv.FormatUint(s.Seed, 10)
	if s.Shares.Met && s.Precision < 1 {
		return text + ": as close as was asked for, " + say.Share(s.Precision) + " of each leading share or of 1" + thin + "ppm. " + limitsAre
	}
	return text + ". " + limitsAre
}

// SharesCounted says how many parts were counted; empty for none.
func (say Printer) SharesCounted(s *press.Simulation) string {
	if s.Parts == 0 {
		return ""
	}
	text := count(s.Parts) + " parts counted one by one, seed " + strconv.FormatUint(s.Seed, 10)
	switch {
	case s.Counting:
		text += ", so far: not all that were asked for"
	case !s.Complete:
		text += "; stopped before the end"
	}
	return text + "."
}

// SharesLot says what a bad lot is.
func (say Printer) SharesLot() string {
	return "Bad lot: friction at one end for all parts, hole and shaft anywhere within their limits. The average tells the year, the bad lot the week that somebody remembers. Where it shows less than the average: in it hole and shaft end at their limits, on average some lie beyond."
}

// SharesProgress says how far a count is.
func (say Printer) SharesProgress(done, all int64) string {
	return count(done) + " of " + count(all) + " parts counted."
}

// NoShares says why there are none.
func (say Printer) NoShares() string {
	return "Without a push end and a zone nothing is accepted or refused, and there are no shares."
}

// SharesIntro says what the figures are.
func (say Printer) SharesIntro(r *press.Result) string {
	text := "In a million of all parts that are made, with sizes, friction, force and position drawn as the plan has them. The closed form knows heights and reading errors only; the simulation also has parts that stall, parts that are loose and parts that are met too early."
	if r.Probe.InUse {
		text += " The probe before the push is left out: what it refuses, sound or loose, stands with its figures."
	}
	return text
}

func count(n int64) string { return Fixed(float64(n), 0) }

// What is said of a count that was asked for and cannot be.
const (
	PartsNotGiven    = "Type how many parts to count, as 1000000 or 1e6."
	PartsRefused     = "Parts to count: a whole number from 1 to 1e12, as 1000000 or 1e6."
	SeedRefused      = "Seed: a whole number from 0 to 18446744073709551615."
	TooManyToWaitFor = "More than ten million parts are counted here only with scripts on, or by the command line: ramplan simulate -parts."
	SharesMoved      = "The plan has changed since these shares were asked for."
)
