package drill

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What is taken along can be answered by a choice alone: each exercise has a right one,
// each wrong one has its reason, and the sets ask what the drill itself would.
func TestTakenAlong(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	taken := d.TakeAlong()
	for _, e := range taken.Exercises {
		require.NotEmpty(t, e.Right, e.Key)
		for _, c := range e.Choices {
			j := e.JudgeChosen(c.ID)
			assert.Equal(t, slices.Contains(e.Right, c.ID), j.Right, "%s: %s", e.Key, c.Text)
			assert.NotEmpty(t, j.Reason, "%s: %s", e.Key, c.Text)
		}
	}
	for level, sets := range taken.Rounds {
		require.Len(t, sets, takenSets)
		for _, s := range sets {
			var keys []string
			for _, at := range s.Items {
				keys = append(keys, taken.Exercises[at].Key)
			}
			assert.Equal(t, d.Round(level+1, RoundLength, s.Seed), keys)
		}
	}
	require.Len(t, taken.Exams, len(Roles))
	for i, x := range taken.Exams {
		assert.Equal(t, Roles[i], x.Rules.Role)
		for _, s := range x.Sets {
			rules := x.Rules
			rules.Seed = s.Seed
			exam, err := d.NewExam(rules)
			require.NoError(t, err)
			var keys []string
			for _, at := range s.Items {
				keys = append(keys, taken.Exercises[at].Key)
			}
			assert.Equal(t, exam.Keys, keys)
		}
	}
	assert.Equal(t, taken.Exercises[3].Question, d.TakeAlong().Exercises[3].Question, "the same each time")
	t.Logf("%d exercises", len(taken.Exercises))
}

// A zone that is chosen is judged as one that is typed: one choice is right, and the
// zone of the plan itself, as if the nest had not moved, is not.
func TestZonesToChoose(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	seen := 0
	for seed := uint64(1); seed < 40; seed++ {
		for _, key := range []string{"zone/1", "zone/2"} {
			e, ok := d.Exercise(key, seed)
			require.True(t, ok)
			c, ok := e.chosen()
			require.True(t, ok)
			seen++
			right := 0
			for _, x := range c.Choices {
				if c.JudgeChosen(x.ID).Right {
					right++
				} else {
					assert.NotEqual(t, "The zone start must stand before the zone end.", x.Reason)
				}
				if x.Text == d.zoneText([2]float64{d.s.ZoneStart, d.s.ZoneEnd}) {
					assert.False(t, c.JudgeChosen(x.ID).Right)
				}
			}
			assert.Equal(t, 1, right)
		}
	}
	assert.NotZero(t, seen)
}
