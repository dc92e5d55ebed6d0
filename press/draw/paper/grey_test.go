package paper

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/grey"
)

// TestNothingIsLostInGrey takes the colour from every drawing, card and sheet of
// every kind of plan: two marks of different meaning that then look the same have
// different words at them, or none of this is said by them.
func TestNothingIsLostInGrey(t *testing.T) {
	look := func(name string, d *canvas.Picture) {
		list, texts := grey.Of(d)
		if lost := grey.Lost(list, texts); len(lost) > 0 {
			assert.Fail(t, "lost in grey", "%s: %d pairs, such as %s", name, len(lost), strings.Join(lost[:min(3, len(lost))], "; "))
		}
		for _, q := range grey.Hatched(list) {
			want, fate := map[string]string{canvas.Long.Name: "rising", canvas.Short.Name: "falling"}[q.Ink.Name]
			if b := q.Box(); fate && q.Fill && b.Width() > 20 && b.Height() > 12 {
				assert.Equal(t, want, q.Hatch, "%s: a field of %s at %.0f", name, q.Ink.Name, b)
			}
		}
	}
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		for _, what := range draw.Names() {
			for _, o := range []draw.Options{{}, {Width: 720}, {Width: 1280}, {Compact: true}, {Compact: true, Width: 360}, {Compact: true, Width: 719}} {
				d, err := draw.New(what, p, r, o)
				require.NoError(t, err)
				look(fmt.Sprintf("%s of %s, %+v", what, name, o), d)
			}
		}
		sheet := NewSheet(p, r, SheetOptions{})
		for i := range sheet.Pages() {
			look(fmt.Sprintf("page %d of %s", i+1, name), sheet.Page(i))
		}
		minis := draw.NewMinis(p, r)
		for _, row := range r.Faults {
			look("the small strip of "+row.Name+" of "+name, minis.Row(row, draw.Options{}))
		}
	}
}
