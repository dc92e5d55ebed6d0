package draw

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/presstest"
	"ramplan/press/words"
)

// TestDerivedPlans draws plans of every kind, whose results were worked out by
// other means, in every form.
func TestDerivedPlans(t *testing.T) {
	for name, p := range derivedPlans(t) {
		r := press.Evaluate(p)
		for _, d := range drawings {
			for _, o := range forms {
				labelsApart(t, d.make(p, r, o), fmt.Sprintf("%s of %s, %+v", d.name, name, o))
			}
			drawtest.WellFormedSVG(t, svgOf(d.make(p, r, Options{})))
		}
	}
}

func derivedPlans(t *testing.T) map[string]*press.Plan {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(presstest.Folder(t), "plans/derived/??.json"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 40)
	plans := map[string]*press.Plan{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		p, problems := press.Decode(data)
		require.Empty(t, problems, file)
		plans[filepath.Base(file)] = p
	}
	return plans
}

// TestLanesAgreeWithCatalogue: when the signals are read, each lane says what the
// fault catalogue says, by another way: the catalogue from the reading, the lane
// from the path of the ram.
func TestLanesAgreeWithCatalogue(t *testing.T) {
	compared := 0
	for name, p := range derivedPlans(t) {
		r := press.Evaluate(p)
		m := newCycleModel(p, r, *r.Traces())
		for i, row := range []*press.FaultRow{faultRow(r, press.RowNominal), faultRow(r, press.RowMissing)} {
			if len(m.lanes) == 0 || row == nil || row.Time == nil {
				continue
			}
			arrival, zone := m.lanes[2*i], m.lanes[2*i+1]
			assert.Equal(t, *row.Arrival, arrival.isOn(*row.Time), "arrival of %s in %s: %v at %v", row.Name, name, arrival.on, *row.Time)
			assert.Equal(t, *row.Zone, zone.isOn(*row.Time), "zone of %s in %s: %v at %v", row.Name, name, zone.on, *row.Time)
			compared++
		}
	}
	assert.Greater(t, compared, 50)
}

func (l signalLane) isOn(at float64) bool {
	for _, on := range l.on {
		if at >= on[0]-1e-9 && at <= on[1]+1e-9 {
			return true
		}
	}
	return false
}

// TestChartsOfAnyResult draws results that no plan leads to: nothing panics, no
// coordinate is lost, no two labels overlap.
func TestChartsOfAnyResult(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	p := drawtest.Example(t, nil)
	results := 600
	if testing.Short() {
		results = 60
	}
	for i := range results {
		r, traces := randomResult(random)
		randomCharts(random, r, &traces)
		o := forms[i%len(forms)]
		force := layForce(newForceModel(p, r, traces), o)
		pressIn := layPressIn(newPressInModel(p, r, traces), o)
		cycle := layCycle(newCycleModel(p, r, traces), o)
		for name, d := range map[string]*canvas.Picture{
			"force": canvas.NewPicture(canvas.Layout{Width: force.width, Height: force.height, Paint: force.paint}),
			"press": canvas.NewPicture(canvas.Layout{Width: pressIn.width, Height: pressIn.height, Paint: pressIn.paint}),
			"cycle": canvas.NewPicture(canvas.Layout{Width: cycle.width, Height: cycle.height, Paint: cycle.paint}),
		} {
			labelsApart(t, d, fmt.Sprintf("%s of result %d, %+v", name, i, o))
			drawtest.WellFormedSVG(t, svgOf(d))
			assert.Less(t, d.Height, 900.0)
		}
	}
}

// randomCharts makes up what the charts show, of any size and sign.
func randomCharts(random *rand.Rand, r *press.Result, t *press.Traces) {
	size := math.Pow(10, float64(random.IntN(15)-6))
	x := func() float64 {
		switch random.IntN(10) {
		case 0:
			return 0
		case 1:
			return 1e9 * (2*random.Float64() - 1)
		}
		return size * (2*random.Float64() - 1)
	}
	maybe := func() *float64 {
		if random.IntN(2) == 0 {
			return nil
		}
		v := x()
		return &v
	}
	pair := func() *press.Pair {
		if random.IntN(3) == 0 {
			return nil
		}
		a, b := 100*random.Float64(), 100*random.Float64()
		return &press.Pair{math.Min(a, b), math.Max(a, b)}
	}
	bands := func(n int) []press.Band {
		var out []press.Band
		for i := range n {
			out = append(out, press.Band{At: size * float64(i), Low: x(), Typical: x(), High: x()})
		}
		return out
	}
	moments := func(n int) []press.Moment {
		var out []press.Moment
		now := 0.0
		for range n {
			out = append(out, press.Moment{Time: now, Position: x()})
			now += size * float64(random.IntN(3))
		}
		return out
	}
	r.Force = press.Force{Need: x(), Cap: x(), Settings: pair(), Steps: pair(), Setting: 100 * random.Float64(), SettingFeasible: random.IntN(2) == 0, Low: x(), Typical: x(), High: x()}
	if random.IntN(3) > 0 {
		r.Joint = &press.JointFigures{Demand: press.Triple{x(), x(), x()}}
	}
	time := func() float64 { return math.Max(0, x()) }
	r.Cycle = press.Cycle{Approach: time(), Press: time(), Confirm: time(), Hold: time(), Retract: time(), Handling: time(), Total: time(), MissingTotal: maybe(), WatchTime: maybe()}
	for i := range r.Faults {
		on := random.IntN(2) == 0
		r.Faults[i].Arrival, r.Faults[i].Time = &on, maybe()
	}
	if r.Verdict != nil {
		r.Window.Zone = &[2]*float64{new(float64), new(float64)}
		*r.Window.Zone[0], *r.Window.Zone[1] = x(), x()
	}
	t.Force, t.Demand = bands(random.IntN(6)), bands(random.IntN(5))
	t.Part, t.Missing = moments(random.IntN(8)), moments(random.IntN(8))
	t.Stall, t.Tight = maybe(), maybe()
	t.Steps = [2]float64{100 * random.Float64(), 100 * random.Float64()}
}

// TestPushAt: between points by a straight line, at and beyond the ends the
// nearest two points. Derived by hand.
func TestPushAt(t *testing.T) {
	m := &forceModel{curve: []press.Band{{At: 10, Low: 90, Typical: 100, High: 110}, {At: 20, Low: 180, Typical: 200, High: 220}, {At: 30, Low: 200, Typical: 300, High: 400}}}
	assert.Equal(t, press.Band{At: 15, Low: 135, Typical: 150, High: 165}, m.pushAt(15))
	assert.Equal(t, press.Band{At: 20, Low: 180, Typical: 200, High: 220}, m.pushAt(20))
	assert.Equal(t, press.Band{At: 30, Low: 200, Typical: 300, High: 400}, m.pushAt(30))
	assert.Equal(t, 90.0, m.pushAt(10).Low)
	assert.Equal(t, press.Band{At: 5, Low: 7, Typical: 7, High: 9}, (&forceModel{need: 7, most: 9}).pushAt(5))
}

// TestForceAxis: zero is on the axis also where the weight outweighs the push.
func TestForceAxis(t *testing.T) {
	p := drawtest.Example(t, drawtest.Changes{
		"joint": "", "joint.kind": "touch", "parts[2].contact": "0", "requirement.min_seating_force": "100000", "station.max_force": "1000000",
		"ram.direction": "up", "ram.moving_mass": "400", "ram.curve.measured": "drive",
	})
	r := press.Evaluate(p)
	require.Less(t, r.Force.High, 0.0, "the plan is to be one whose ram cannot lift its own weight")
	for _, s := range []canvas.Scale{
		layForce(newForceModel(p, r, *r.Traces()), Options{}).y,
		layPressIn(newPressInModel(p, r, *r.Traces()), Options{}).y,
	} {
		assert.True(t, s.Has(0), "%+v", s)
		assert.True(t, s.Has(r.Force.Low), "%+v", s)
	}
}

// TestTouchSaysSo: no axis of depth where there is none.
func TestTouchSaysSo(t *testing.T) {
	p := drawtest.Example(t, drawtest.Kinds["touch"])
	d := NewPressIn(p, press.Evaluate(p), Options{})
	var texts []string
	for _, l := range d.Texts() {
		texts = append(texts, l.Text)
	}
	assert.Contains(t, texts, "The parts only touch: no depth, no press-in force.")
	assert.NotContains(t, texts, "depth from first contact, mm")
}

// TestReadings: the times at which the signals are read are those of the
// catalogue; where the part gives no arrival there is no such time.
func TestReadings(t *testing.T) {
	read := func(c drawtest.Changes) []reading {
		p := drawtest.Example(t, c)
		r := press.Evaluate(p)
		return newCycleModel(p, r, *r.Traces()).reads
	}
	p := drawtest.Example(t, nil)
	c := press.Evaluate(p).Cycle
	got := read(nil)
	require.Equal(t, words.After(c.Approach+c.Press+c.Confirm), words.After(*c.WatchTime), "two times that are written alike")
	assert.Equal(t, []reading{{at: *c.WatchTime, when: "read, with or without arrival"}}, got, "stand once")

	slow := drawtest.Changes{"motion.slow_speed": "2"}
	p = drawtest.Example(t, slow)
	c = press.Evaluate(p).Cycle
	got = read(slow)
	require.Len(t, got, 2)
	assert.Equal(t, "read, with arrival", got[0].when)
	assert.InDelta(t, c.Approach+c.Press+c.Confirm, got[0].at, 1e-9)
	assert.Equal(t, reading{at: *c.WatchTime, when: "read, without"}, got[1])

	got = read(drawtest.Changes{"motion.confirm_time": "0", "motion.slow_speed": "2"})
	require.Len(t, got, 2)
	assert.InDelta(t, press.Evaluate(p).Cycle.Approach+press.Evaluate(p).Cycle.Press, got[0].at, 1e-9, "no time to confirm, yet it is read")

	got = read(drawtest.Kinds["end-before"])
	require.Len(t, got, 1)
	assert.Equal(t, "read, without", got[0].when)

	got = read(drawtest.Changes{"motion.hold_time": "0", "motion.slow_speed": "100"})
	require.Len(t, got, 1)
	assert.Equal(t, "read, with or without arrival", got[0].when)
}

// TestTheCycleReachesToWhatIsRead: the axis reaches to the time at which a missing arrival is
// read, also where the ram is home before (by hand: it pushes at 8 mm/s and is called home by
// an arrival after 1 of 20 mm). What lies more than twice as far is marked as beyond, without
// a line at the edge that would claim to stand at its time.
func TestTheCycleReachesToWhatIsRead(t *testing.T) {
	for stroke, beyond := range map[string]bool{"30": false, "42": true} {
		p := drawtest.Example(t, drawtest.Changes{"window.push_stroke": stroke, "window.approach_end": "107", "ram.stroke": "160", "motion.handling_time": "0", "motion.hold_time": "0", "motion.slow_speed": "6"})
		r := press.Evaluate(p)
		m := newCycleModel(p, r, *r.Traces())
		d := layCycle(m, Options{})
		last := m.reads[len(m.reads)-1]
		require.Equal(t, *r.Cycle.WatchTime, last.at)
		require.Greater(t, last.at, m.part[len(m.part)-1].Time, "the ram is home before")
		assert.Equal(t, beyond, last.beyond, stroke)
		mark := d.readMarks()[len(m.reads)-1]
		if beyond {
			assert.Contains(t, mark.Lines[0], "→")
			continue
		}
		assert.NotContains(t, mark.Lines[0], "→")
		assert.Less(t, d.x.At(last.at), d.plot.X1)
	}
}
