package proof

import (
	"math"
	"math/rand/v2"
	"testing"

	"ramplan/press/proving"
)

// anyStudy draws a study of a kind, as odd as a reader lets it through: few rows, equal ones,
// coarse ones, far ones, falling ones.
func anyStudy(r *rand.Rand, kind string) *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: kind, TakenAt: "2026-11-20", Height: of(40.0)}
	step := []float64{0.001, 0.01, 0.1, 1e-7}[r.IntN(4)]
	by := []float64{0, 0.004, 0.02, 0.3}[r.IntN(4)]
	about := func(x float64) *float64 { return of(math.Round((x+by*r.NormFloat64())/step) * step) }
	maybe := func(x *float64) *float64 {
		if r.IntN(3) == 0 {
			return nil
		}
		return x
	}
	if r.IntN(2) == 0 {
		s.HeightUncertainty, s.CellUncertainty, s.CalibratedAt = of(0.004), of(0.5), "2026-01-10"
	}
	settings := []float64{10, 40, 66, 70, 90}[:1+r.IntN(5)]
	slope := []float64{1 / 18000.0, 0, -1 / 9000.0}[r.IntN(3)]
	for i := range 1 + r.IntN(30) {
		c := settings[i%len(settings)]
		row := proving.Row{Remark: "invented"}
		switch kind {
		case proving.LoadCell:
			row.Setting, row.Force = of(c), of(math.Max(0, *about(38 * c)+20*by*r.NormFloat64()))
			row.Speed, row.Condition = maybe(of(10*r.Float64()+0.1)), []string{"", proving.Cold, proving.Warm}[r.IntN(3)]
		case proving.Stiffness:
			row.Setting, row.Force, row.Reading = of(c), of(38*c), about(100+slope*38*c)
			if len(settings) == 2 {
				row.Force = nil
			}
		case proving.Master, proving.Restart:
			row.Reading = about(100.137)
			if kind == proving.Restart {
				row.Start, row.Condition = of(float64(1+r.IntN(6))), []string{proving.Cold, proving.Warm}[r.IntN(2)]
			}
		case proving.Trial, proving.Samples:
			row.Arrival, row.Zone = of(r.IntN(3) > 0), of(r.IntN(3) > 0)
			row.Height = of(25 + 0.3*(r.Float64()-0.5))
			row.Reading = about(140.137 - *row.Height)
			if kind == proving.Trial {
				row.Height = maybe(row.Height)
			} else if row.Sample = []string{"T1", proving.NoInsert, proving.BareNest}[r.IntN(3)]; row.Sample != "T1" {
				row.Height = nil
			}
		}
		s.Rows = append(s.Rows, row)
	}
	return s
}

// Whatever was studied, everything that is said of it is a sentence. Seeded; it holds for any.
func TestWhateverWasStudiedIsSaid(t *testing.T) {
	var say Words
	r := rand.New(rand.NewPCG(7, 14))
	plans := []map[string]string{nil, {"requirement.height_low": "24.99", "requirement.height_high": "25.01"}, {"joint.drag": "2500", "window.setting": "66"}, {"ram.force_tolerance": "0", "ram.force_scatter": "0", "ram.repeatability": "0"}}
	for _, changes := range plans {
		plan := station(t, changes)
		for range 40 {
			var list []*proving.Study
			for _, kind := range proving.Kinds[:6] {
				list = append(list, anyStudy(r, kind))
			}
			a := proving.Assess(plan, list, "2026-11-28")
			a.JSON()
			say.Explain(plan, list, a)
			for i := range a.Studies {
				j := &a.Studies[i]
				for _, f := range j.Findings {
					holds(t, f.Message)
				}
				for _, c := range j.Checks {
					holds(t, say.CheckSaid(plan, list[i], j, c))
					if c.Outcome != proving.Pass {
						holds(t, say.CheckAdvice(j.Kind, c))
					}
				}
				if j.Result != nil {
					holds(t, say.LeadOf(plan, list[i], j))
				}
				for _, c := range j.Adopt.Changes(plan.Plan) {
					say.AdoptValues(plan.Plan, c)
				}
			}
			holds(t, say.RevisionState("A", &a.Proved))
			if a.Proved.AsFound != nil {
				holds(t, say.AsFoundOf(plan, a.Proved.AsFound))
			}
		}
	}
}
