package proving_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"ramplan/press"
	"ramplan/press/proving"
)

// rests is where a reading comes to stand on something of a true height, the n-th of so many
// pushes: where the plan has it, off as the station is, with the scatter of one push.
func (s *truth) rests(height float64, n, of int) float64 {
	st := &s.plan.Plan.Station
	f := s.plan.PushAt(s.plan.Force.Setting).Typical
	at := st.Nest + (f-st.NestForce)/s.stiffness - height + s.off + s.pushSD()*s.NormFloat64()
	return at + s.drift*(float64(n)/float64(of-1)-0.5)
}

// onMaster are so many pushes on a master of 40 mm.
func (s *truth) onMaster(pushes int) *proving.Study {
	study := &proving.Study{Format: proving.Format, Kind: proving.Master, TakenAt: "2026-11-22", Height: of(40.0)}
	for i := range pushes {
		study.Rows = append(study.Rows, proving.Row{Reading: of(s.rests(40, i, pushes))})
	}
	return study
}

func TestStationsMasterLimits(t *testing.T) {
	plan, c := station(t, nil), newTally(t, right)
	for i := range repetitions() {
		s := rightStation(plan, 40000+uint64(i))
		s.asAllowed(false)
		j := proving.Judge(plan, s.onMaster(25))
		r := j.Result.(*proving.MasterResult)
		c.add("bias holds", math.Abs(r.Bias.Value-s.off) <= *r.Bias.Uncertainty)
		c.add("sd holds", within(r.SDLimits, s.pushSD()))
		c.add("repeatability upper holds", 2*s.pushSD() <= *r.Repeatability.Upper)
		c.add("said spread", says(j, proving.SpreadOverPlan))
		c.add("said to drift", says(j, proving.Drifting))
		c.add("said nest off", says(j, proving.NestOff))
		c.add("outliers", says(j, proving.Outlying))
	}
	c.near("bias holds", 0.953)
	c.near("sd holds", 0.944)
	c.near("repeatability upper holds", 0.95)
	c.seldom("said spread", 0.013)
	c.seldom("said to drift", 0.019)
	c.near("said nest off", 0.048)
	c.seldom("outliers", 0.01)
}

func TestStationsMasterFaults(t *testing.T) {
	plan, c := station(t, nil), newTally(t, wrong)
	planned := rightStation(plan, 0).pushSD()
	for i := range repetitions() {
		for name, fault := range map[string]func(*truth){
			"right":      func(*truth) {},
			"nest 0.02":  func(s *truth) { s.off = 0.02 },
			"nest 0.03":  func(s *truth) { s.off = 0.03 },
			"sd × 1.5":   func(s *truth) { s.sd = 1.5 * planned },
			"sd × 2":     func(s *truth) { s.sd = 2 * planned },
			"drift 2 sd": func(s *truth) { s.drift = 2 * planned },
			"drift 3 sd": func(s *truth) { s.drift = 3 * planned },
		} {
			s := rightStation(plan, 50000+uint64(i))
			fault(s)
			j := proving.Judge(plan, s.onMaster(25))
			c.add(name+": nest off", says(j, proving.NestOff))
			c.add(name+": spread", says(j, proving.SpreadOverPlan))
			c.add(name+": drift", says(j, proving.Drifting))
		}
	}
	c.near("nest 0.02: nest off", 0.53)
	c.near("nest 0.03: nest off", 1)
	c.seldom("nest 0.03: drift", 0.019)
	c.near("sd × 1.5: spread", 0.72)
	c.near("sd × 2: spread", 0.99)
	c.near("drift 2 sd: drift", 0.53)
	c.near("drift 3 sd: drift", 0.93)
	c.seldom("drift 3 sd: nest off", 0.01)
}

// Seven starts of three pushes: what ± a new start is supported to keep holds the true one in
// 95 of 100, at one side, and starts that do not differ are told to in one of 100.
func TestStationsRestart(t *testing.T) {
	plan, c := station(t, nil), newTally(t, right)
	after := func(s *truth, move float64) proving.Judged {
		study := &proving.Study{Format: proving.Format, Kind: proving.Restart, TakenAt: "2026-11-23", Height: of(40.0)}
		for start := range 7 {
			s.off = move * s.NormFloat64()
			for range 3 {
				study.Rows = append(study.Rows, proving.Row{Reading: of(s.rests(40, 0, 2)), Start: of(float64(start + 1))})
			}
		}
		return proving.Judge(plan, study)
	}
	st := &plan.Plan.Station
	planned := math.Hypot(st.ReferenceUncertainty/2, st.NestDrift/math.Sqrt(3))
	for i := range repetitions() {
		still := after(rightStation(plan, 60000+uint64(i)), 0)
		c.add("said to differ", says(still, proving.StartsDiffer))
		s := rightStation(plan, 61000+uint64(i))
		right := after(s, planned)
		r := right.Result.(*proving.RestartResult)
		c.add("supported holds", 2*math.Sqrt(planned*planned+s.pushSD()*s.pushSD()/3) <= *r.Supported)
		c.add("said spread", says(right, proving.SpreadOverPlan))
		much := after(rightStation(plan, 62000+uint64(i)), 4*planned)
		c.add("four times the planned: spread", says(much, proving.SpreadOverPlan))
	}
	c.near("supported holds", 0.95) // by its definition
	c.near("said to differ", 0.01)  // by its level
	c.near("said spread", 0.01)     // likewise
	// By hand: the means scatter by √(16σ² + σ_push²/3) where √(σ² + σ_push²/3) was planned.
	push := rightStation(plan, 0).pushSD()
	ratio := (planned*planned + push*push/3) / (16*planned*planned + push*push/3)
	starts := distuv.ChiSquared{K: 6}
	c.near("four times the planned: spread", starts.Survival(starts.Quantile(0.99)*ratio))
}

// trialOf are so many parts of the drawing's rows as they come, measured to ± 0.004 mm.
// spread is how much wider they scatter about their means than the plan says.
func (s *truth) trialOf(parts int, spread float64) *proving.Study {
	study := &proving.Study{Format: proving.Format, Kind: proving.Trial, TakenAt: "2026-11-24", PlanDigest: s.plan.PlanDigest(), HeightUncertainty: of(0.004)}
	sig, _ := s.plan.Signals()
	for i := range parts {
		seat := s.seat(spread)
		at := s.rests(seat, i, parts)
		r := lampsOf(sig, at)
		r.Height = of(seat + s.gauge)
		study.Rows = append(study.Rows, r)
	}
	return study
}

// seat is the seated height of one part, by the plan's rows: those of the example are normal or
// uniform, and none lies under the datum.
func (s *truth) seat(spread float64) float64 {
	h := 0.0
	for _, row := range s.plan.Plan.Parts {
		half := (row.Minus + row.Plus) / 2
		off := half * (2*s.Float64() - 1)
		if row.Shape == press.Normal {
			off = half / row.Sigmas * s.NormFloat64()
		}
		h += row.Seat * (row.Nominal + (row.Plus-row.Minus)/2 + spread*off)
	}
	return h
}

// lampsOf is what the lamps say where the ram rests, and what is read: where the push ends, if
// nothing stops it before.
func lampsOf(sig press.Signals, at float64) proving.Row {
	arrival := at <= sig.End
	if !arrival {
		at = sig.End
	}
	zone := sig.InZone(at)
	return proving.Row{Reading: of(at), Arrival: &arrival, Zone: &zone}
}

func TestStationsTrialLimits(t *testing.T) {
	plan, c := station(t, nil), newTally(t, right)
	mean, sd := plan.Heights()
	q := &plan.Plan.Requirement
	for i := range repetitions() {
		s := rightStation(plan, 70000+uint64(i))
		s.asAllowed(false)
		s.gauge = 0.002 * s.NormFloat64()
		j := proving.Judge(plan, s.trialOf(40, 1))
		r := j.Result.(*proving.TrialResult)
		if r.Used == r.N { // where parts came to rest at the end, the readings are cut
			c.add("shift holds", math.Abs(r.StationShift.Value-s.off) <= *r.StationShift.Uncertainty)
		}
		c.add("Pp holds", within(r.Capability.PpLimits, (q.HeightHigh-q.HeightLow)/(6*sd)))
		c.add("Ppk holds", within(r.Capability.PpkLimits, math.Min(q.HeightHigh-mean, mean-q.HeightLow)/(3*sd)))
		c.add("said nest off", says(j, proving.NestOff))
		c.add("said more rejects", says(j, proving.MoreRejects))
		c.add("said not normal", says(j, proving.NotNormal))
		c.add("said to drift", says(j, proving.Drifting))
		c.add("said spread", says(j, proving.SpreadOverPlan))
		c.add("lamps differ", says(j, proving.LampsDiffer))
		c.add("outliers", says(j, proving.Outlying))
		c.add("passes", j.Verdict == proving.Pass)
	}
	c.near("shift holds", 0.96)
	c.near("Pp holds", 0.98)
	c.near("Ppk holds", 0.98)
	c.near("said nest off", 0.041)
	c.seldom("said more rejects", 0.016)
	c.seldom("said not normal", 0.01)
	c.seldom("said to drift", 0.019)
	c.seldom("lamps differ", 0)
	c.seldom("outliers", 0.01)
	c.near("passes", 0.93)
}

func TestStationsTrialFaults(t *testing.T) {
	plan, c := station(t, nil), newTally(t, wrong)
	for i := range repetitions() {
		for name, fault := range map[string]struct {
			off, drift, spread float64
		}{
			"right": {0, 0, 1}, "nest 0.02": {0.02, 0, 1}, "nest 0.03": {0.03, 0, 1},
			"drift 0.03": {0, 0.03, 1}, "drift 0.045": {0, 0.045, 1}, "parts × 2": {0, 0, 2},
		} {
			s := rightStation(plan, 80000+uint64(i))
			s.off, s.drift = fault.off, fault.drift
			j := proving.Judge(plan, s.trialOf(40, fault.spread))
			r := j.Result.(*proving.TrialResult)
			c.add(name+": nest off", says(j, proving.NestOff))
			c.add(name+": drift", says(j, proving.Drifting))
			c.add(name+": spread", says(j, proving.SpreadOverPlan))
			c.add(name+": three steps", r.Correction != nil && r.Correction.Steps == 3)
		}
	}
	c.near("nest 0.02: nest off", 0.39)
	c.near("nest 0.03: nest off", 1)
	c.near("nest 0.03: three steps", 0.99)
	c.near("drift 0.03: drift", 0.78)
	c.near("drift 0.045: drift", 1)
	c.near("parts × 2: spread", 0.72)
	c.seldom("right: nest off", 0.01)
}

// Four samples, three pushes each: the limit samples, the nominal part, the empty nest.
func (s *truth) samplesOf() *proving.Study {
	limits := s.plan.Samples
	study := &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: "2026-11-25", PlanDigest: s.plan.PlanDigest(), HeightUncertainty: of(0.002)}
	sig, _ := s.plan.Signals()
	for range 3 {
		for _, one := range []struct {
			name   string
			height float64
		}{{"T1", limits.Long}, {"G1", (*limits.TallestGood + *limits.ShortestGood) / 2}, {"S1", limits.Short}, {proving.BareNest, 0}} {
			height := one.height
			r := lampsOf(sig, s.rests(height, 0, 2))
			if one.name != proving.BareNest {
				r.Height = of(height)
			}
			r.Sample = one.name
			study.Rows = append(study.Rows, r)
		}
	}
	return study
}

func TestStationsSamples(t *testing.T) {
	plan, c := station(t, nil), newTally(t, right)
	for i := range repetitions() {
		s := rightStation(plan, 90000+uint64(i))
		s.asAllowed(false)
		c.add("right: readings differ", says(proving.Judge(plan, s.samplesOf()), proving.ReadingsDiffer))
		s = rightStation(plan, 91000+uint64(i))
		s.off = 0.03
		c.add("nest 0.03: readings differ", says(proving.Judge(plan, s.samplesOf()), proving.ReadingsDiffer))
	}
	c.near("right: readings differ", 0.034)
	c.near("nest 0.03: readings differ", 0.97)
}
