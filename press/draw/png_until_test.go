package draw

import (
	"bytes"
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
)

// When nobody waits for a picture any more, nothing is drawn on its dots: no line, no
// field, no letter.
func TestNothingIsDrawnForNobody(t *testing.T) {
	d := newPicture(layout{width: 100, height: 80, paint: func(p *pen) {
		p.fill(black, rect{10, 10, 30, 30})
		p.line(black, 2, solid, [2]float64{0, 40}, [2]float64{100, 40})
		p.text(style{black, body, false}, 10, 70, start, "words")
	}})
	dots := func(ctx context.Context) []byte {
		c := newRaster(d.Size())
		defer c.close()
		c.ctx = ctx
		d.on(c)
		return c.dots.Pix
	}
	gone, leave := context.WithCancel(t.Context())
	leave()
	white := bytes.Repeat([]byte{255}, len(dots(gone)))
	assert.True(t, bytes.Equal(white, dots(gone)))
	assert.False(t, bytes.Equal(white, dots(t.Context())))
}
