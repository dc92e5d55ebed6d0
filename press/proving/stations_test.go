package proving_test

import (
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/proving"
)

// Simulated stations: the example plan and stations that are as it says, or wrong in one way.
// What a study finds must lie within its limits as often as these promise, right stations are
// seldom accused, and each fault is told as what it is. The shares beside each count are the
// design's, from 2,000 right stations a line and 300 wrong ones of another program; a count must agree with them within
// its own error and theirs. Seeds are fixed: a test judges a commit and not its luck.

// repetitions are how many stations of a kind are simulated: 2,000 where RAMPLAN_PLANS=all
// asks for all of everything.
func repetitions() int {
	if os.Getenv("RAMPLAN_PLANS") == "all" {
		return 2000
	}
	return 200
}

// right and wrong are how many stations of either kind a stated share comes from, at least.
const (
	right = 2000
	wrong = 300
)

// tally counts how often something was so.
type tally struct {
	t     *testing.T
	of    float64 // stations that the stated shares come from
	n     map[string]int
	times map[string]int
	names []string
}

func newTally(t *testing.T, of float64) *tally {
	c := &tally{t: t, of: of, n: map[string]int{}, times: map[string]int{}}
	t.Cleanup(func() {
		for _, name := range c.names {
			t.Logf("%-44s %5.1f %% of %d", name, 100*c.share(name), c.times[name])
		}
	})
	return c
}

func (c *tally) add(name string, so bool) {
	if c.times[name] == 0 {
		c.names = append(c.names, name)
	}
	c.times[name]++
	if so {
		c.n[name]++
	}
}

func (c *tally) share(name string) float64 { return float64(c.n[name]) / float64(c.times[name]) }

// error is four standard deviations of a share that was counted, and of the stated one.
func (c *tally) error(name string, share float64) float64 {
	p := min(max(share, 0.005), 0.995)
	return 4 * math.Sqrt(p*(1-p)*(1/float64(c.times[name])+1/c.of))
}

// near holds a count to a stated share.
func (c *tally) near(name string, share float64) {
	c.t.Helper()
	assert.NotZero(c.t, c.times[name], name)
	assert.InDelta(c.t, share, c.share(name), c.error(name, share), name)
}

// seldom holds a false alarm to at most a stated share.
func (c *tally) seldom(name string, share float64) {
	c.t.Helper()
	assert.NotZero(c.t, c.times[name], name)
	assert.LessOrEqual(c.t, c.share(name), share+c.error(name, share), name)
}

// often holds a power to at least a stated share.
func (c *tally) often(name string, share float64) {
	c.t.Helper()
	assert.NotZero(c.t, c.times[name], name)
	assert.GreaterOrEqual(c.t, c.share(name), share-c.error(name, share), name)
}

// within tells whether limits hold the truth.
func within(limits *proving.Pair, truth float64) bool {
	return limits != nil && limits[0] <= truth && truth <= limits[1]
}

// says tells whether a study has a finding.
func says(j proving.Judged, code string) bool { return slices.Contains(found(j), code) }

// A true station: what the plan says of it, or something else.
type truth struct {
	plan *press.Result
	*rand.Rand

	tolerance, scatter float64 // of the forces, shares of the planned
	scale, bend        float64 // of the curve: times, and by which share the middle lies above the ends
	off                float64 // mm, by which every reading is deeper
	stiffness          float64 // N/mm
	sd                 float64 // mm, of one push; that of the plan unless set
	drift              float64 // over a study: mm of readings
	gauge              float64 // mm, by which heights of parts are measured too great
	forceDrift         float64 // standard deviations of the forces
}

func rightStation(plan *press.Result, seed uint64) *truth {
	return &truth{plan: plan, Rand: rand.New(rand.NewPCG(seed, 14)), tolerance: 1, scatter: 1, scale: 1, stiffness: plan.Plan.Station.Stiffness}
}

// curve is the true push at a setting, N.
func (s *truth) curve(setting float64) float64 {
	// The example's curve runs from 10 to 70 %: half the bend up in the middle, half down at the ends.
	return s.plan.PushAt(setting).Typical * s.scale * (1 + s.bend/2*math.Cos(math.Pi*(setting-40)/30))
}

// push is one push, N; sd is its standard deviation.
func (s *truth) push(setting float64) (force, sd float64) {
	f := s.curve(setting)
	ram := &s.plan.Plan.Ram
	sd = math.Hypot(s.tolerance*ram.ForceTolerance/200*f, s.scatter*ram.ForceScatter/2)
	return f + sd*s.NormFloat64(), sd
}

// pushSD is by how much one push on one part scatters by the plan, mm, one standard deviation.
func (s *truth) pushSD() float64 {
	if s.sd > 0 {
		return s.sd
	}
	at := s.plan.PushAt(s.plan.Force.Setting)
	return math.Hypot(s.plan.Plan.Ram.Repeatability/2, (at.High-at.Low)/4/s.plan.Plan.Station.Stiffness)
}

// asAllowed puts the whole station off as the plan allows: nest drift, reference, stiffness,
// and the force of the ram. Under a force that is measured the last does not count.
func (s *truth) asAllowed(measured bool) {
	st := &s.plan.Plan.Station
	at := s.plan.PushAt(s.plan.Force.Setting)
	bend := (at.Typical - st.NestForce) / st.Stiffness
	s.off = st.NestDrift*(2*s.Float64()-1) + st.ReferenceUncertainty/2*s.NormFloat64() + bend*st.StiffnessTolerance/200*s.NormFloat64()
	if !measured {
		s.off += (at.High - at.Low) / 4 / st.Stiffness * s.NormFloat64()
	}
}
