package proving_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/proving"
)

var seven = []float64{10, 20, 30, 40, 50, 60, 70}

// underCell is a load cell study of five rounds through seven settings with a cell of 0.5 %,
// which reads wrong by the same share all along; the second half of the rounds warm.
func (s *truth) underCell() (study *proving.Study, cell float64) {
	cell = 1 + 0.0025*s.NormFloat64()
	study = &proving.Study{Format: proving.Format, Kind: proving.LoadCell, TakenAt: "2026-11-20", CalibratedAt: "2026-05-11", CellUncertainty: of(0.5)}
	for round := range 5 {
		for i, c := range seven {
			f, sd := s.push(c)
			n := round*len(seven) + i
			f += s.forceDrift * sd * (float64(n)/34 - 0.5)
			condition := proving.Cold
			if n >= 17 {
				condition = proving.Warm
			}
			study.Rows = append(study.Rows, proving.Row{Setting: of(c), Force: of(f * cell), Condition: condition})
		}
	}
	return study, cell
}

// inBand tells whether a force lies in the band of adopted entries.
func inBand(plan *press.Result, a *proving.Adopt, setting, force float64) bool {
	f, err := plan.ForceThrough(a.CurvePoints, setting)
	return err == nil && math.Abs(force-f) <= math.Hypot(*a.ForceTolerance/100*f, *a.ForceScatter)
}

// Right rams, scattering as the plan says.
func TestStationsForceLimits(t *testing.T) {
	plan, c := station(t, nil), newTally(t, right)
	for i := range repetitions() {
		s := rightStation(plan, 100+uint64(i))
		study, _ := s.underCell()
		j := proving.Judge(plan, study)
		r := j.Result.(*proving.LoadCellResult)
		c.add("scale holds", within(r.Fit.Scale.Limits, 1))
		c.add("factor holds", within(r.Scatter.FactorLimits, 1))
		for _, at := range r.Settings {
			next, _ := s.push(at.Setting)
			c.add("prediction holds", within(at.Predict, next))
			if j.Adopt != nil {
				next, _ = s.push(at.Setting)
				c.add("adopted band holds", inBand(plan, j.Adopt, at.Setting, next))
			}
		}
		c.add("said scaled", says(j, proving.CurveScaled))
		c.add("said bent", says(j, proving.CurveBent))
		c.add("said to scatter", answers(j)["scatter"] == proving.Fail)
		c.add("said to drift", says(j, proving.Drifting))
		c.add("said cold and warm", says(j, proving.ColdAndWarm))
		c.add("said odd", says(j, proving.OddlyScattered))
		c.add("outliers", says(j, proving.Outlying))
		c.add("adopts", j.Adopt != nil)
	}
	// Pushes of one study share its cell and its curve: their count is no sharper than that of the studies.
	for _, name := range []string{"prediction holds", "adopted band holds"} {
		c.n[name], c.times[name] = c.n[name]*repetitions()/c.times[name], repetitions()
	}
	c.near("prediction holds", 0.949)
	c.near("scale holds", 0.955)
	c.near("factor holds", 0.945)
	c.near("adopted band holds", 0.952)
	c.near("adopts", 1)
	c.seldom("said scaled", 0.009)
	c.seldom("said bent", 0.011)
	c.seldom("said to scatter", 0.011)
	c.seldom("said to drift", 0.007)
	c.seldom("said cold and warm", 0.009)
	c.seldom("said odd", 0.008)
	c.seldom("outliers", 0.01)
}

// Rams that scatter a third of the planned: right ones pass, wrong ones are told as what they are.
func TestStationsForceFaults(t *testing.T) {
	plan, c := station(t, nil), newTally(t, wrong)
	kinds := map[string]func(*truth){
		"right":         func(*truth) {},
		"weak by 2 %":   func(s *truth) { s.scale = 0.98 },
		"bent by 2 %":   func(s *truth) { s.bend = 0.02 },
		"bent by 3 %":   func(s *truth) { s.bend = 0.03 },
		"drift of 2 sd": func(s *truth) { s.forceDrift = 2 },
		"drift of 3 sd": func(s *truth) { s.forceDrift = 3 },
	}
	for i := range repetitions() {
		for name, fault := range kinds {
			s := rightStation(plan, 5000+uint64(i))
			s.tolerance, s.scatter = 1.0/3, 1.0/3
			fault(s)
			study, _ := s.underCell()
			j := proving.Judge(plan, study)
			c.add(name+": passes", j.Verdict == proving.Pass)
			c.add(name+": scaled", says(j, proving.CurveScaled))
			c.add(name+": bent", says(j, proving.CurveBent))
			c.add(name+": drift", says(j, proving.Drifting))
		}
	}
	c.near("right: passes", 0.98)
	c.often("weak by 2 %: scaled", 1)
	c.seldom("weak by 2 %: bent", 0.01)
	// The design's 44 and 91 % do not say how the curve bends between middle and ends, and a bow
	// that is flatter is seen more often. Of this one: SciPy 1.10.1, ncf.sf(f.ppf(0.99, 6, 28), 6, 28, λ)
	// with λ = ΣW(m − ρF)²/σ² of the bent curve (derived).
	c.near("bent by 2 %: bent", 0.364)
	c.near("bent by 3 %: bent", 0.847)
	c.seldom("bent by 3 %: drift", 0.01)
	c.near("drift of 2 sd: drift", 0.73)
	c.near("drift of 3 sd: drift", 0.99)
	c.seldom("drift of 3 sd: bent", 0.011)
}

// What a study offers, taken over into the plan, holds that same study: the new band is one of
// predictions. The design says 98 to 100 % of them, as the split of the scatter moves a little.
func TestStationsAdopted(t *testing.T) {
	plan, draft, c := station(t, nil), exampleDraft(t, nil), newTally(t, wrong)
	for i := range repetitions() / 4 {
		s := rightStation(plan, 110000+uint64(i))
		s.tolerance, s.scatter, s.scale = 1.0/3, 1.0/3, 0.97
		study, _ := s.underCell()
		adopt := proving.Judge(plan, study).Adopt
		adopted, ps := proving.Put(draft, adopt.Changes(plan.Plan)...).Check()
		if !assert.Empty(t, ps) {
			continue
		}
		j := proving.Judge(press.Evaluate(adopted), study)
		c.add("band holds its own study", answers(j)["band"] == proving.Pass)
		c.add("said scaled again", says(j, proving.CurveScaled))
	}
	c.often("band holds its own study", 0.98)
	c.seldom("said scaled again", 0)
}
