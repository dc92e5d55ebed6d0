package archive

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// Typing goes on in one state while the field is the same and there is no pause; but a
// sound plan is never replaced by what is none, another window's typing never by this one's,
// and a state never where something undone could still be had back. By hand from that rule:
// each step says whether it makes a state of its own.
func TestWhatTypingReplaces(t *testing.T) {
	for name, steps := range map[string][]struct {
		path, text, window string
		rest               time.Duration
		own                bool
	}{
		"a sound plan stays": {
			{"station.nest", "141", "", time.Minute, true}, {"station.nest", "142", "", 0, false}, {"station.nest", "142 no", "", 0, true},
			{"station.nest", "143 no", "", 0, false}, {"station.nest", "143", "", 0, false}, {"station.nest", "", "", 0, true},
		},
		"another field": {{"station.nest", "141", "", time.Minute, true}, {"title.notes", "x", "", 0, true}, {"title.notes", "xy", "", 0, false}},
		"a pause":       {{"station.nest", "141", "", time.Minute, true}, {"station.nest", "142", "", Pause, true}, {"station.nest", "143", "", Pause - time.Millisecond, false}},
		"two windows": {
			{"station.nest", "141", "a", time.Minute, true}, {"station.nest", "142", "b", 0, true}, {"station.nest", "143", "b", 0, false}, {"station.nest", "144", "a", 0, true},
		},
		"the first state": {{"station.nest", "141", "", 0, true}},
	} {
		t.Run(name, func(t *testing.T) {
			c := newClock()
			a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
			h, err := a.Get(background(), 1)
			require.NoError(t, err)
			lasting := h.Draft
			for i, s := range steps {
				c.rest(s.rest)
				was := h.State
				h, err = a.Save(background(), 1, Start{Version: h.Version, Window: s.window}, with(h.Draft, s.path, s.text), "")
				require.NoError(t, err)
				assert.Equal(t, s.own, h.State != was, "step %d, %s", i+1, s.text)
				if _, faults := h.Draft.Check(); len(faults) == 0 {
					lasting = h.Draft
				}
				sound, err := a.LastPlan(background(), 1, h.State)
				require.NoError(t, err)
				want, _ := lasting.Check()
				require.NotNil(t, sound)
				assert.Equal(t, want.Digest(), sound.Digest(), "step %d: the last sound plan is still known", i+1)
			}
			n := h.State
			if n > 2 { // something undone could be had back
				c.rest(time.Minute)
				h, err = a.Undo(background(), 1, At(h.Version))
				require.NoError(t, err)
				require.True(t, h.CanRedo)
				h, err = a.Save(background(), 1, Start{Version: h.Version, Window: steps[0].window}, with(h.Draft, steps[0].path, "149"), "")
				require.NoError(t, err)
				assert.Equal(t, n+1, h.State)
			}
		})
	}
}
