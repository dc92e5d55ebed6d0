package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// A plain run of good parts is passed on, however long it is; what makes a run too
// good is named. A part that goes too deep after a change is looked for and measured
// before tool and nest. Derived: from the rule of this file.
func TestReactions(t *testing.T) {
	p := example(t, nil)
	all := Reactions(p, press.Evaluate(p))
	of := func(on Pair, when Situation) Reaction {
		x, ok := ReactionTo(all, on, when)
		require.True(t, ok)
		return x
	}
	good := Pair{Arrival: true, Zone: true}
	for _, when := range []Situation{One, Run, Start} {
		assert.Contains(t, of(good, when).Part, "pass it on", when)
	}
	start := of(good, Start)
	assert.Contains(t, start.Part, "until these checks have passed")
	assert.Contains(t, start.Part, "Then pass it on")
	assert.Contains(t, start.Checks[0], "See both lamps off")
	assert.Regexp(t, "^Keep the part back", start.Part, "what holds a part back comes first")
	for _, when := range []Situation{One, Run, Start} {
		assert.Regexp(t, "^See both lamps off", of(good, when).Checks[0], when)
		assert.Equal(t, of(good, One).Asked[0], of(good, when).Asked[0], "one step is called the same wherever it stands")
	}
	assert.Contains(t, of(Pair{Arrival: true}, Change).Checks[1], "new lot")
	assert.Contains(t, of(good, Change).Part, "keep it back")
	change := of(Pair{Zone: true}, Change)
	assert.Contains(t, change.Checks[0], "is there an insert")
	assert.Contains(t, change.Checks[1], "Measure its height")
	assert.Contains(t, change.Checks[2], "tool and nest")
	for _, when := range Situations {
		assert.Contains(t, of(Pair{}, when).Checks[0], "Stop", when)
	}
}
