package simulate

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/curves"
	"ramplan/press/model"
	"ramplan/press/stack"
	"ramplan/press/verdict"
)

// example is the station of the example plan, entry by entry. Its data is invented.
func example() *model.Input {
	in := &model.Input{
		Ram: model.Ram{
			Stroke: 150, MaxSpeed: 200, MaxAccel: 2500, Repeatability: 0.02, ForceTolerance: 7, ForceScatter: 15, MovingMass: 2.4, InertiaMass: 38,
			Direction: model.Down, SettingMin: 10, SettingMax: 70, SettingStep: 1,
			Curve: model.Curve{Interpolation: "monotone", Measured: model.MeasuredTool, Points: [][2]float64{{10, 200}, {20, 560}, {30, 960}, {40, 1380}, {50, 1810}, {60, 2230}, {70, 2620}}},
		},
		Station: model.Station{Nest: 140, NestDrift: 0.01, Stiffness: 18000, StiffnessTolerance: 5, ReferenceUncertainty: 0.01, MaxForce: 2900, PositionStep: 0.01},
		Parts: []model.Part{
			{Nominal: 22, Minus: 0.02, Plus: 0.02, Contact: 1, Seat: 1, Shape: model.Normal, Sigmas: 3},
			{Nominal: 3, Minus: 0.015, Plus: 0.015, Contact: 1, Seat: 1, Shape: model.Uniform, Sigmas: 3, Insert: true},
			{Nominal: 6.4, Minus: 0.1, Plus: 0.1, Contact: 1, Shape: model.Uniform, Sigmas: 3, Insert: true},
		},
		Joint: model.Joint{
			Kind: model.Interference, Stop: model.Shoulder, Diameter: 12, Engagement: 5.5, Hole: [2]float64{0, 18}, Shaft: [2]float64{33, 44}, SmoothingMost: 0.8,
			Hub:         model.Hub{OutsideDiameter: 30, Modulus: 70000, Poisson: 0.33, Yield: 240, RoughnessRz: 4},
			Insert:      model.Insert{Bore: 8, Modulus: 100000, Poisson: 0.34, Yield: 300, RoughnessRz: 2.5},
			FrictionLow: 0.08, FrictionHigh: 0.12, HoldingFriction: 0.08, HoldingRequired: 180, HoldingSafety: 1.5,
		},
		Requirement: model.Requirement{HeightLow: 24.91, HeightHigh: 25.09, MinSeatingForce: 150},
		Motion:      model.Motion{ApproachSpeed: 180, Accel: 2000, Decel: 2000, SlowSpeed: 8, RetractSpeed: 200, ConfirmTime: 0.05, HoldTime: 0.3, HandlingTime: 3.5, ScanTime: 0.01, Clearance: 1},
		Window:      model.Window{GuardFactor: 1},
		Faults:      model.Faults{SampleProbability: 0.999},
		Targets:     model.Targets{FalseAcceptPPM: 50, FalseRejectPPM: 2000, EarlyContactPPM: 1, ConformingShare: 0.9973},
	}
	return in
}

// station evaluates an input and takes what is simulated from it.
func station(t testing.TB, in *model.Input) *Station {
	t.Helper()
	s, _ := evaluated(t, in)
	return s
}

func evaluated(t testing.TB, in *model.Input) (*Station, *model.Outcome) {
	t.Helper()
	drive(t, in)
	out := model.Evaluate(in)
	s, ok := New(in, out)
	require.True(t, ok)
	return s, out
}

// drive puts the curve through the points.
func drive(t require.TestingT, in *model.Input) {
	points := make([]curves.Point, len(in.Ram.Curve.Points))
	for i, p := range in.Ram.Curve.Points {
		points[i] = curves.Point{Setting: p[0], Force: p[1]}
	}
	c, err := curves.New(points, curves.Interpolation(in.Ram.Curve.Interpolation))
	require.NoError(t, err)
	in.Drive = c
}

// touched is a station that only touches its parts: one row about 10 mm, the drawing
// 10 ± 0.05, no error of any kind, both signals where the drawing is met.
func touched(shape stack.Shape, half float64) *Station {
	s := &Station{nest: 20, low: 9.95, high: 10.05, a: 5, known: true, compliance: 1e-3, first: 9.9, width: 0.2 / Cells,
		signals: verdict.Signals{Start: 5, End: 10.05, ZoneStart: 9.95, ZoneEnd: 11}}
	c := sums{contact: 1, seat: 1, height: 1}
	s.mean.add(c, 10)
	s.rows = []row{{of: c, shape: shape, half: half}}
	return s
}

// closing is a station that presses with exactly 150 N against a measured force of 100 to
// 200 N, most often 100, over 4 mm, all heights exact: both signals from 0.4 mm before the
// seat on.
func closing() *Station {
	s := &Station{nest: 20, low: 9.9, high: 10.1, a: 5, known: true, compliance: 0, force: 150, first: 9.5, width: 1.0 / Cells,
		signals: verdict.Signals{Start: 5, End: 10.5, ZoneStart: 9.6, ZoneEnd: 11},
		joint:   joint{kind: measured, forceLow: 100, forceMode: 100, forceHigh: 200}}
	s.mean = sums{contact: 14, seat: 10, height: 10, travel: 4}
	return s
}

func sqrt(n int) float64 { return math.Sqrt(float64(n)) }

func ppmOf(share float64) float64 { return share * 1e6 }

// near is for counts: four standard deviations of n parts at a share.
func near(share float64, n int64) float64 { return 4 * math.Sqrt(share*(1-share)/float64(n)) }

func ctx() context.Context { return context.Background() }
