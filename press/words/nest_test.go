package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// A push that ends past the empty nest is told, also where a named presence check leaves
// nothing else to say of a missing insert. By hand: the nest of the example stands at
// 140 mm and is bent by 2468 N over 18,000 N/mm, 0.137 mm; its hub, 22 mm high, stops the
// ram at 118.137 mm. The approach ends at 107.46 mm.
func TestAPushPastTheEmptyNestIsTold(t *testing.T) {
	const check = "light barrier B3"
	for name, c := range map[string]struct {
		changes       changes
		said, nothere string
		unseen        string
	}{
		"no row marked": {
			with(unmarked, changes{"station.presence_check": check, "window.push_stroke": "33"}),
			"and the empty nest itself stops the ram at 140.14 mm (arrival on, zone on)", "without an insert",
			"An empty nest: the nest itself stops the ram at 140.14 mm, before the push ends at 140.46 mm, with arrival on, zone on. Only the other check tells it from a good part: light barrier B3.",
		},
		"no row marked, no check": {
			with(unmarked, changes{"window.push_stroke": "33"}),
			"and the empty nest itself stops the ram at 140.14 mm (arrival on, zone on)", "without an insert",
			"with arrival on, zone on, as a good part does.",
		},
		"no row marked, zone before": {
			with(unmarked, changes{"station.presence_check": check, "window.push_stroke": "33", "window.zone_end": "115.3"}),
			"and the empty nest itself stops the ram at 140.14 mm (arrival on, zone off)", "without an insert",
			"An empty nest: the nest itself stops the ram at 140.14 mm, before the push ends at 140.46 mm, with arrival on, zone off.",
		},
		"what stays stops it, zone before": {
			changes{"station.presence_check": check, "window.push_stroke": "12", "window.zone_end": "115.3"},
			"and without an insert the ram is stopped at 118.14 mm (arrival on, zone off)", "empty nest", "",
		},
		"ends before the nest": {
			with(unmarked, changes{"station.presence_check": check, "window.push_stroke": "32.6"}),
			"move the push end from 140.06", "empty nest", "",
		},
	} {
		f := found(t, press.AmbiguousTable, c.changes)
		said := plain(f.Message)
		assert.Contains(t, said, c.said, name)
		assert.NotContains(t, said, c.nothere, name)
		p := example(t, c.changes)
		unseen := plain(strings.Join(Unseen(p, press.Evaluate(p)), "|"))
		if c.unseen == "" {
			assert.NotContains(t, unseen, "An empty nest", name)
		} else {
			assert.Contains(t, unseen, c.unseen, name)
		}
	}

	// The findings stay those of the model: no code is added by a push so long.
	p := example(t, with(unmarked, changes{"station.presence_check": check}))
	long := example(t, with(unmarked, changes{"station.presence_check": check, "window.push_stroke": "33"}))
	codes := func(p *press.Plan) (out []string) {
		for _, f := range press.Evaluate(p).Findings {
			out = append(out, f.Code)
		}
		return out
	}
	require.NotContains(t, codes(p), press.AmbiguousTable)
	assert.Subset(t, codes(long), []string{press.AmbiguousTable, press.OverlapWider})

	// With every row marked a missing insert is the empty nest, and is told once.
	p = example(t, changes{"parts[0].insert": "true", "window.push_stroke": "33"})
	assert.Contains(t, strings.Join(Unseen(p, press.Evaluate(p)), "|"), "A missing insert: the ram stops where a good part would stop it.")
	assert.NotContains(t, strings.Join(Unseen(p, press.Evaluate(p)), "|"), "An empty nest")
}
