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
	a, err := AtStation(p, r, words.Reactions(p, r), on, when, reading)
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
		{"good", words.Pair{Arrival: true, Zone: true}, 115.14, "good", "", "Nothing"},
		{"tall", words.Pair{Arrival: true}, 114.98, "too tall", "", "Look for a chip"},
		{"tall without a reading", words.Pair{Arrival: true}, 0, "too tall", "", "Look for a chip"},
		{"low", words.Pair{Zone: true}, 115.19, "too short or no insert", "", "Look into the nest"},
		{"fault", words.Pair{}, 0, "fault", "", "Stop"},
		{"tall lamps, good reading", words.Pair{Arrival: true}, 115.14, "too tall", "this plan shows arrival on, zone on", "Compare what is set"},
		{"good lamps, tall reading", words.Pair{Arrival: true, Zone: true}, 114.98, "good", "this plan shows arrival on, zone off", "Compare what is set"},
		{"fault with a reading", words.Pair{}, 115.10, "fault", "without arrival", "Stop"},
		{"one step inside the zone", words.Pair{Arrival: true}, 115.09, "too tall", "", "Measure its height"},
		{"two steps inside the zone", words.Pair{Arrival: true}, 115.10, "too tall", "this plan shows arrival on, zone on", "Compare what is set"},
		{"one step before the zone", words.Pair{Arrival: true, Zone: true}, 115.07, "good", "", "Nothing"},
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
			stops := !c.on.Arrival || c.reading >= r.Travel.ApproachEnd && c.reading <= 115.19+0.01 // else no part stands there
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
			assert.Contains(t, a.Height, "yet it is refused")
		} else {
			assert.NotContains(t, a.Meaning+a.Height, "guard band", "%v", x)
			assert.NotContains(t, a.Height, "yet it is", "%v", x)
		}
	}
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
