package drill

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

// TestTwoLooksInTheDrill: where the probe refuses a row, the drill says so, asks for no
// lamps of a push that does not come, and knows the first look.
func TestTwoLooksInTheDrill(t *testing.T) {
	text, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, problems := press.Decode(text)
	require.Empty(t, problems)
	r := press.Evaluate(p)
	d, err := New(words.Printer{}, p, r, words.Reactions(p, r))
	require.NoError(t, err)
	for _, key := range []string{"look/on", "look/refused", "look/lit", "look/hand", "blind/loose"} {
		assert.Contains(t, d.Keys(Levels), key)
	}
	for _, key := range []string{"predict/loose", "predict/missing", "predict/already-pressed"} {
		assert.NotContains(t, d.Keys(Levels), key)
	}
	e, ok := d.Exercise("blind/loose", 1)
	require.True(t, ok)
	assert.Equal(t, []string{foundID}, e.Right)
	assert.Contains(t, e.Explain, "The first look refuses it, and the press does not take place.")
	for _, key := range d.Keys(Levels) {
		for seed := range uint64(5) {
			e, _ := d.Exercise(key, seed)
			said := asSeen(e) + e.Explain
			for _, c := range e.Choices {
				said += c.Reason
			}
			for _, bad := range []string{"cannot tell them apart", "The lamps are read once", "Once, at the end of the push"} {
				assert.NotContains(t, said, bad, key)
			}
		}
	}
	assert.NotEmpty(t, r.Faults)
	for _, f := range r.Faults { // the result itself stays as it was computed
		if f.Name == press.RowLoose {
			assert.Equal(t, press.Good, f.Verdict)
		}
	}
	on, ok := AtFirstLook(words.Printer{}, p, r, words.GoesOn, words.One)
	require.True(t, ok)
	assert.Equal(t, "go on", on.Verdict)
	off, _ := AtFirstLook(words.Printer{}, p, r, words.Pair{}, words.One)
	assert.Equal(t, "refused at the first look", off.Verdict)
	p.Probe, p.Sequence = nil, nil
	_, ok = AtFirstLook(words.Printer{}, p, press.Evaluate(p), words.GoesOn, words.One)
	assert.False(t, ok)
}

// TestDrillAndStationAgreeOnTheFirstLook: what the drill takes as right of the lamps in the
// probe is what the station page says of them, and zone stuck on is found exactly where the
// zone signal is alive in the probe. Expected answers by hand.
func TestDrillAndStationAgreeOnTheFirstLook(t *testing.T) {
	text, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	base, problems := press.Decode(text)
	require.Empty(t, problems)
	for _, alive := range []bool{false, true} {
		draft := base.Draft()
		if alive {
			draft.Set("probe.zone_live", "true")
		}
		p, problems := draft.Check()
		require.Empty(t, problems)
		r := press.Evaluate(p)
		d, err := New(words.Printer{}, p, r, words.Reactions(p, r))
		require.NoError(t, err)
		for key, want := range map[string]struct {
			lamps   words.Pair
			right   string
			refused bool
		}{
			"look/on":      {words.GoesOn, "on", false},
			"look/refused": {words.Pair{}, "apart", true},
			"look/lit":     {words.Pair{Arrival: true, Zone: true}, "refused", true},
		} {
			e, ok := d.Exercise(key, 1)
			require.True(t, ok, key)
			assert.Equal(t, []string{want.right}, e.Right, key)
			at, ok := AtFirstLook(words.Printer{}, p, r, want.lamps, words.One)
			require.True(t, ok)
			assert.Equal(t, want.refused, at.Verdict == "refused at the first look", key)
			assert.Contains(t, e.Explain, at.Meaning, key)
		}
		e, ok := d.Exercise("blind/zone-stuck-on", 1)
		require.True(t, ok)
		want := unfoundID
		if alive {
			want = foundID
		}
		assert.Equal(t, []string{want}, e.Right, "alive %v", alive)
	}
}
