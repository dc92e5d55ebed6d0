package drafts

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What was done is told apart again: typing in one field, typing in several, an earlier
// state that was brought back, and everything else. Archives hold these words: they stay.
func TestWhatWasDone(t *testing.T) {
	for _, c := range []struct {
		did           string
		typed, typeIn bool
		restored      string
	}{
		{"typed", true, false, ""}, {"station.nest", true, true, ""}, {"parts[0].plus", true, true, ""}, {"parts[0]", true, false, ""},
		{"restored 12", false, false, "12"}, {"made", false, false, ""}, {"opened a file", false, false, ""}, {"copied", false, false, ""}, {"replaced", false, false, ""},
		{"chose between two windows", false, false, ""}, {"took a ram from the shelf", false, false, ""}, {"started again from revision B", false, false, ""},
	} {
		state, ok := Restored(c.did)
		assert.Equal(t, c.restored != "", ok, c.did)
		if ok {
			assert.Equal(t, c.restored, state)
		}
		assert.Equal(t, []bool{c.typed, c.typeIn}, []bool{Typed(c.did), TypedIn(c.did)}, c.did)
	}
	assert.Equal(t, "restored 12", DidRestore(12))
	assert.Equal(t, "started again from revision B", DidAgain("B"))
	assert.Equal(t, []string{"made", "opened a file", "copied", "replaced", "chose between two windows", "took a ram from the shelf", "typed"},
		[]string{DidMake, DidOpen, DidCopy, DidReplace, DidChoose, DidRam, DidTyped})
}
