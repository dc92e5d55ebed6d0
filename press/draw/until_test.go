package draw

import (
	"bytes"
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// When nobody waits for a page any more, its drawing ends in the middle.
func TestDrawingEndsWithItsContext(t *testing.T) {
	p := example(t, kinds["example"])
	doc := NewSheet(p, press.Evaluate(p), SheetOptions{})
	gone, leave := context.WithCancel(t.Context())
	leave()
	for _, format := range []string{"png", "pdf"} {
		var b bytes.Buffer
		assert.ErrorIs(t, doc.WriteUntil(gone, &b, format, 0), context.Canceled, format)
		assert.Zero(t, b.Len(), format)
	}
	page := doc.Page(0)
	width, height := page.Size()
	strokes := func(ctx context.Context) time.Duration {
		c := newRaster(width, height)
		defer c.close()
		c.ctx = ctx
		began := time.Now()
		page.on(c)
		return time.Since(began)
	}
	strokes(t.Context())
	whole, ended := strokes(t.Context()), strokes(gone)
	require.Less(t, ended, whole/2, "what is left is the counting of words: %v of %v", ended, whole)
}
