package proof

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestLooksAreReadAgain: what is noted of first looks is what is read from the notes, whatever
// else stands there.
func TestLooksAreReadAgain(t *testing.T) {
	var say Words
	all := []FirstLook{{"empty", false, false}, {"Loose sample", true, false}, {"missing", true, true}}
	notes := say.LooksNoted(all)
	assert.Equal(t, all, say.LooksOf("typed by hand\n"+notes+"\nFirst look, x: nothing"))
	assert.Contains(t, notes, "First look, Loose sample: arrival on, zone off; not refused", "arrival on and zone off alone go on: by the plan's rule of the first look")
	assert.Contains(t, notes, "First look, missing: arrival on, zone on; refused")
	assert.Empty(t, say.LooksOf(""))
}
