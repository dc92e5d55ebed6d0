package presstest_test

import (
	"context"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat/distuv"

	"ramplan/curves"
	"ramplan/press/model"
	"ramplan/press/presstest"
	"ramplan/press/simulate"
)

// judged is a station that only touches parts of one normal height and accepts where the
// drawing is met: its error is the repeatability alone.
func judged(t *testing.T, mean, sigma, u, low, high float64) *simulate.Station {
	t.Helper()
	const nest = 100
	start, stroke, end := nest-high, high-low+20, nest+50.0
	a := nest - high - 20
	in := &model.Input{
		Ram: model.Ram{Stroke: 500, MaxSpeed: 100, MaxAccel: 1000, Repeatability: 2 * u, Direction: model.Level, SettingMin: 10, SettingMax: 20, SettingStep: 1,
			Curve: model.Curve{Interpolation: "linear", Measured: model.MeasuredDrive, Points: [][2]float64{{10, 100}, {20, 200}}}},
		Station:     model.Station{Nest: nest, Stiffness: 1e9, NestForce: 100, MaxForce: 1000, PositionStep: 0.01},
		Parts:       []model.Part{{Nominal: mean, Minus: sigma, Plus: sigma, Contact: 1, Seat: 1, Shape: model.Normal, Sigmas: 1}},
		Joint:       model.Joint{Kind: model.Touch, Stop: model.Shoulder},
		Requirement: model.Requirement{HeightLow: low, HeightHigh: high},
		Motion:      model.Motion{ApproachSpeed: 10, Accel: 100, Decel: 100, SlowSpeed: 1, RetractSpeed: 10, ScanTime: 0.01},
		Window:      model.Window{Setting: new(float64), ApproachEnd: &a, PushStroke: &stroke, ZoneStart: &start, ZoneEnd: &end},
		Faults:      model.Faults{SampleProbability: 0.999},
	}
	*in.Window.Setting = 10
	c, err := curves.New([]curves.Point{{Setting: 10, Force: 100}, {Setting: 20, Force: 200}}, curves.Linear)
	require.NoError(t, err)
	in.Drive = c
	s, ok := simulate.New(in, model.Evaluate(in))
	require.True(t, ok && s.Known())
	return s
}

// publishedSimulations holds the simulated shares to the same printed risks as the closed
// form: acceptance at the requirement.
func publishedSimulations(t *testing.T, ledger *presstest.Ledger) {
	rows := presstest.Read(t, "jcgm106_examples")
	shares := func(s *simulate.Station) (accept, reject float64) {
		e, complete := s.Estimate(context.Background(), 1, 0.1, simulate.Work{}, nil)
		require.True(t, complete)
		return e.Named[simulate.FalseAcceptHeight].Value, e.Named[simulate.FalseReject].Value
	}
	accept, reject := shares(judged(t, 9.5, 0.3, 0.1, 9, 10))
	for quantity, got := range map[string]float64{"consumer risk R_C": accept, "producer risk R_P": reject} {
		for _, r := range rows {
			if r.Text("id") == "J4b" && r.Text("quantity") == quantity && !r.Empty("published") {
				ledger.Equal(t, "J4b simulated "+quantity, got, presstest.Within(jcgm106Case, r.Number("published"), 1e-8, "the tables are good to 1e-10"))
			}
		}
	}
	for share, printed := range map[float64]float64{0.6: 4.83860326, 0.8: 2.85583037, 0.95: 0.87100925} { // in testdata/published/jcgm106_examples.csv, J8
		sigma := 1 / distuv.UnitNormal.Quantile((1+share)/2)
		accept, _ := shares(judged(t, 0, sigma, sigma/4, -1, 1))
		ledger.Equal(t, fmt.Sprintf("RP-19 %v simulated unconditional false accept", share), 100*accept, presstest.Within(rp19, printed, 2e-6, "the tables were integrated to about 2e-6"))
	}
}
