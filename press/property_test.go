package press

import (
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestEveryFigureIsANumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		r := Evaluate(p)
		everyNumber(reflect.ValueOf(r), "result", func(path string, x float64) {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Errorf("%s is %v", path, x)
			}
		})
		everyNumber(reflect.ValueOf(r.Traces()), "trace", func(path string, x float64) {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Errorf("%s is %v", path, x)
			}
		})
	})
}

func TestLowTypicalHigh(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Evaluate(randomPlan(t))
		rising := func(what string, v *Triple) {
			if v != nil && (v[0] > v[1]+1e-9 || v[1] > v[2]+1e-9) {
				t.Errorf("%s: %v", what, *v)
			}
		}
		rising("force", &Triple{r.Force.Low, r.Force.Typical, r.Force.High})
		if j := r.Joint; j != nil {
			rising("demand", &j.Demand)
			rising("interference", j.Interference)
			rising("effective", j.Effective)
			rising("pressure", j.Pressure)
			rising("holding", j.Holding)
		}
		for _, ppm := range []*float64{r.Risk.ConsumerPPM, r.Risk.ProducerPPM, &r.Risk.EarlyContactPPM} {
			if ppm != nil && (*ppm < 0 || *ppm > 1e6) {
				t.Errorf("a share of %v ppm", *ppm)
			}
		}
	})
}

// More force never seats a part less deep.
func TestMoreForceSeatsDeeper(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		w := evaluated(p)
		before := math.Inf(-1)
		for i := range 40 {
			c := p.Ram.SettingMin + (p.Ram.SettingMax-p.Ram.SettingMin)*float64(i)/39
			r, _ := w.rest(0, w.force.at(c).typical, w.joint.push[mid])
			if r < before-1e-9 {
				t.Fatalf("setting %v rests at %v, a lower one at %v", c, r, before)
			}
			before = r
		}
	})
}

// A wider zone never accepts less.
func TestWiderZoneAcceptsMore(t *testing.T) {
	p := example(t)
	accepted := func(z1, z2 string) []float64 {
		w := evaluated(with(t, p, "window.zone_start", z1, "window.zone_end", z2))
		var out []float64
		for r := 114.9; r < 115.4; r += 0.01 {
			out = append(out, w.chance.window.Accept(r))
		}
		return out
	}
	narrow, wide, wider := accepted("115.1", "115.15"), accepted("115.08", "115.17"), accepted("115", "115.4")
	for i := range narrow {
		assert.LessOrEqual(t, narrow[i], wide[i]+1e-12)
		assert.LessOrEqual(t, wide[i], wider[i]+1e-12)
	}
}

// Exchanging minus and plus of every row mirrors every position about the one
// of the nominal lengths.
func TestTurnedTolerancesMirrorTheReading(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		d := p.Draft()
		contact, seat := p.Station.Nest, p.Station.Nest
		for i, row := range p.Parts {
			d.Set(RowPath("parts[].minus", i), plainNumber(row.Plus))
			d.Set(RowPath("parts[].plus", i), plainNumber(row.Minus))
			contact -= row.Contact * row.Nominal
			seat -= row.Seat * row.Nominal
		}
		q, ps := d.Check()
		require.Empty(t, ps)
		a, b := evaluated(p).parts, evaluated(q).parts
		assert.InDelta(t, 2*contact, a.xContact+b.xContact, 1e-9)
		assert.InDelta(t, 2*seat, a.xSeat+b.xSeat, 1e-9)
	})
}

// The proposed step is the best of all, found by looking at every one.
func TestProposalIsTheBestStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		w := evaluated(p)
		f := &w.r.Force
		if f.Need <= 0 {
			return
		}
		margin := func(c float64) float64 {
			at := w.force.at(c)
			strong := math.Inf(1)
			if at.high() > 0 {
				strong = f.Cap / at.high()
			}
			return math.Min(at.low()/f.Need, strong)
		}
		all := p.Ram.steps()
		best := all.at(all.first)
		for k := all.first; k <= all.last; k++ {
			if margin(all.at(k)) > margin(best)+1e-12*math.Abs(margin(best)) {
				best = all.at(k)
			}
		}
		if f.Setting != best {
			t.Fatalf("proposed %v with %v, best is %v with %v", f.Setting, margin(f.Setting), best, margin(best))
		}
	})
}

// Plans keep what was given: through the draft, through the file, and back.
func TestDraftKeepsTheDigest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		again, ps := Decode(p.JSON())
		require.Empty(t, ps)
		assert.Equal(t, p.Digest(), again.Digest())
		d, ps := DecodeDraft(p.Draft().Encode())
		require.Empty(t, ps)
		back, ps := d.Check()
		require.Empty(t, ps)
		assert.Equal(t, p.Digest(), back.Digest())
	})
}
