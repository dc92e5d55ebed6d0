package words

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestZoneStuckOnIsToldAlike: whether the zone signal is alive in the probe or not, all pages
// say the same of one that is stuck on: alive, the first look refuses it (its zone lamp is on
// where it must be off), so that nobody calls it unseen; not alive, it stays unseen, and the
// pages that state the rule of the first look say why. Expected words by hand.
func TestZoneStuckOnIsToldAlike(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	base, ps := press.Decode(data)
	require.Empty(t, ps)
	for _, alive := range []bool{false, true} {
		d := base.Draft()
		if alive {
			d.Set("probe.zone_live", "true")
		}
		p, ps := d.Check()
		require.Empty(t, ps)
		r := press.Evaluate(p)
		row, ok := catalogued(r, press.RowZoneStuckOn)
		require.True(t, ok)
		require.Equal(t, alive, RefusedFirst(row))
		require.Equal(t, alive, AsJudged(row).Detection == 1)

		unseen, card := strings.Join(Unseen(p, r), "\n"), Sentence(CardUnseen(p, r))
		assert.Equal(t, !alive, strings.Contains(unseen, "A signal that is stuck on"), unseen)
		assert.Equal(t, alive, strings.Contains(unseen, "Arrival stuck on (the probe finds zone stuck on)"), unseen)
		assert.Equal(t, !alive, strings.Contains(card, "lamp stuck on"), card)
		assert.Equal(t, alive, strings.Contains(card, "arrival stuck on"), card)
		assert.Equal(t, !alive, strings.Contains(say.FaultMeans(p, r, row), "Only the reading rule finds it"))
		assert.Equal(t, map[bool]string{false: "goes on", true: "refused: arrival on, zone on"}[alive], say.FirstLook(row))

		at := say.AtFirstLook(p, r, Pair{Zone: true}, One)
		assert.Equal(t, "refused at the first look", at.Verdict, "a lamp that is on is never passed over")
		assert.Equal(t, !alive, strings.Contains(at.Meaning, "it is not alive"), at.Meaning)
		why := "Zone is not alive in the probe"
		if alive {
			why = "Zone is alive in the probe"
		}
		failures, _ := Paper("failures", p, r)
		reactions, _ := Paper("reactions", p, r)
		for name, text := range map[string]string{"catalogue": say.CatalogueLead(r), "failures": strings.Join(failures.Notes, "\n"), "reactions": strings.Join(reactions.Notes, "\n")} {
			assert.Contains(t, text, why, name)
		}
		for _, x := range failures.Rows {
			if x[0] == "Zone stuck on" {
				how := x[6]
				assert.Equal(t, !alive, strings.Contains(how, "the reading rule finds it"), how)
				assert.Equal(t, alive, strings.Contains(how, press.RefusedByProbe), how)
			}
		}
	}
	p := *base
	p.Probe, p.Sequence = nil, nil
	assert.Empty(t, say.ZoneInProbe(&p, press.Evaluate(&p)), "one look")
}
