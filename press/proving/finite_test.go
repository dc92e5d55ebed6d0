package proving_test

import (
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/proving"
)

// finite holds that every figure of a result is a number: what cannot be computed is nil.
func finite(t require.TestingT, at string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			finite(t, at, v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			finite(t, at+"."+v.Type().Field(i).Name, v.Field(i))
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			finite(t, at, v.Index(i))
		}
	case reflect.Float64:
		require.False(t, math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0), "%s is %v", at, v.Float())
	}
}

func allFinite(t require.TestingT, j proving.Judged) {
	finite(t, j.Kind, reflect.ValueOf(j.Result))
	finite(t, j.Kind+" adopts", reflect.ValueOf(j.Adopt))
}

// Any studies of forces and of a block, however few, coarse, equal or far off, give figures
// that are numbers, and places that are what they say.
func TestAnyForces(t *testing.T) {
	plans := map[bool]map[string]string{false: nil, true: simple}
	rapid.Check(t, func(rt *rapid.T) {
		plan := station(t, plans[rapid.Bool().Draw(rt, "simple")])
		step := rapid.SampledFrom([]float64{1e-6, 0.1, 10, 1e5}).Draw(rt, "step")
		n := rapid.IntRange(1, 30).Draw(rt, "rows")
		forces := func(kind string) *proving.Study {
			s := &proving.Study{Format: proving.Format, Kind: kind, TakenAt: "2026-11-20"}
			if rapid.Bool().Draw(rt, "cell known") {
				s.CellUncertainty = of(rapid.SampledFrom([]float64{0, 0.5, 100}).Draw(rt, "cell"))
			}
			for range n {
				r := proving.Row{Setting: of(float64(rapid.IntRange(0, 16).Draw(rt, "setting")) * 5)}
				r.Force = of(math.Max(0, 40**r.Setting-200+step*float64(rapid.IntRange(-2, 2).Draw(rt, "off"))))
				s.Rows = append(s.Rows, r)
			}
			return s
		}
		cell := forces(proving.LoadCell)
		if rapid.Bool().Draw(rt, "conditions") {
			for i := range cell.Rows {
				cell.Rows[i].Condition = rapid.SampledFrom([]string{proving.Cold, proving.Warm}).Draw(rt, "condition")
			}
		}
		j := one(t, plan, cell)
		allFinite(rt, j)
		r := j.Result.(*proving.LoadCellResult)
		require.Equal(rt, n, r.N)
		for _, s := range r.Settings {
			if s.Place == nil {
				continue
			}
			inside := s.Predict[0] >= s.Plan[0]-0.1 && s.Predict[1] <= s.Plan[2]+0.1
			require.Equal(rt, inside, *s.Place == proving.Inside)
			if *s.Place == proving.Outside {
				require.True(rt, s.Mean > s.Plan[2] || s.Mean < s.Plan[0])
			}
		}

		block := forces(proving.Stiffness)
		block.Height = of(40.0)
		block.HeightUncertainty = of(rapid.SampledFrom([]float64{0, 0.002}).Draw(rt, "height"))
		inCurve := rapid.Bool().Draw(rt, "without forces")
		for i := range block.Rows {
			r := &block.Rows[i]
			r.Reading = of(100 + *r.Force/18000 + 0.001*float64(rapid.IntRange(-3, 3).Draw(rt, "reading")))
			if inCurve {
				r.Force = nil
			}
		}
		allFinite(rt, one(t, plan, block))
	})
}
