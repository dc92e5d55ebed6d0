package drill

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/words"
)

// Refused parts since the shift began, or several in a row, stop the work, and so does a
// fault after one part. By hand; common practice, no source.
func TestStopComesFirst(t *testing.T) {
	p, r := example(t)
	for _, on := range words.AllPairs {
		for _, when := range words.Situations {
			a, err := AtStation(words.Printer{}, p, r, words.Reactions(p, r), on, when, nil)
			require.NoError(t, err)
			refused := on != words.Pair{Arrival: true, Zone: true}
			stop := refused && (when == words.Run || when == words.Start || on == words.Pair{})
			assert.Equal(t, stop, strings.HasPrefix(a.Part, "Stop"), "%s, %s: %s", on, when, a.Part)
			e, ok := drillOf(t, p, r).Exercise("react/"+PairID(on)+"/"+string(when)+"/first", 1)
			if ok && stop {
				assert.True(t, strings.HasPrefix(e.Explain, "Stop"), e.Explain)
			}
		}
	}
}

// To look into the nest, at the tool after it was changed, or to push once without an
// insert then, is sound with all lamps and called wrong with none. By hand; common
// practice, no source.
func TestSoundChecksAreNotWrong(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for _, key := range d.Keys(Levels) {
		for seed := range uint64(12) {
			e, _ := d.Exercise(key, seed)
			if e.Kind != React {
				continue
			}
			for _, c := range e.Choices {
				if slices.Contains(e.Right, c.ID) || strings.HasPrefix(c.ID, "step-") {
					continue
				}
				assert.NotRegexp(t, "^Look (into the nest|at the part):?", c.Text, key)
				if strings.Contains(key, "/change/") {
					assert.NotRegexp(t, "^(Look at tool|Push once)", c.Text, key)
				}
			}
		}
	}
}

// Who puts a part back into which nothing was pressed does not fail alone; who puts back a
// part that is too tall does. By hand: off/on of the example may mean no insert.
func TestEmptyPartMayGoBack(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for key, grave := range map[string]bool{"do/off-on": false, "do/on-off": true} {
		e, ok := d.Exercise(key, 1)
		require.True(t, ok)
		j := e.Judge(Answer{Choice: "back"})
		assert.False(t, j.Right)
		assert.Equal(t, grave, j.Grave != "", key)
		assert.Equal(t, !grave, strings.Contains(j.Reason, "into which nothing was pressed"), key)
	}
}

// What a second push shows is said as what may be, a good part as one in the middle of the
// limits, and who meets a strike is told to stop. By hand.
func TestNothingIsSaidTooSurely(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	assert.Contains(t, d.again(), "may show arrival on, zone on, whatever it showed before")
	e, _ := d.Exercise("lamps/good", 1)
	assert.Contains(t, e.Question, "in the middle of the limits")
	assert.Contains(t, e.Explain, "near a limit may be refused")
	e, _ = d.Exercise("predict/two-inserts", 1)
	assert.Contains(t, e.Explain, "stop, do not start again, and call the setter: tool, nest and ram are checked")
	assert.Contains(t, words.WhenRead, "held from the end of the push")
	assert.Contains(t, words.ReadingRule(p, r), "until the next start")
}
