package proving

import (
	"math"

	"ramplan/press/model"
	"ramplan/press/risk"
)

// RoleEmpty is the role of a push without an insert, or on the bare nest. The others are
// the drawing's words.
const RoleEmpty = "empty"

// roleLeast is how many rows of a role show it.
const roleLeast = 3

// samples judges limit samples and the empty nest: whether the lamps are the predicted ones
// and the readings lie where they must.
func (j *judging) samples() {
	r := &SamplesResult{N: len(j.study.Rows), Rows: make([]SampleRow, len(j.study.Rows))}
	j.result = r
	known := orElse(j.study.HeightUncertainty, 0)
	pred := predictor{j: j, p: j.plan.Plan.Faults.SampleProbability}
	pred.sig, pred.lit = j.plan.Signals()
	pred.window, pred.judges = j.plan.SampleWindow(known)
	pred.within = 1.5 * root(2*j.plan.SampleError(), known)
	var off []float64
	undecided, easy := false, false
	for i := range j.study.Rows {
		row := &r.Rows[i]
		*row = pred.row(i)
		if row.Role == nil {
			undecided = true
		} else {
			r.Roles.add(*row.Role)
			easy = easy || j.tooEasy(*row.Role, j.study.Rows[i].Height)
		}
		if row.Difference != nil && *row.Arrival {
			off = append(off, *row.Difference)
		}
	}
	r.Offset = j.offset(off, known)
	lamps, readings := j.sampleChecks(r, pred.judges)
	j.say(lamps == Fail, LampsDiffer)
	j.say(readings == Fail, ReadingsDiffer)
	j.say(undecided, SampleUndecided)
	j.say(easy, SampleTooEasy)
}

// sampleChecks answers the questions of the study, and gives the first two answers.
func (j *judging) sampleChecks(r *SamplesResult, judges bool) (lamps, readings Answer) {
	lamps, readings = Open, Open
	worse := func(sum *Answer, a Answer) {
		if a == Fail || a == Pass && *sum == Open {
			*sum = a
		}
	}
	for i := range r.Rows {
		if !judges {
			break
		}
		worse(&lamps, r.Rows[i].Lamps)
		if a := r.Rows[i].Reading; a != nil {
			worse(&readings, *a)
		}
	}
	if o := r.Offset; o != nil && readings != Open && math.Abs(o.Value) > o.Allowed+slack {
		readings = Fail
	}
	j.check(CheckLamps, lamps)
	j.check(CheckReadings, readings)
	shown := func(name string, n int) { j.check(name, passes(judges && n >= roleLeast, Open)) }
	shown(CheckLong, r.Roles.Long)
	shown(CheckShort, r.Roles.Short)
	if s := j.plan.Samples; s == nil || s.TallestGood != nil {
		shown(CheckGood, r.Roles.Good)
	}
	shown(CheckEmpty, r.Roles.Empty)
	return lamps, readings
}

func (n *Roles) add(role string) {
	switch role {
	case model.Long:
		n.Long++
	case model.Short:
		n.Short++
	case model.Good:
		n.Good++
	case RoleEmpty:
		n.Empty++
	}
}

// offset is the mean difference of the readings that were stopped by something.
func (j *judging) offset(off []float64, known float64) *SampleOffset {
	if len(off) == 0 {
		return nil
	}
	c := j.plan.Force.Setting
	m, _ := meanOf(off, 0)
	n := float64(len(off))
	return &SampleOffset{N: len(off), Value: m, Allowed: root(allowedAt(j.plan, c), 2*pushSD(j.plan, c)/math.Sqrt(n), known)}
}

// tooEasy tells whether a sample lies so far beyond its limit that any station judges it
// rightly.
func (j *judging) tooEasy(role string, height *float64) bool {
	s := j.plan.Samples
	if s == nil || height == nil {
		return false
	}
	far := 3 * 2 * j.plan.ReadingUncertainty()
	switch role {
	case model.Long:
		return *height > s.Long+far+slack
	case model.Short:
		return *height < s.Short-far-slack
	}
	return false
}

// predictor tells of each row what must come.
type predictor struct {
	j      *judging
	p      float64 // with which probability a sample must be judged alike
	sig    model.Signals
	lit    bool // the signals are known
	window risk.Window
	judges bool    // something is accepted
	within float64 // mm, by how much a stopped reading may lie off the predicted one
}

// row is what must come of one row, and what came.
func (t *predictor) row(i int) SampleRow {
	given := &t.j.study.Rows[i]
	out := SampleRow{Row: i + 1, Sample: given.Sample, Lamps: Open}
	rest, nowhere := t.rests(given)
	if !t.lit {
		return out
	}
	if out.Chance = new(float64); t.judges {
		out.Chance, out.Role = t.role(given.Sample, rest, nowhere)
	}
	if !nowhere && t.sig.Early(rest) { // before the push begins nobody knows what they say
		return out
	}
	arrival, zone := t.sig.At(rest)
	if nowhere {
		arrival, zone = false, t.sig.InZone(t.sig.End)
	}
	if !arrival {
		rest = t.sig.End
	}
	out.Arrival, out.Zone, out.PredictedReading = &arrival, &zone, &rest
	if t.judges && (out.Role != nil || noPart(given.Sample)) {
		out.Lamps = passes(arrival == *given.Arrival && zone == *given.Zone, Fail)
	}
	if given.Reading != nil {
		off, within := *given.Reading-rest, t.within
		if !arrival {
			within = t.j.blur()
		}
		reading := passes(math.Abs(off) <= within+slack, Fail)
		out.Difference, out.Allowed, out.Reading = &off, &within, &reading
	}
	return out
}

func noPart(sample string) bool { return sample == NoInsert || sample == BareNest }

// rests is where a sample would stop the ram without error, mm, if anything does.
func (t *predictor) rests(row *Row) (reading float64, nowhere bool) {
	switch row.Sample {
	case NoInsert:
		return t.j.plan.WithoutInsert()
	case BareNest:
		return t.j.plan.PushAt(t.j.plan.Force.Setting).Reading, false
	}
	return t.j.plan.ReadingOf(*row.Height), false
}

// role is the chance that a sample is accepted, and what it proves by that; nil where it
// proves nothing either way.
func (t *predictor) role(sample string, rest float64, nowhere bool) (chance *float64, role *string) {
	var c float64
	if !nowhere {
		c = t.window.Accept(rest)
	}
	var name string
	switch {
	case c >= t.p:
		name = model.Good
	case c > 1-t.p:
		return &c, nil
	case noPart(sample):
		name = RoleEmpty
	case rest < (t.window.Low+t.window.High)/2:
		name = model.Long
	default:
		name = model.Short
	}
	return &c, &name
}
