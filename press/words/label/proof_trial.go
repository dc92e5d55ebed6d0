package label

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// TrialTitle is the message of a trial over the lens.
func (say Words) TrialTitle(pos words.Positions, mean *float64, nominal float64, n int) string {
	if mean == nil {
		return "No reading that could be held against the plan"
	}
	return words.UpperFirst(counting(n, "part", "parts")) + " read " + signed(pos, *mean-nominal) + " from where the plan expects them"
}

func (say Words) ReadingsHead() string { return "readings" }

func (say Words) InTheirOrder(n int) string { return whole(n) + ", the first on top" }

func (say Words) PartsReach(n, stretches int) string {
	return whole(n) + ", first on top, as " + whole(stretches) + " stretches from lowest to highest"
}

func (say Words) HowOften() string { return "how often" }

func (say Words) BarsAre(pos words.Positions, bar float64, most int) string {
	return "bars of " + words.Unit(words.Trimmed(bar, 6), "mm") + "; highest: " + counting(most, "part", "parts")
}

func (say Words) PlanExpects() string { return "as many as the plan expects" }

func (say Words) BothOn() string { return "both lamps on" }

func (say Words) LampsDiffer(n int) string {
	return counting(n, "part", "parts") + ": lamps are not those of the reading"
}

func (say Words) LampsDifferRows(rows []int) string {
	return "Lamps are not those of the reading: " + rowsOf(rows) + "."
}

func (say Words) WithoutArrival(n int) string {
	return counting(n, "part", "parts") + " without the arrival signal, at rest at the push end"
}

func (say Words) Beyond(n int, left bool) string {
	if left {
		return "← " + whole(n) + " more"
	}
	return whole(n) + " more →"
}

func (say Words) BeyondTheLens(left, right int) string {
	return "Beyond the lens: " + whole(left) + " before it, " + whole(right) + " behind it."
}

func (say Words) TrialText(pos words.Positions, n, used int, mean *float64, nominal float64, sd *float64) string {
	s := words.UpperFirst(counting(n, "part", "parts")) + ", " + whole(used) + " with the arrival signal; the plan expects them about " + pos.At(nominal)
	if mean != nil {
		s += ", they read " + pos.At(*mean) + " on average"
	}
	if sd != nil {
		s += ", standard deviation " + pos.With(4).At(*sd)
	}
	return s + "."
}

func (say Words) BothOnFrom(pos words.Positions, from, to float64) string {
	return "Both lamps are on from " + pos.Bare(from) + " to " + pos.At(to) + "."
}

func (say Words) BarText(pos words.Positions, from, to float64, n int) string {
	return pos.With(4).Bare(from) + " to " + pos.With(4).At(to) + ": " + whole(n)
}

func (say Words) BarsText(bars []string) string { return "Parts: " + strings.Join(bars, "; ") + "." }

// Shares seen.

// SeenTitle is the message of the shares that were seen.
func (say Words) SeenTitle(seen, of int, predicted *float64) string {
	s := whole(seen) + " of " + counting(of, "part", "parts") + " without both lamps"
	if predicted != nil {
		s += "; the plan predicts " + say.SeenShare(*predicted)
	}
	return s
}

// PairSeen names a pair of lamps.
func (say Words) PairSeen(pair string) string {
	switch pair {
	case "on_on":
		return "both on"
	case "on_off":
		return "arrival alone"
	case "off_on":
		return "zone alone"
	case "off_off":
		return "neither on"
	}
	return pair
}

func (say Words) RejectsSeen() string { return "not both on" }

func (say Words) FalseAcceptSeen() string { return "wrong accepted" }

func (say Words) FalseRejectSeen() string { return "good refused" }

func (say Words) ShareAxis() string {
	return "share of the parts; each line is ten times the one before"
}

func (say Words) SeenScale() string {
	return "The scale goes in tenfold steps, so that rare pairs can be read."
}

func (say Words) SeenLimits() string { return "what was seen allows (95 %)" }

func (say Words) SeenMark() string { return "seen" }

func (say Words) PredictedMark() string { return "predicted" }

func (say Words) LowerMark() string {
	return "at least so many (99 %): the plan fails where it predicts fewer"
}

func (say Words) AtEdge(least float64) string { return "goes on under " + say.SeenShare(least) }

// SeenFigures are those beside a row.
func (say Words) SeenFigures(seen, of int, predicted *float64) string {
	s := whole(seen) + " of " + whole(of)
	if predicted != nil {
		s += "; predicted " + say.SeenShare(*predicted)
	}
	return s
}

// SeenText is the same in a sentence, with its limits.
func (say Words) SeenText(name string, seen, of int, share *float64, limits *press.Pair, predicted, lower *float64) string {
	s := words.UpperFirst(name) + ": " + whole(seen) + " of " + whole(of)
	if share != nil {
		s += ", " + say.SeenShare(*share)
	}
	if limits != nil {
		s += " (" + say.SeenShare(limits[0]) + " to " + say.SeenShare(limits[1]) + ")"
	}
	if predicted != nil {
		s += ", predicted " + say.SeenShare(*predicted)
	}
	if lower != nil {
		s += ", at least " + say.SeenShare(*lower) + " (99 %)"
	}
	return s + "."
}

// Limit samples.

// LampsTitle is the message of limit samples over the lens.
func (say Words) LampsTitle(n, wrong int) string {
	if wrong == 0 {
		return "All " + counting(n, "sample", "samples") + " came as predicted"
	}
	return whole(wrong) + " of " + counting(n, "sample", "samples") + " did not come as predicted"
}

// RoleKey says what a sample of a role is there for.
func (say Words) RoleKey(role string) string {
	switch role {
	case "good":
		return "good: to be accepted"
	case "long":
		return "long: to be refused"
	case "short":
		return "short: to be refused"
	case "empty":
		return "no insert, or a bare nest"
	}
	return "too near to a limit: proves nothing"
}

func (say Words) ReadingCame() string { return "reading that came" }

func (say Words) Differs() string { return "not as predicted" }

// DiffersBriefly is the same in one word, behind the lamps that came.
func (say Words) DiffersBriefly(lamps, reading bool) string {
	switch {
	case lamps && reading:
		return ": both"
	case lamps:
		return ": lamps"
	}
	return ": reading"
}

// DiffersIn says what of a sample was not as predicted.
func (say Words) DiffersIn(lamps, reading bool) string {
	switch {
	case lamps && reading:
		return "differ"
	case lamps:
		return "lamps differ"
	}
	return "reading differs"
}

func (say Words) NotDrawn(n int) string {
	return counting(n, "more sample is", "more samples are") + " not drawn; none that failed is left out before one that passed"
}

func (say Words) SampleName(row int, sample string) string {
	return strconv.Itoa(row) + ". " + say.SampleSaid(sample)
}

// SampleSaid names a sample, also one that is no part.
func (say Words) SampleSaid(sample string) string {
	switch sample {
	case "missing":
		return "no insert"
	case "empty":
		return "bare nest"
	}
	return sample
}

// LampPair writes two lamps, arrival first.
func (say Words) LampPair(arrival, zone *bool) string {
	if arrival == nil || zone == nil {
		return "–"
	}
	return words.OnOff(*arrival) + " · " + words.OnOff(*zone)
}

func (say Words) LampsCame(arrival, zone, cameArrival, cameZone *bool) string {
	return "predicted " + say.LampPair(arrival, zone) + ", came " + say.LampPair(cameArrival, cameZone)
}

func (say Words) SampleHead() string { return "sample" }

func (say Words) PredictedHead() string { return "predicted" }

func (say Words) CameHead() string { return "came" }

func (say Words) RestsHead() string { return "where it rests; lamps: arrival · zone" }

func (say Words) SampleRowsText(n, long, short, good, empty int) string {
	return words.UpperFirst(counting(n, "sample", "samples")) + ": " + whole(long) + " long, " + whole(short) + " short, " + whole(good) + " good, " + whole(empty) + " without an insert. Lamps are named arrival first."
}

func (say Words) OffsetText(pos words.Positions, value, allowed float64, n int) string {
	return "Readings are " + signed(pos, value) + " from the predicted ones on average of " + whole(n) + "; ±\u202f" + pos.At(allowed) + " is allowed."
}

// SampleText tells of one sample.
func (say Words) SampleText(pos words.Positions, name, role string, at *float64, arrival, zone, cameArrival, cameZone *bool, reading *float64, lamps, readings bool) string {
	s := name
	if role != "" {
		s += ", " + role
	}
	if at != nil {
		s += ", rests at " + pos.At(*at)
	}
	s += ": " + say.LampsCame(arrival, zone, cameArrival, cameZone)
	if reading != nil {
		s += ", reading " + pos.At(*reading)
	}
	if lamps || readings {
		s += "; " + say.DiffersIn(lamps, readings)
	}
	return s + "."
}
