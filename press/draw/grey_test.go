package draw

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestNothingIsLostInGrey takes the colour from every drawing, card and sheet of
// every kind of plan: two marks of different meaning that then look the same have
// different words at them, or none of this is said by them.
func TestNothingIsLostInGrey(t *testing.T) {
	look := func(name string, d *Picture) {
		list, texts := marksOf(d)
		if lost := lostInGrey(list, texts); len(lost) > 0 {
			assert.Fail(t, "lost in grey", "%s: %d pairs, such as %s", name, len(lost), strings.Join(lost[:min(3, len(lost))], "; "))
		}
		for _, q := range hatched(list) {
			want, fate := map[string]string{long.name: "rising", short.name: "falling"}[q.ink.name]
			if b := q.box(); fate && q.fill && b.width() > 20 && b.height() > 12 {
				assert.Equal(t, want, q.hatch, "%s: a field of %s at %.0f", name, q.ink.name, b)
			}
		}
	}
	for name, p := range plans(t) {
		r := press.Evaluate(p)
		for _, what := range Names() {
			for _, o := range []Options{{}, {Width: 720}, {Width: 1280}, {Compact: true}, {Compact: true, Width: 360}, {Compact: true, Width: 719}} {
				d, err := New(what, p, r, o)
				require.NoError(t, err)
				look(fmt.Sprintf("%s of %s, %+v", what, name, o), d)
			}
		}
		sheet := NewSheet(p, r, SheetOptions{})
		for i := range sheet.Pages() {
			look(fmt.Sprintf("page %d of %s", i+1, name), sheet.Page(i))
		}
		minis := NewMinis(p, r)
		for _, row := range r.Faults {
			look("the small strip of "+row.Name+" of "+name, minis.Row(row, Options{}))
		}
	}
}
