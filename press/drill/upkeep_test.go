package drill

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// The right answers to what rests on no figure of a plan. By hand; common practice, no
// source, but for what the cautions of the product say.
func TestCommonPractice(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for key, want := range map[string]string{
		"signal/arrival": "stopped the ram", "signal/zone": "between the zone start and the zone end", "when/back": "Nothing",
		"part/away": "Hold it back", "part/stopped": "not used before", "part/mixed": "Hold the whole box back", "part/chip": "Stop the station first", "part/twice": "stays a refused part",
		"first/check": "The shift check", "first/fails": "Stop", "first/since": "since the last check that was right", "first/change": "Keep it back", "first/empty": "stop",
		"change/setting": "No", "change/zone": "No", "change/found": "Stop, hold back", "rule/works": "instructions of the works", "rule/hurry": "Press nothing", "rule/forced": "removed", "rule/card": "replaced",
		"hands/homing": "No", "hands/jog": "No", "hands/colleague": "only the person who uses it", "hands/trapped": "freed", "hands/shield": "No", "hands/bridged": "Do not start", "hands/under": "propped",
	} {
		e, ok := d.Exercise(key, 1)
		require.True(t, ok, key)
		assert.Contains(t, e.RightInWords(), want, key)
		assert.Equal(t, 1, e.Level, key)
		assert.NotEmpty(t, KindOfKey(key), key)
		assert.Equal(t, e.Kind, KindOfKey(key), key)
		if strings.HasPrefix(key, "part/") && key != "part/twice" {
			assert.Contains(t, e.Explain, "Common practice.", key)
		}
	}
}

// The technician's exam draws its twenty questions from a pool of which one exam uses less
// than half, so that two exams ask different things. Derived: by counting.
func TestPoolIsLarge(t *testing.T) {
	for _, name := range []string{"example-plan", "pivot-pin", "rain-gauge-lid"} {
		p, r := examplePlan(t, name)
		d := drillOf(t, p, r)
		keys := d.keysFor(Technician, 1)
		assert.Equal(t, keys, d.keysFor(Technician, Levels), "level 1 is all that the technician's exam asks")
		assert.GreaterOrEqual(t, len(keys), 44, name)
		one := UsualRules(1)
		one.Role = Technician
		met := map[string]bool{}
		for seed := range uint64(12) {
			one.Seed = seed
			x, err := d.NewExam(one)
			require.NoError(t, err)
			require.Len(t, x.Keys, 20, name)
			for _, key := range x.Keys {
				met[key] = true
			}
		}
		assert.GreaterOrEqual(t, len(met), 40, "%s: a dozen exams come upon most of the pool", name)
	}
}

// To stop, to hold back or to set apart is never a wrong answer to what is to be done, not
// even where it is more than is asked for; it is wrong only to go on after it. Derived:
// from the texts that are shown, of 100 random plans.
func TestTheCarefulAnswerIsNeverWrong(t *testing.T) {
	careful := regexp.MustCompile(`(?i)^(stop|hold|keep|set (it|the part|them|this part) apart|quarantine|do not|press nothing|call)\b`)
	less := regexp.MustCompile(`(?i)go on|start|with the next|fingers`) // or to hold the part by hand
	check := func(p *press.Plan, r *press.Result, seed uint64) {
		d := drillOf(t, p, r)
		for _, key := range d.Keys(Levels) {
			e, _ := d.Exercise(key, seed)
			if e.Zone != nil || !slices.Contains([]Kind{Act, Safe, React}, e.Kind) && !strings.Contains(e.Question, "do you do") {
				continue
			}
			for _, c := range e.Choices {
				if !slices.Contains(e.Right, c.ID) && careful.MatchString(c.Text) {
					assert.Regexp(t, less, c.Text, key)
				}
			}
		}
	}
	p, r := example(t)
	for seed := range uint64(10) {
		check(p, r, seed)
	}
	rng := rand.New(rand.NewPCG(6, 2))
	for n := 1; n <= 100; n++ {
		p, r := judgedPlan(t, rng)
		check(p, r, uint64(n))
		if t.Failed() {
			return
		}
	}
}
