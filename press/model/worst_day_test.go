package model

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// touched is a part of 10 mm that the ram touches, read without error, its window by hand
// on the limits of the drawing, 9.95 to 10.05 mm.
func touched(row Part) *Input {
	in := example()
	row.Nominal, row.Contact, row.Seat, row.Sigmas = 10, 1, 1, 1
	in.Parts = []Part{row}
	in.Joint = Joint{Kind: Touch, Stop: Shoulder}
	in.Requirement = Requirement{HeightLow: 9.95, HeightHigh: 10.05}
	in.Ram.Repeatability, in.Ram.ForceTolerance, in.Ram.ForceScatter = 0, 0, 0
	in.Station.NestDrift, in.Station.StiffnessTolerance, in.Station.ReferenceUncertainty = 0, 0, 0
	return in
}

// onDrawing sets the window by hand to the good range.
func (in *Input) onDrawing() *Input {
	out := Evaluate(in)
	good, a := out.Window.GoodRange, out.Travel.ApproachEnd
	in.Window.ZoneStart, in.Window.PushStroke = &good[0], ptr(good[1]-a)
	return in
}

// Uniform heights and a nest that drifts, by hand. Heights 10 ± 0.1, drift ± 0.02, so parts
// stand with a density of 5 a mm: on average each limit lets (0.02/4)·5 = 2.5 % of all parts
// pass wrongly and refuses as many. With the drift at its limit all day, 0.02·5 = 10 % pass
// wrongly over one limit and 10 % are refused at the other.
func TestWorstDayUniformByHand(t *testing.T) {
	in := touched(Part{Minus: 0.1, Plus: 0.1, Shape: Uniform})
	in.Station.NestDrift = 0.02
	d := Evaluate(in.onDrawing()).WorstDay()
	const within = 0.1 // ppm; positions are kept to 1e-9 mm
	assert.InDelta(t, 50000, d.Average.ConsumerPPM, within)
	assert.InDelta(t, 50000, d.Average.ProducerPPM, within)
	assert.InDelta(t, 0.02, d.Limit, 1e-12)
	assert.InDelta(t, 100000, d.Worst.ConsumerPPM, within)
	assert.InDelta(t, 100000, d.Worst.ProducerPPM, within)
	require.Len(t, d.Terms, 4)
	for _, term := range d.Terms {
		want, limit := 50000.0, 0.0
		if term.Name == "nest_drift" {
			want, limit = 100000, 0.02
		}
		assert.InDelta(t, limit, term.Limit, 1e-12, term.Name)
		assert.InDelta(t, want, *term.ConsumerPPM, within, term.Name)
		assert.InDelta(t, want, *term.ProducerPPM, within, term.Name)
	}
	require.Len(t, d.Shift, 21)
	// Heights 9.95 to 10.15: none below the drawing, so only the upper limit lets parts pass.
	last := d.Shift[20]
	assert.InDelta(t, 0.05, last[0], 1e-12)
	assert.InDelta(t, 25000, last[1], within)
	assert.InDelta(t, 50000, last[2], within)
	assert.InDelta(t, d.Average.ConsumerPPM, d.Shift[10][1], within)
	require.Len(t, d.Spread, 16)
	// Half the tolerance: all parts are good, at twice the density.
	assert.Equal(t, 0.5, d.Spread[0][0])
	assert.InDelta(t, 0, d.Spread[0][1], within)
	assert.InDelta(t, 100000, d.Spread[0][2], within)
	// Twice the tolerance: half the density.
	assert.InDelta(t, 25000, d.Spread[15][1], within)
	assert.InDelta(t, 25000, d.Spread[15][2], within)
	// Both targets, 50 and 2000 ppm, are missed without any wear.
	assert.Equal(t, 0.0, *d.Wear.FalseAccept)
	assert.Equal(t, 0.0, *d.Wear.FalseReject)
}

// Wear without any error, by hand: a nest lower by w reads every part deeper by w, so that
// w·5 of all parts of 10 ± 0.1 pass wrongly and are refused. 1000 ppm are reached after
// 0.001/5 = 0.0002 mm, 20 % after 0.04 mm. Half of all parts are good: half at most are
// refused; past 0.1 mm of wear nothing wrong is left to accept on one side.
func TestWearByHand(t *testing.T) {
	in := touched(Part{Minus: 0.1, Plus: 0.1, Shape: Uniform})
	in.Targets.FalseAcceptPPM, in.Targets.FalseRejectPPM = 1000, 200000
	d := Evaluate(in.onDrawing()).WorstDay()
	assert.InDelta(t, 0.0002, *d.Wear.FalseAccept, 3e-7)
	assert.InDelta(t, 0.04, *d.Wear.FalseReject, 3e-7)
	in.Targets.FalseAcceptPPM, in.Targets.FalseRejectPPM = 260000, 500001
	d = Evaluate(in).WorstDay()
	assert.Nil(t, d.Wear.FalseAccept, "a quarter of all parts at most is too low")
	assert.Nil(t, d.Wear.FalseReject)
}

// A target of nothing asks for 0.01 ppm, the finest share of a search: with a drift of
// ± 0.02 and heights of ± 0.02 in a drawing of ± 0.05, by hand, nothing is refused up to
// a wear of 0.01 mm. Past it a part w over that is refused where height and drift are
// both within w of their ends: (w²/2)/0.04², 0.01 ppm at 5.7e-6 mm.
func TestWearOfNoTarget(t *testing.T) {
	in := touched(Part{Minus: 0.02, Plus: 0.02, Shape: Uniform})
	in.Station.NestDrift = 0.02
	in.Targets.FalseAcceptPPM, in.Targets.FalseRejectPPM = 0, 0
	d := Evaluate(in.onDrawing()).WorstDay()
	assert.Nil(t, d.Wear.FalseAccept, "no part is bad")
	assert.InDelta(t, 0.01+0.04*math.Sqrt(2e-8), *d.Wear.FalseReject, 4e-7)
}

// Normal heights and three errors of a day, by hand. Heights 10 with a standard deviation
// of 0.03 mm, drawing ± 0.05. Reference ± 0.01; the bend of 0.1 mm known to ± 8 % gives
// 0.008; a force of 20 ± 30 % N on 1000 N/mm gives 0.006: together √(1 + 0.64 + 0.36)·0.01
// = 0.0141421 mm. So on a worst day Φ((0.05 + B)/0.03) − Φ(0.05/0.03) pass wrongly over one
// limit, and Φ(0.05/0.03) − Φ((0.05 − B)/0.03) are refused at the other.
func TestWorstDayNormalByHand(t *testing.T) {
	in := touched(Part{Minus: 0.03, Plus: 0.03, Shape: Normal})
	in.Ram.Curve = Curve{Interpolation: "linear", Measured: MeasuredTool, Points: [][2]float64{{0, 1}, {40, 41}}}
	in.Ram.SettingMin, in.Ram.SettingMax, in.Ram.ForceTolerance = 0, 40, 30
	in.driven()
	in.Window.Setting = ptr(19.0) // 20 N
	in.Station.Stiffness, in.Station.StiffnessTolerance, in.Station.ReferenceUncertainty = 1000, 8, 0.01
	in.Station.NestForce = 120 // the bend is 0.1 mm the other way
	d := Evaluate(in.onDrawing()).WorstDay()
	b := math.Sqrt(2) * 0.01
	assert.InDelta(t, b, d.Limit, 1e-12)
	phi := func(x float64) float64 { return math.Erfc(-x/0.03/math.Sqrt2) / 2 }
	assert.InDelta(t, 1e6*(phi(0.05+b)-phi(0.05)), d.Worst.ConsumerPPM, 0.1)
	assert.InDelta(t, 1e6*(phi(0.05)-phi(0.05-b)), d.Worst.ProducerPPM, 0.1)
	for i, limit := range []float64{0, 0.01, 0.008, 0.006} {
		assert.InDelta(t, limit, d.Terms[i].Limit, 1e-12, d.Terms[i].Name)
	}
}

// A day is lived through: its drift, its reference, its stiffness and its curve stand
// wherever the worst day puts them, the parts are drawn, and each is judged as it is.
func TestWorstDayIsADay(t *testing.T) {
	in := example()
	in.Parts[0].Shape = Uniform
	in.Parts[0].Minus, in.Parts[0].Plus = 0.09, 0.08
	in.Parts = append(in.Parts, Part{Nominal: 4, Minus: 0.01, Plus: 0.01, Contact: 1, Seat: 1, Shape: Uniform, Sigmas: 3, Datum: true, DatumCount: 1})
	in.Window.Rule = ByTarget
	out := Evaluate(in)
	d, w := out.WorstDay(), out.work
	rng := rand.New(rand.NewPCG(7, 1))
	const parts = 400000
	live := func(off float64) (consumer, producer float64) {
		var wrong, lost int
		for range parts {
			var reading, height float64
			for _, row := range in.Parts {
				half := (row.Minus + row.Plus) / 2
				x := row.mean() + half*(2*rng.Float64()-1)
				if row.Shape == Normal {
					x = row.mean() + half/row.Sigmas*rng.NormFloat64()
				}
				reading -= row.Seat * x
				if !row.Datum {
					height += row.Seat * x
				}
			}
			force := w.force.now.typical + in.Ram.ForceScatter/2*rng.NormFloat64()
			reading += in.Station.Nest + force/in.Station.Stiffness + in.Ram.Repeatability/2*rng.NormFloat64() + off
			good := height >= in.Requirement.HeightLow && height <= in.Requirement.HeightHigh
			accepted := reading >= out.Window.Overlap[0] && reading <= out.Window.Overlap[1]
			if accepted && !good {
				wrong++
			}
			if !accepted && good {
				lost++
			}
		}
		return 1e6 * float64(wrong) / parts, 1e6 * float64(lost) / parts
	}
	off := map[string]float64{TowardDeeper: d.Limit, TowardShallower: -d.Limit}
	near := func(want, got float64) { // five standard deviations of the count
		share := want / 1e6
		assert.InDelta(t, want, got, 5e6*math.Sqrt(share*(1-share)/parts)+1)
	}
	consumer, _ := live(off[d.Worst.ConsumerToward])
	near(d.Worst.ConsumerPPM, consumer)
	_, producer := live(off[d.Worst.ProducerToward])
	near(d.Worst.ProducerPPM, producer)
	assert.Greater(t, d.Worst.ConsumerPPM, 1000.0, "enough to be counted")
}

// A joint that was measured with 100, most often 100, at most 200 N: a push of 150 N
// leaves ((200 − 150)/100)² = a quarter of the parts unseated. By hand; the push is what
// the curve leaves on a day of 25 % less.
func TestWeakDayByHand(t *testing.T) {
	in := example()
	in.Joint = Joint{Kind: Measured, Stop: Shoulder, ForceLow: 100, ForceTypical: 100, ForceHigh: 200}
	in.Ram.Curve = Curve{Interpolation: "linear", Measured: MeasuredTool, Points: [][2]float64{{0, 100}, {100, 300}}}
	in.Ram.SettingMin, in.Ram.SettingMax, in.Ram.ForceTolerance, in.Ram.ForceScatter = 0, 100, 25, 0
	in.driven()
	in.Window.Setting = ptr(50.0) // 200 N
	d := Evaluate(in).WorstDay()
	assert.InDelta(t, 250000, d.UnseatedWeakDayPPM, 1e-6)

	// What pushes back takes as much off the push: ((200 − 140)/100)² of them.
	in.Joint.Counterforce = 10
	assert.InDelta(t, 360000, Evaluate(in).WorstDay().UnseatedWeakDayPPM, 1e-6)

	// Nothing is pressed in, a spring of 155 N pushes back, and the push scatters with a
	// standard deviation of 5 N: a part stays unseated with Φ(1).
	in.Joint, in.Parts = Joint{Kind: Touch, Stop: Shoulder, Counterforce: 155}, in.Parts[:2]
	in.Ram.ForceScatter = 10
	assert.InDelta(t, 1e6*math.Erfc(-1/math.Sqrt2)/2, Evaluate(in).WorstDay().UnseatedWeakDayPPM, 0.01)
}

// A weak day is lived through with everything of the fit drawn.
func TestWeakDayIsADay(t *testing.T) {
	in := example()
	in.Ram.ForceScatter, in.Joint.Drag, in.Joint.Counterforce = 60, 30, 20
	in.Window.Setting = ptr(30.0)
	in.Parts[2].Minus, in.Parts[2].Plus = 0.6, 0.2
	out := Evaluate(in)
	w, j := out.work, &in.Joint
	got := 1e6 * w.unseatedOnWeakDay()
	rng := rand.New(rand.NewPCG(3, 9))
	uniform := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	inside := func(l [2]float64) float64 { return (l[0]+l[1])/2 + (l[1]-l[0])/6*rng.NormFloat64() }
	f := w.force.now.typical * (1 - in.Ram.ForceTolerance/100)
	const parts = 400000
	unseated := 0
	for range parts {
		i := inside(j.Shaft) - inside(j.Hole) - uniform(j.SmoothingLeast, j.SmoothingMost)*(j.Hub.RoughnessRz+j.Insert.RoughnessRz)
		p := w.joint.rings.Pressure(max(0, i))
		travel := in.Parts[2].mean() + uniform(-0.4, 0.4)
		length := min(max(travel-w.joint.pilot, 0), j.Engagement)
		demand := uniform(j.FrictionLow, j.FrictionHigh)*p*math.Pi*j.Diameter*length + j.Drag + j.Counterforce
		if demand > f+in.Ram.ForceScatter/2*rng.NormFloat64() {
			unseated++
		}
	}
	want := 1e6 * float64(unseated) / parts
	t.Log(got, want)
	assert.Greater(t, want, 10000.0, "enough to be counted")
	assert.InDelta(t, want, got, 5e6*math.Sqrt(want/1e6/parts))
}

// What keeps the targets is told between the rows, by hand: uniform heights 10 ± 0.04 through
// the window of the drawing, 9.95 to 10.05.
func TestWorstDayKeptByHand(t *testing.T) {
	in := touched(Part{Minus: 0.04, Plus: 0.04, Shape: Uniform})
	in.Targets.FalseAcceptPPM, in.Targets.FalseRejectPPM = 10000, 10000
	d := Evaluate(in.onDrawing()).WorstDay()
	require.NotNil(t, d.Kept, "read without error nothing passes wrongly and nothing good is refused")
	assert.Equal(t, Kept{Lower: d.Shift[20][0], Taller: d.Shift[20][0], Wider: 2}, *d.Kept, "up to the last row")

	// With a drift of ± e a good part x under the upper limit, 0 < x < e, is refused by
	// (e − x)/2e. With the upper end of the heights s under the limit, s < e, that is
	// (e − s)²/4e of a density of 1/0.08 a mm: 10,000 ppm of it is (e − s)² = 4e·0.0008.
	const e = 0.005
	in.Station.NestDrift = e
	d = Evaluate(in.onDrawing()).WorstDay()
	require.NotNil(t, d.Kept)
	s := e - math.Sqrt(4*e*0.0008)
	assert.InDelta(t, 0.01-s, d.Kept.Taller, 2*keptFine)
	assert.LessOrEqual(t, d.Kept.Taller, 0.01-s+1e-7, "never more than keeps them")
	assert.InDelta(t, 0.01-s, d.Kept.Lower, 2*keptFine)

	in.Targets.FalseRejectPPM = 0
	in.Parts[0].Minus = 0.05
	assert.Nil(t, Evaluate(in.onDrawing()).WorstDay().Kept, "a target is missed as things are")
}
