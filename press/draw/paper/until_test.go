package paper

import (
	"bytes"
	"context"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// When nobody waits for a page any more, its drawing ends in the middle.
func TestDrawingEndsWithItsContext(t *testing.T) {
	p := drawtest.Example(t, drawtest.Kinds["example"])
	doc := NewSheet(p, press.Evaluate(p), SheetOptions{})
	gone, leave := context.WithCancel(t.Context())
	leave()
	for _, format := range []string{"png", "pdf"} {
		var b bytes.Buffer
		assert.ErrorIs(t, doc.WriteUntil(gone, &b, format, 0), context.Canceled, format)
		assert.Zero(t, b.Len(), format)
	}
}
