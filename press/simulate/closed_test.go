package simulate

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/model"
	"ramplan/press/stack"
)

// Where nothing stalls, and the frame bends by one amount, the simulation is the closed
// form: the estimate is the integral itself.
func TestEstimateIsTheClosedForm(t *testing.T) {
	checks(t, 10)
	rapid.Check(t, func(t *rapid.T) {
		in := randomInput(t)
		in.Ram.ForceTolerance, in.Ram.ForceScatter, in.Station.StiffnessTolerance = 0, 0, 0
		in.Joint = model.Joint{Kind: model.Touch, Stop: model.Shoulder}
		in.Parts = in.Parts[:2] // all that is pressed in goes
		in.Parts[1].Contact = 1
		in.Motion.Clearance = 3 // the closed form of heights knows nothing of what is met early
		s, out := evaluatedAny(t, in)
		if s == nil || !s.Known() {
			return
		}
		// Derived: both integrals are good to 1e-9, and forgive 1e-9 mm or nothing where a
		// reading has no error: 0.01 ppm as the closed form promises, ten times that there.
		within := 0.01
		if s.repeatability+s.reference+s.drift == 0 {
			within = 0.1
		}
		e := estimatedAny(s)
		require.InDelta(t, *out.Risk.ConsumerPPM, ppmOf(e.Named[FalseAcceptHeight].Value), within)
		require.InDelta(t, *out.Risk.ProducerPPM, ppmOf(e.Named[FalseReject].Value), within)
		require.InDelta(t, out.Risk.ConformingShare, e.Named[ConformingShare].Value, 1e-8)
		require.InDelta(t, out.Risk.EarlyContactPPM, ppmOf(e.Named[EarlyContact].Value), within)
		require.Zero(t, e.Named[UnseatedShare].Value)
		require.Zero(t, e.Named[LooseShare].Value)
	})
}

func estimatedAny(s *Station) Estimated {
	e, _ := s.Estimate(ctx(), 1, 0.1, Work{}, nil)
	return e
}

// With a force that scatters, a touch joint still is the closed form: the bend's error is
// a normal part of the reading's. The limits hold, and are narrow.
func TestEstimateWithScatterIsTheClosedForm(t *testing.T) {
	for _, guard := range []float64{0, 0.5, 1} {
		in := example()
		in.Joint = model.Joint{Kind: model.Touch, Stop: model.Shoulder}
		in.Parts = in.Parts[:2]
		in.Parts[0].Minus, in.Parts[0].Plus = 0.12, 0.12
		in.Station.StiffnessTolerance, in.Window.GuardFactor = 0, guard
		s, out := evaluated(t, in)
		e := estimated(t, s)
		for _, c := range []struct {
			want float64
			got  Figure
		}{{*out.Risk.ConsumerPPM, e.Named[FalseAcceptHeight]}, {*out.Risk.ProducerPPM, e.Named[FalseReject]}} {
			half := (c.got.High - c.got.Low) / 2
			assert.InDelta(t, c.want, ppmOf(c.got.Value), 2*ppmOf(half), "guard %v", guard)
			assert.Less(t, half, 0.02*c.got.Value, "guard %v", guard)
		}
	}
}

// By hand: the tail of one normal law, far out. A part is unseated when its force, normal
// with 100 N in two standard deviations, is under a measured force without spread; and it
// is too tall beyond five standard deviations of its one row.
func TestTailsAreExact(t *testing.T) {
	s := touched(stack.Normal, 0.01)
	s.joint = joint{kind: measured, forceLow: 500, forceMode: 500, forceHigh: 500}
	s.force, s.scatter = 700, 50
	e := estimated(t, s)
	want := math.Erfc(4/math.Sqrt2) / 2
	f := e.Named[UnseatedShare]
	assert.InDelta(t, want, f.Value, 0.1*want, "a step of the force is sampled")
	assert.True(t, f.Low <= want && want <= f.High, "%v in %v", want, f)
	assert.InEpsilon(t, math.Erfc(5/math.Sqrt2)/2, e.Named[LongShare].Value, 1e-3)
}

// By hand: of hole and shaft without spread and friction without range, all parts are
// loose or none, on either side of what is required.
func TestLooseWithoutSpread(t *testing.T) {
	in := example()
	in.Joint.Hole, in.Joint.Shaft = [2]float64{10, 10}, [2]float64{40, 40}
	in.Joint.SmoothingLeast, in.Joint.SmoothingMost = 0.5, 0.5
	in.Joint.FrictionLow, in.Joint.FrictionHigh, in.Joint.HoldingFriction = 0.1, 0.1, 0.1
	in.Joint.HoldingRequired, in.Joint.HoldingSafety = 0, 1
	// The insert stands out for 6.4 mm and is engaged for 5.5 mm: it always grips fully.
	in.Parts[2].Minus, in.Parts[2].Plus = 0, 0
	grip := station(t, in).joint.grip * 0.1 * (30 - 0.5*6.5) * 5.5
	for _, c := range []struct {
		required, safety float64
		loose, fails     float64
	}{{grip - 1e-6, 1, 0, 0}, {grip + 1e-6, 1, 1, 1}, {grip / 1.5 * 1.01, 1.5, 1, 0}, {0, 1, 0, 0}} {
		in.Joint.HoldingRequired, in.Joint.HoldingSafety = c.required, c.safety
		s := station(t, in)
		const parts = 20_000
		e := estimated(t, s)
		tally, _ := s.Count(ctx(), parts, 1, Work{})
		assert.InDelta(t, c.loose, e.Named[LooseShare].Value, 1e-9, "%+v", c)
		assert.InDelta(t, c.fails, e.Named[LooseFails].Value, 1e-9, "%+v", c)
		assert.EqualValues(t, c.loose*parts, tally.Count(LooseShare), "%+v", c)
		assert.EqualValues(t, c.fails*parts, tally.Count(LooseFails), "%+v", c)
	}
}
