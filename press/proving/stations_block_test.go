package proving_test

import (
	"testing"

	"ramplan/press"
	"ramplan/press/proving"
)

// onBlock is a stiffness study: three rounds through some settings, the force of each push
// measured by a cell of 0.5 %, the block known to 0.002 mm. Pushes of the simulated ram scatter
// a third of what the plan allows, readings by sd. deep is by which the lowest level lies off.
func (s *truth) onBlock(settings []float64, deep float64) *proving.Study {
	cell, height := 1+0.0025*s.NormFloat64(), 0.001*s.NormFloat64()
	st := &s.plan.Plan.Station
	study := &proving.Study{Format: proving.Format, Kind: proving.Stiffness, TakenAt: "2026-11-21", Height: of(40.0), HeightUncertainty: of(0.002), CellUncertainty: of(0.5)}
	all := float64(3*len(settings) - 1)
	for range 3 {
		for i, c := range settings {
			f, _ := s.push(c)
			at := st.Nest + s.off + (f-st.NestForce)/s.stiffness - 40 + height + s.sd*s.NormFloat64()
			at += s.drift * (float64(len(study.Rows))/all - 0.5)
			if i == 0 {
				at -= deep
			}
			study.Rows = append(study.Rows, proving.Row{Setting: of(c), Force: of(f * cell), Reading: of(at)})
		}
	}
	return study
}

func blockStation(plan *press.Result, seed uint64) *truth {
	s := rightStation(plan, seed)
	s.tolerance, s.scatter, s.sd = 1.0/3, 1.0/3, 0.005
	return s
}

var five = []float64{30, 40, 50, 60, 66}

// Right stations: as stiff as the plan allows, the nest as far off as it allows.
func TestStationsBlockLimits(t *testing.T) {
	plan, c := station(t, nil), newTally(t, right)
	for i := range repetitions() {
		s := blockStation(plan, 20000+uint64(i))
		st := &s.plan.Plan.Station
		s.asAllowed(true)
		s.stiffness = st.Stiffness / (1 + st.StiffnessTolerance/200*s.NormFloat64())
		study := s.onBlock(five, 0)
		j := proving.Judge(s.plan, study)
		r := j.Result.(*proving.StiffnessResult)
		in := func(f *proving.NestFound) bool {
			at := st.Nest + s.off + (f.NestForce-st.NestForce)/s.stiffness
			return f.Value-*f.Uncertainty <= at && at <= f.Value+*f.Uncertainty
		}
		c.add("stiffness holds", *r.Stiffness.Limits[0] <= s.stiffness && (r.Stiffness.Limits[1] == nil || s.stiffness <= *r.Stiffness.Limits[1]))
		c.add("nest holds", in(r.Nest))
		c.add("taught holds", in(r.Taught))
		c.add("repeatability upper holds", 2*s.sd <= *r.Repeatability.Upper)
		c.add("said to start up", says(j, proving.StartupRange))
		c.add("said to be bent", says(j, proving.NotLinear))
		c.add("said stiffness off", says(j, proving.StiffnessOff))
		c.add("said to drift", says(j, proving.Drifting))
		c.add("outliers", says(j, proving.Outlying))
	}
	c.near("stiffness holds", 0.951)
	c.near("nest holds", 0.951)
	c.near("taught holds", 0.946)
	c.near("repeatability upper holds", 0.95)
	c.seldom("said to start up", 0.009)
	c.seldom("said to be bent", 0.005)
	c.seldom("said stiffness off", 0.035)
	c.seldom("said to drift", 0.019)
	c.seldom("outliers", 0.01)
}

func TestStationsBlockFaults(t *testing.T) {
	plan, c := station(t, nil), newTally(t, wrong)
	levels := []float64{15, 20, 30, 40, 50, 60, 66}
	for i := range repetitions() {
		for name, fault := range map[string]struct {
			change   func(*truth)
			settings []float64
			deep     float64
		}{
			"right":                    {func(*truth) {}, five, 0},
			"nest 0.03":                {func(s *truth) { s.off = 0.03 }, five, 0},
			"soft 14 %":                {func(s *truth) { s.stiffness *= 0.86 }, five, 0},
			"soft 22 %":                {func(s *truth) { s.stiffness *= 0.78 }, five, 0},
			"drift 0.02":               {func(s *truth) { s.drift = 0.02 }, five, 0},
			"start-up 0.016, sd 0.005": {func(*truth) {}, levels, 0.016},
			"start-up 0.016, sd 0.003": {func(s *truth) { s.sd = 0.003 }, levels, 0.016},
		} {
			s := blockStation(plan, 30000+uint64(i))
			fault.change(s)
			j := proving.Judge(s.plan, s.onBlock(fault.settings, fault.deep))
			c.add(name+": nest off", says(j, proving.NestOff))
			c.add(name+": stiffness off", says(j, proving.StiffnessOff))
			c.add(name+": drift", says(j, proving.Drifting))
			c.add(name+": start-up", says(j, proving.StartupRange))
		}
	}
	c.near("nest 0.03: nest off", 1)
	c.seldom("nest 0.03: stiffness off", 0.035)
	c.near("soft 14 %: stiffness off", 0.90)
	c.near("soft 22 %: stiffness off", 1)
	c.near("drift 0.02: drift", 0.81)
	c.seldom("drift 0.02: nest off", 0.01)
	// The design's 52 and 97 % do not say what the play does to the next levels. Where it touches
	// the lowest of these seven alone: SciPy 1.10.1, nct with 18 degrees of freedom beyond
	// t.ppf(0.995, 18) (derived).
	c.near("start-up 0.016, sd 0.005: start-up", 0.901)
	c.near("start-up 0.016, sd 0.003: start-up", 1)
	c.seldom("right: nest off", 0.01)
}
