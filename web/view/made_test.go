package view

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
	"ramplan/web/page"
)

// TestMadeWhileSaving: a page of what was made beforehand is the page that is made at
// once, however the entries turn out to stand in the archive.
func TestMadeWhileSaving(t *testing.T) {
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	for _, kept := range []Kept{{}, {Revision: "B", Older: "A"}, {Revision: "A", AsIssued: true, CanUndo: true}, {Stale: true}, {Failure: "The disk is full.", Version: 3}} {
		for _, p := range []*press.Plan{plan, nil} {
			b := Bench{Typed: Take(plan.Draft().Entries, nil), Plan: p, Kept: kept}
			if p != nil {
				b.Result = press.Evaluate(p)
			}
			at := b.Page(page.Assets{})
			b.Made = b.Make()
			assert.Equal(t, at, b.Page(page.Assets{}), "%+v", kept)
		}
	}
}
