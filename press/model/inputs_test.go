package model

import (
	"math"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/curves"
	"ramplan/press/fit"
)

// example is the station of the example plan, entry by entry. Its data is invented.
func example() *Input {
	continuous := 45.0
	in := &Input{
		Ram: Ram{
			Stroke: 150, MaxSpeed: 200, MaxAccel: 2500, Repeatability: 0.02, ForceTolerance: 7, ForceScatter: 15, MovingMass: 2.4, InertiaMass: 38,
			Direction: Down, SettingMin: 10, SettingMax: 70, SettingStep: 1, SettingContinuous: &continuous,
			Curve: Curve{Interpolation: "monotone", Measured: MeasuredTool, Points: [][2]float64{{10, 200}, {20, 560}, {30, 960}, {40, 1380}, {50, 1810}, {60, 2230}, {70, 2620}}},
		},
		Station: Station{Nest: 140, NestDrift: 0.01, Stiffness: 18000, StiffnessTolerance: 5, ReferenceUncertainty: 0.01, MaxForce: 2900, PositionStep: 0.01},
		Parts: []Part{
			{Nominal: 22, Minus: 0.02, Plus: 0.02, Contact: 1, Seat: 1, Shape: Normal, Sigmas: 3},
			{Nominal: 3, Minus: 0.015, Plus: 0.015, Contact: 1, Seat: 1, Shape: Uniform, Sigmas: 3, Insert: true},
			{Nominal: 6.4, Minus: 0.1, Plus: 0.1, Contact: 1, Shape: Uniform, Sigmas: 3, Insert: true},
		},
		Joint: Joint{
			Kind: Interference, Stop: Shoulder, Diameter: 12, Engagement: 5.5, Hole: [2]float64{0, 18}, Shaft: [2]float64{33, 44}, SmoothingMost: 0.8,
			Hub:         Hub{OutsideDiameter: 30, Modulus: 70000, Poisson: 0.33, Yield: 240, RoughnessRz: 4},
			Insert:      Insert{Bore: 8, Modulus: 100000, Poisson: 0.34, Yield: 300, RoughnessRz: 2.5},
			FrictionLow: 0.08, FrictionHigh: 0.12, HoldingFriction: 0.08, HoldingRequired: 180, HoldingSafety: 1.5,
		},
		Requirement: Requirement{HeightLow: 24.91, HeightHigh: 25.09, MinSeatingForce: 150},
		Motion:      Motion{ApproachSpeed: 180, Accel: 2000, Decel: 2000, SlowSpeed: 8, RetractSpeed: 200, ConfirmTime: 0.05, HoldTime: 0.3, HandlingTime: 3.5, ScanTime: 0.01, Clearance: 1},
		Window:      Window{GuardFactor: 1},
		Faults:      Faults{Chip: 0.1, Gap: 0.05, NestWear: 0.05, SampleProbability: 0.999},
		Targets:     Targets{FalseAcceptPPM: 50, FalseRejectPPM: 2000, EarlyContactPPM: 1, ConformingShare: 0.9973},
		Unstated:    []string{"motion.settle_time"},
	}
	return in.driven()
}

// driven puts the curve through the points.
func (in *Input) driven() *Input {
	points := make([]curves.Point, len(in.Ram.Curve.Points))
	for i, p := range in.Ram.Curve.Points {
		points[i] = curves.Point{Setting: p[0], Force: p[1]}
	}
	c, err := curves.New(points, curves.Interpolation(in.Ram.Curve.Interpolation))
	if err != nil {
		panic(err)
	}
	in.Drive = c
	return in
}

// flushBush is a bush that stands on the nest beside a plate, to be flush with it.
func flushBush(bush float64) *Input {
	in := example()
	in.Joint = Joint{Kind: Touch, Stop: Shoulder}
	in.Parts = []Part{
		{Nominal: 12, Minus: 0.02, Plus: 0.02, Contact: 1, Seat: 1, Shape: Uniform, Sigmas: 3, Insert: true},
		{Nominal: 12, Minus: bush, Plus: bush, Shape: Uniform, Sigmas: 3, Datum: true, DatumCount: 1},
	}
	in.Requirement.HeightLow, in.Requirement.HeightHigh = -0.1, 0.1
	return in
}

// randomInput draws a station in the scale of a workbench press.
func randomInput(t *rapid.T) *Input {
	draw := func(low, high float64, name string) float64 {
		return math.Round(rapid.Float64Range(low, high).Draw(t, name)*1e4) / 1e4
	}
	maybe := func(low, high float64, name string) float64 {
		if rapid.Bool().Draw(t, name+" given") {
			return draw(low, high, name)
		}
		return 0
	}
	in := example()
	in.Parts = nil
	in.Ram.Stroke, in.Ram.MaxSpeed, in.Ram.MaxAccel = draw(80, 200, "stroke"), 300, 3000
	in.Ram.Repeatability, in.Ram.ForceTolerance, in.Ram.ForceScatter = maybe(0, 0.05, "repeatability"), maybe(0, 30, "tolerance"), maybe(0, 40, "scatter")
	in.Ram.MovingMass, in.Ram.InertiaMass = draw(0, 10, "mass"), draw(0, 60, "inertia")
	in.Ram.Direction = rapid.SampledFrom([]string{Down, Up, Level}).Draw(t, "direction")
	in.Ram.Curve = Curve{Interpolation: rapid.SampledFrom([]string{"monotone", "linear"}).Draw(t, "interpolation"), Measured: MeasuredDrive}
	c, f := 5.0, 50.0
	for range rapid.IntRange(2, 6).Draw(t, "points") {
		in.Ram.Curve.Points = append(in.Ram.Curve.Points, [2]float64{c, f})
		in.Ram.SettingMin, in.Ram.SettingMax = 5, c
		c += float64(rapid.IntRange(4, 18).Draw(t, "step"))
		f += float64(rapid.IntRange(40, 900).Draw(t, "rise"))
	}
	in.Station = Station{
		Nest: draw(60, 150, "nest"), NestDrift: maybe(0, 0.03, "drift"), Stiffness: draw(500, 60000, "stiffness"), NestForce: maybe(0, 500, "nest force"),
		ReferenceUncertainty: maybe(0, 0.03, "reference"), MaxForce: draw(300, 5000, "most"), PositionStep: 0.01,
	}
	height := 0.0
	for i := range rapid.IntRange(1, 6).Draw(t, "rows") {
		row := Part{Nominal: draw(1, 20, "nominal"), Minus: draw(0, 0.05, "minus"), Plus: draw(0, 0.05, "plus"), Contact: 1, Seat: 1, Sigmas: 3}
		row.Shape = rapid.SampledFrom([]string{Uniform, Triangular, Normal}).Draw(t, "shape")
		row.Insert = rapid.Bool().Draw(t, "insert")
		height += row.Nominal
		if i > 0 && rapid.IntRange(0, 4).Draw(t, "datum") == 0 {
			row.Datum, row.DatumCount = true, row.Seat
			height -= row.Nominal
		}
		in.Parts = append(in.Parts, row)
	}
	if rapid.IntRange(0, 4).Draw(t, "beside") == 0 {
		row := Part{Nominal: draw(1, 20, "beside"), Minus: 0.02, Plus: 0.02, Shape: Uniform, Sigmas: 3, Datum: true, DatumCount: 1}
		height -= row.Nominal
		in.Parts = append(in.Parts, row)
	}
	in.Requirement = Requirement{HeightLow: height - 0.08, HeightHigh: height + 0.08, MinSeatingForce: maybe(0, 400, "seating")}
	in.randomJoint(t, draw)
	in.Joint.Counterforce, in.Motion.SettleTime, in.Window.GuardFactor = maybe(0, 100, "counterforce"), maybe(0, 1, "settle"), draw(0, 2, "guard")
	if rapid.IntRange(0, 3).Draw(t, "by hand") == 0 {
		a, push, z1 := draw(20, 120, "A"), draw(0.1, 30, "push"), draw(40, 120, "Z1")
		in.Window.ApproachEnd, in.Window.PushStroke, in.Window.ZoneStart = &a, &push, &z1
	}
	return in.driven()
}

func (in *Input) randomJoint(t *rapid.T, draw func(low, high float64, name string) float64) {
	j := Joint{Kind: rapid.SampledFrom([]string{Touch, Measured, Interference}).Draw(t, "joint"), Stop: Shoulder}
	defer func() { in.Joint = j }()
	if j.Kind == Touch {
		return
	}
	in.Parts = append(in.Parts, Part{Nominal: draw(0, 9, "travel"), Minus: 0.1, Plus: 0.1, Contact: 1, Shape: Uniform, Sigmas: 3})
	if j.Kind == Measured {
		low := float64(rapid.IntRange(0, 900).Draw(t, "force"))
		j.ForceLow, j.ForceTypical, j.ForceHigh = low, 2*low, 3*low
		return
	}
	j.Diameter, j.Engagement, j.SmoothingMost = draw(4, 40, "diameter"), draw(1, 8, "engagement"), 0.8
	j.Hub = Hub{OutsideDiameter: draw(45, 80, "outside"), Modulus: 200000, Poisson: 0.3, Yield: 300, RoughnessRz: draw(0, 8, "hub")}
	j.Insert = Insert{Modulus: 200000, Poisson: 0.3, Yield: 300, RoughnessRz: draw(0, 8, "insert")}
	hole, shaft, err := fit.Code(rapid.SampledFrom([]string{"H7/p6", "H7/s6", "H6/k5", "K7/h6", "H8/u8"}).Draw(t, "fit"), j.Diameter)
	require.NoError(t, err)
	j.Hole, j.Shaft = [2]float64{hole.Low, hole.High}, [2]float64{shaft.Low, shaft.High}
	j.FrictionLow, j.FrictionHigh, j.Drag = draw(0.02, 0.1, "least friction"), draw(0.1, 0.2, "most friction"), draw(0, 100, "drag")
	j.HoldingFriction, j.HoldingSafety = j.FrictionLow, 1.5
}

// evaluated gives the evaluation with what lies between its figures.
func evaluated(in *Input) *work { return Evaluate(in).work }
