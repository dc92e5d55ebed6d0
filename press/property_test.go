package press

import (
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/strict"
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

// Exchanging minus and plus of every row mirrors every position about the one
// of the nominal lengths.
func TestTurnedTolerancesMirrorTheReading(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		d := p.Draft()
		contact, seat := p.Station.Nest, p.Station.Nest
		for i, row := range p.Parts {
			d.Set(RowPath("parts[].minus", i), strict.PlainNumber(row.Plus))
			d.Set(RowPath("parts[].plus", i), strict.PlainNumber(row.Minus))
			contact -= row.Contact * row.Nominal
			seat -= row.Seat * row.Nominal
		}
		q, ps := d.Check()
		require.Empty(t, ps)
		a, b := Evaluate(p).Stack, Evaluate(q).Stack
		assert.InDelta(t, 2*contact, 2*p.Station.Nest-a.Contact.Mean-b.Contact.Mean, 1e-9)
		assert.InDelta(t, 2*seat, 2*p.Station.Nest-a.Seat.Mean-b.Seat.Mean, 1e-9)
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
