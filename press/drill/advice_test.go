package drill

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

func advice(t *testing.T, p *press.Plan, r *press.Result, on words.Pair, when words.Situation, reading *float64) Advice {
	t.Helper()
	a, err := AtStation(words.Printer{}, p, r, words.Reactions(p, r), on, when, reading)
	require.NoError(t, err)
	return a
}

// Derived by hand from the example plan: push end 115.19, zone 115.08 to 115.35,
// position step 0.01; the height of a part is known within 0.028, which is no room
// between lamps and reading.
func TestAdvice(t *testing.T) {
	p, r := example(t)
	for _, c := range []struct {
		name    string
		on      words.Pair
		reading float64 // 0: none
		verdict string
		doubt   string
		first   string
	}{
		{"good", words.Pair{Arrival: true, Zone: true}, 115.14, "good", "", "See both lamps off"},
		{"tall", words.Pair{Arrival: true}, 114.98, "too tall", "", "Look for a chip"},
		{"tall without a reading", words.Pair{Arrival: true}, 0, "too tall", "", "Look for a chip"},
		{"low", words.Pair{Zone: true}, 115.19, "too short or no insert", "", "Look into the nest"},
		{"fault", words.Pair{}, 0, "fault", "", "Stop"},
		{"tall lamps, good reading", words.Pair{Arrival: true}, 115.14, "too tall", "this plan shows arrival on, zone on", "Compare what is set"},
		{"good lamps, tall reading", words.Pair{Arrival: true, Zone: true}, 114.98, "good", "this plan shows arrival on, zone off", "Compare what is set"},
		{"fault with a reading", words.Pair{}, 115.10, "fault", "without arrival", "Stop"},
		{"half a step inside the zone", words.Pair{Arrival: true}, 115.085, "too tall", "", "Measure its height"},
		{"one step inside the zone", words.Pair{Arrival: true}, 115.09, "too tall", "this plan shows arrival on, zone on", "Compare what is set"},
		{"two steps inside the zone", words.Pair{Arrival: true}, 115.10, "too tall", "this plan shows arrival on, zone on", "Compare what is set"},
		{"half a step before the zone", words.Pair{Arrival: true, Zone: true}, 115.075, "good", "", "See both lamps off"},
		{"one step before the zone", words.Pair{Arrival: true, Zone: true}, 115.07, "good", "this plan shows arrival on, zone off", "Compare what is set"},
		{"half a step past the push end", words.Pair{Arrival: true, Zone: true}, 115.195, "good", "", "See both lamps off"},
		{"a step past the push end", words.Pair{Arrival: true, Zone: true}, 115.2, "good", "the push ends at 115.19", "Compare what is set"},
		{"the height of a part", words.Pair{Arrival: true, Zone: true}, 24.99, "good", "the height of the part?", "Read the ram position again"},
		{"two steps before the zone", words.Pair{Arrival: true, Zone: true}, 115.06, "good", "this plan shows arrival on, zone off", "Compare what is set"},
		{"two steps past the push end", words.Pair{Arrival: true, Zone: true}, 115.21, "good", "the push ends at 115.19", "Compare what is set"},
		{"two steps before the push end", words.Pair{Zone: true}, 115.17, "too short or no insert", "without arrival the ram must stand at the push end", "Compare what is set"},
		{"good by the drawing, refused", words.Pair{Arrival: true}, 115.06, "too tall", "", "Measure its height"},
		{"stopped past the push end", words.Pair{Arrival: true, Zone: true}, 115.3, "good", "the push ends at 115.19", "Compare what is set"},
		{"not stopped, but before the end", words.Pair{Zone: true}, 115, "too short or no insert", "without arrival the ram must stand at the push end", "Compare what is set"},
		{"in the approach", words.Pair{Arrival: true}, 80, "too tall", "before the push begins", "Compare what is set"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var reading *float64
			if c.reading != 0 {
				reading = &c.reading
			}
			a := advice(t, p, r, c.on, words.One, reading)
			assert.Equal(t, c.verdict, a.Verdict)
			if c.doubt == "" {
				assert.Empty(t, a.Doubt)
			} else {
				assert.Contains(t, a.Doubt, c.doubt)
			}
			require.Len(t, a.Checks, 3)
			assert.Contains(t, a.Checks[0], c.first)
			assert.NotEmpty(t, a.Part)
			stops := !c.on.Arrival || c.reading >= r.Travel.ApproachEnd && c.reading <= 115.19+0.005+1e-9 // else no part stands there
			assert.Equal(t, reading != nil && stops, a.Height != "")
		})
	}
}

// Only what the lamps do refuse within the guard band is said to lie there. Derived:
// the drawing's good readings begin at 115.047, the zone at 115.08.
func TestGuardBandIsSaid(t *testing.T) {
	p, r := example(t)
	for x, within := range map[float64]bool{115.06: true, 115.14: false, 115.03: false} {
		a := advice(t, p, r, words.Pair{Arrival: true}, words.One, &x)
		if within {
			assert.Equal(t, "Refused within the guard band: measure it.", a.Meaning)
			assert.Contains(t, a.Height, "cannot be told from the reading, and it is refused")
		} else {
			assert.NotContains(t, a.Meaning+a.Height, "guard band", "%v", x)
			assert.NotContains(t, a.Height, "it is refused", "%v", x)
		}
	}
}

// A reading on the other side of an edge by no more than half a step is said to read
// there; further off it is in doubt, and nothing is said of where the ram rests. What a
// reading tells of the height is told only where all of its uncertainty agrees. Derived
// by hand: zone from 115.08, push end 115.19, step 0.01; the drawing allows readings from
// 115.047 to 115.227, and a reading may be off by 0.028.
func TestEdgeOfTheZone(t *testing.T) {
	p, r := example(t)
	for _, c := range []struct {
		x           float64
		on          words.Pair
		edge, doubt bool
		drawing     string
	}{
		{115.08, words.Pair{Arrival: true, Zone: true}, false, false, "by the drawing that is good"},
		{115.075, words.Pair{Arrival: true, Zone: true}, true, false, ""},
		{115.07, words.Pair{Arrival: true, Zone: true}, false, true, "cannot be told from the reading"},
		{115.08, words.Pair{Arrival: true}, true, false, "by the drawing that is good"},
		{115.06, words.Pair{Arrival: true}, false, false, "cannot be told from the reading"},
		{115.03, words.Pair{Arrival: true}, false, false, "cannot be told from the reading"},
		{115.01, words.Pair{Arrival: true}, false, false, "by the drawing that is too tall"},
		{115.19, words.Pair{Arrival: true, Zone: true}, false, false, "by the drawing that is good"},
		{115.195, words.Pair{Arrival: true, Zone: true}, true, false, "by the drawing that is good"},
		{115.196, words.Pair{Arrival: true, Zone: true}, false, true, ""},
	} {
		a := advice(t, p, r, c.on, words.One, &c.x)
		assert.Equal(t, c.edge, a.Edge != "", "%v: %s", c.x, a.Edge)
		assert.Equal(t, c.doubt, a.Doubt != "", "%v: %s", c.x, a.Doubt)
		assert.Contains(t, a.Height, c.drawing, "%v", c.x)
		if c.edge || c.doubt {
			assert.Contains(t, a.Edge+a.Doubt, "half a step of the reading, 0.005\u202fmm", "%v", c.x)
			assert.NotContains(t, a.Why, "it rests between", "%v", c.x)
		}
	}
	x := 24.99
	a := advice(t, p, r, words.Pair{Arrival: true, Zone: true}, words.One, &x)
	assert.Regexp(t, `^Is 24\.99.mm the height of the part\?`, a.Doubt)
	assert.NotContains(t, a.Doubt, "fault")
}

// What the plan itself shows of a reading is never called a contradiction.
func TestAdviceTrustsWhatThePlanShows(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 2))
	for n := 0; n < 300; {
		p, ok := randomPlan(t, rng)
		if !ok {
			continue
		}
		r := press.Evaluate(p)
		s, ok := r.Signals()
		if !ok {
			continue
		}
		n++
		for range 8 {
			x := s.Start + (s.End+0.3-s.Start)*rng.Float64()
			if rng.IntN(2) == 0 {
				x = s.End + 0.4*(rng.Float64()-0.7)
			}
			if s.Early(x) {
				continue
			}
			a, z := s.At(x)
			step := p.Station.PositionStep
			seen := math.Round(min(x, s.End)/step) * step // as the display shows it
			got := advice(t, p, r, words.Pair{Arrival: a, Zone: z}, words.Run, &seen)
			assert.Empty(t, got.Doubt, "plan %d, part at %v seen at %v", n, x, seen)
		}
		if t.Failed() {
			return
		}
	}
}
