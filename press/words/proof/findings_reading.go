package proof

import (
	"math"
	"strconv"

	"ramplan/press/proving"
	"ramplan/press/words"
)

func gaugeWeak(t *told) string {
	g := t.master().Gauge
	return "As a gauge for the " + t.pos.Length(g.Tolerance) + " that the drawing leaves, the station has Cg " + words.Fixed(*g.Cg, 2) + " and Cgk " + words.Fixed(*g.Cgk, 2) +
		"; 1.33 is usually asked for. The guard bands of the plan pay for it already."
}

func biased(t *told) string {
	b := t.master().Bias
	return "The master reads " + t.beside(b.Value) + " the planned place on average" + t.sure(b.Uncertainty) + ": not by chance, but within the " + t.within(b.Allowed) + " that the plan allows."
}

func repeatabilityNotShown(t *told) string {
	x := t.master()
	return strconv.Itoa(x.N) + " pushes show no better than " + t.within(*x.Repeatability.Upper) + " for one push; the plan counts on " + t.within(2*x.Spread.PlannedSD) + ". More pushes may show it."
}

func warmUp(t *told) string {
	d := t.restart().ColdWarm
	limits := ""
	if l := d.Limits; l != nil {
		limits = " (" + t.pos.Length(l[0]) + " to " + t.pos.Length(l[1]) + ")"
	}
	return "Cold starts read " + t.pos.Length(math.Abs(d.Difference)) + several(sign(d.Difference), " further", " less far") + " than warm ones" + limits + ", more than the " +
		t.within(t.r.Plan.Station.ReferenceUncertainty) + " that the plan leaves for a new start: warm up before the first part, or enter it."
}

// sign is 1 for what is positive.
func sign(x float64) int {
	if x > 0 {
		return 1
	}
	return -1
}

func startsDiffer(t *told) string {
	x := t.restart()
	return "The starts differ more than the pushes within one (starts that are alike do so in " + t.say.OneIn(*x.Anova.P) + "): a new start adds " + t.pos.Length(*x.Between) + ", one standard deviation."
}

// lampsDiffer names the rows; of samples also what was predicted.
func lampsDiffer(t *told) string {
	const stop = " Set no part free until it is known why."
	if t.s.Kind == proving.Trial {
		rows := t.trial().LampMismatch
		return rowsNamed(rows) + ": the lamps do not go with the reading. Look whether zone, push end and reading rule are set as planned." + stop
	}
	for _, row := range t.samples().Rows {
		if row.Lamps == proving.Fail {
			given := t.s.Rows[row.Row-1]
			n := 0
			for _, other := range t.samples().Rows {
				if other.Lamps == proving.Fail {
					n++
				}
			}
			s := "Row " + strconv.Itoa(row.Row) + ", sample “" + row.Sample + "”: " + t.lamps(*row.Arrival, *row.Zone) + " was predicted, " + t.lamps(*given.Arrival, *given.Zone) + " came"
			if n > 1 {
				s += "; so it is in " + strconv.Itoa(n) + " rows in all"
			}
			return s + "." + stop
		}
	}
	return "The lamps are not the predicted ones." + stop
}

// lamps are two signals in words.
func (t *told) lamps(arrival, zone bool) string {
	return "arrival " + lit(arrival) + ", zone " + lit(zone)
}

func lit(on bool) string {
	if on {
		return "on"
	}
	return "off"
}

// ofAll writes how many of what there were, and the share.
func (t *told) ofAll(s proving.SeenShare, what string) string {
	out := strconv.Itoa(s.Seen) + " of " + strconv.Itoa(s.Of) + " " + what
	if s.Share != nil {
		out += " (" + t.say.SeenShare(*s.Share) + ")"
	}
	return out
}

func moreRejects(t *told) string {
	x := t.trial().Rejects
	return t.ofAll(x, "parts") + " did not give both lamps; the plan predicts " + t.say.Rarely(*x.Predicted) + ", and chance does not explain so many."
}

func falseAccepts(t *told) string {
	x := t.trial().Truth.FalseAccept
	return t.ofAll(x, "measured parts") + " were accepted and are outside the drawing as measured; the plan predicts " + t.say.Rarely(*x.Predicted) + ". Set no part free until it is known why."
}

func notNormal(t *told) string {
	return "The readings are not spread as one process spreads them (one process does so in " + t.say.OneIn(t.trial().Normality.P) + "): look for two batches, sorted parts or a step in the trial."
}

func censored(t *told) string {
	x := t.trial()
	n := x.N - x.Used
	return strconv.Itoa(n) + " of " + strconv.Itoa(x.N) + " parts gave no arrival: the ram rested where the push ends, so " + several(n, "its reading says", "their readings say") + " nothing of the part and " +
		several(n, "is", "are") + " in no mean."
}

func capabilityFew(t *told) string {
	c := t.trial().Capability
	s := "Pp and Ppk rest on " + strconv.Itoa(c.N) + " parts, under 100"
	if c.PpkLimits != nil {
		s += ": of Ppk only " + words.Fixed(c.PpkLimits[0], 2) + " to " + words.Fixed(c.PpkLimits[1], 2) + " is known"
	}
	return s + "."
}

func nestCorrection(t *told) string {
	return t.say.CorrectionSaid(t.r.Plan, t.trial().Correction)
}

func readingsDiffer(t *told) string {
	x := t.samples()
	for _, row := range x.Rows {
		if row.Reading != nil && *row.Reading == proving.Fail {
			return "Row " + strconv.Itoa(row.Row) + ", sample “" + row.Sample + "”: the ram came to rest " + t.beside(*row.Difference) + " the predicted " + t.pos.At(*row.PredictedReading) +
				", more than the " + t.within(*row.Allowed) + " that one push may be off."
		}
	}
	return "The readings lie " + t.beside(x.Offset.Value) + " the predicted ones on average of " + strconv.Itoa(x.Offset.N) + ", more than the " + t.within(x.Offset.Allowed) + " that the plan allows."
}

func sampleUndecided(t *told) string {
	var rows []int
	var first *proving.SampleRow
	all := t.samples().Rows
	for i := range all {
		if all[i].Role == nil && all[i].Chance != nil && t.r.Samples != nil {
			if rows = append(rows, all[i].Row); first == nil {
				first = &all[i]
			}
		}
	}
	if first == nil {
		return "The plan has no window: no sample proves anything of it."
	}
	return rowsNamed(rows) + " " + several(len(rows), "proves", "prove") + " nothing either way: a right station accepts sample “" + first.Sample + "” in " + t.say.OneIn(*first.Chance) + ". Make samples beyond the limit samples' heights."
}

func sampleTooEasy(t *told) string {
	s := t.r.Samples
	far := 6 * t.r.ReadingUncertainty()
	for i, row := range t.samples().Rows {
		h := t.s.Rows[i].Height
		if row.Role == nil || h == nil {
			continue
		}
		limit := s.Long
		if *row.Role == "short" {
			limit = s.Short
		}
		if (*row.Role == "long" || *row.Role == "short") && math.Abs(*h-limit) > far {
			return "Sample “" + row.Sample + "” of " + t.pos.At(*h) + " lies more than " + t.pos.Length(far) + " beyond the limit sample's " + t.pos.At(limit) + ": any station judges it rightly. Make one nearer."
		}
	}
	return "A sample lies far beyond the limit sample's height: any station judges it rightly. Make one nearer."
}
