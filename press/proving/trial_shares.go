package proving

import (
	"math"

	"ramplan/press/model"
	"ramplan/press/study"
)

// pairs are the four pairs of the signals, arrival first.
var pairs = []struct {
	name          string
	arrival, zone bool
}{{"on_on", true, true}, {"on_off", true, false}, {"off_on", false, true}, {"off_off", false, false}}

// shares counts the four pairs and what was not accepted, and lists the rows whose lamps do
// not go with their reading; known is false where the plan has no signals to hold them to.
func (j *judging) shares(r *TrialResult) (known bool) {
	n := len(j.study.Rows)
	c, predicted := j.plan.PartChances(0)
	for _, p := range pairs {
		s := SeenShare{Pair: p.name, Of: n}
		for i := range j.study.Rows {
			if row := &j.study.Rows[i]; *row.Arrival == p.arrival && *row.Zone == p.zone {
				s.Seen++
			}
		}
		if predicted {
			share := c.Of(p.arrival, p.zone)
			s.Predicted = &share
		}
		s.count()
		r.Shares = append(r.Shares, s)
	}
	accepted := &r.Shares[0]
	r.Rejects = SeenShare{Seen: n - accepted.Seen, Of: n}
	if predicted {
		share := 1 - *accepted.Predicted
		r.Rejects.Predicted = &share
	}
	r.Rejects.count()
	r.Rejects.decide()
	return j.lamps(r)
}

// count works out the share and its limits.
func (s *SeenShare) count() {
	if s.Of == 0 {
		return
	}
	share := float64(s.Seen) / float64(s.Of)
	low, high := study.ShareLimits(int64(s.Seen), int64(s.Of))
	s.Share, s.Limits = &share, &Pair{low, high}
}

// decide works out the limit that a check rests on.
func (s *SeenShare) decide() {
	if s.Of > 0 {
		lower := study.ShareLower(int64(s.Seen), int64(s.Of))
		s.Lower = &lower
	}
}

// known tells whether what was seen can be held against a prediction; refuted, whether it
// was seen more often than that.
func (s *SeenShare) known() bool { return s.Lower != nil && s.Predicted != nil }

func (s *SeenShare) refuted() bool { return s.known() && *s.Lower > *s.Predicted }

// lamps lists the rows whose lamps do not go with the reading. Close to an edge, or just as
// far from it as the blur goes, either is right.
func (j *judging) lamps(r *TrialResult) (known bool) {
	r.LampMismatch = []int{}
	sig, ok := j.plan.Signals()
	if !ok {
		return false
	}
	blur := j.blur()
	near := func(x, edge float64) bool { return math.Abs(x-edge) < blur+slack }
	for i := range j.study.Rows {
		row := &j.study.Rows[i]
		x := *row.Reading
		var right bool
		if *row.Arrival {
			zone := *row.Zone == sig.InZone(x) || near(x, sig.ZoneStart) || near(x, sig.ZoneEnd)
			right = zone && (sig.Arrives(x) || near(x, sig.End))
		} else {
			right = *row.Zone == sig.InZone(sig.End) && near(x, sig.End)
		}
		if !right {
			r.LampMismatch = append(r.LampMismatch, i+1)
		}
	}
	return true
}

// blur is how close to an edge nobody can tell on which side of it a ram came to rest, mm.
func (j *judging) blur() float64 {
	p := j.plan.Plan
	return max(p.Station.PositionStep, p.Ram.Repeatability)
}

// truth holds what the lamps said against what was measured; nil where nothing was.
func (j *judging) truth() *Truth {
	t := &Truth{Matrix: map[string]PairSum{model.Long: {}, model.Good: {}, model.Short: {}}}
	q, doubt := &j.plan.Plan.Requirement, orElse(j.study.HeightUncertainty, 0)
	for _, row := range j.study.Rows {
		if row.Height == nil {
			continue
		}
		t.N++
		h := *row.Height
		if math.Abs(h-q.HeightLow) < doubt-slack || math.Abs(h-q.HeightHigh) < doubt-slack {
			t.Doubtful++
			continue
		}
		word := model.Good
		switch {
		case h > q.HeightHigh+slack:
			word = model.Long
		case h < q.HeightLow-slack:
			word = model.Short
		}
		sum := t.Matrix[word]
		sum.add(*row.Arrival, *row.Zone)
		t.Matrix[word] = sum
		switch accepted := *row.Arrival && *row.Zone; {
		case accepted && word != model.Good:
			t.FalseAccept.Seen++
		case !accepted && word == model.Good:
			t.FalseReject.Seen++
		}
	}
	if t.N == 0 {
		return nil
	}
	share := func(s *SeenShare, ppm *float64) {
		if s.Of = t.N - t.Doubtful; ppm != nil {
			p := *ppm / 1e6
			s.Predicted = &p
		}
		s.count()
	}
	share(&t.FalseAccept, j.plan.Risk.ConsumerPPM)
	share(&t.FalseReject, j.plan.Risk.ProducerPPM)
	t.FalseAccept.decide()
	return t
}

func (p *PairSum) add(arrival, zone bool) {
	switch {
	case arrival && zone:
		p.OnOn++
	case arrival:
		p.OnOff++
	case zone:
		p.OffOn++
	default:
		p.OffOff++
	}
}
