package canvas

import (
	"bytes"
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
)

// When nobody waits for a picture any more, nothing is drawn on its dots: no line, no
// field, no letter.
func TestNothingIsDrawnForNobody(t *testing.T) {
	d := NewPicture(Layout{Width: 100, Height: 80, Paint: func(p *Pen) {
		p.Fill(Black, Rectangle{10, 10, 30, 30})
		p.Line(Black, 2, Solid, [2]float64{0, 40}, [2]float64{100, 40})
		p.Text(Style{Black, Body, false}, 10, 70, Start, "words")
	}})
	dots := func(ctx context.Context) []byte {
		c := newRaster(d.Size())
		defer c.close()
		c.ctx = ctx
		d.On(c)
		return c.dots.Pix
	}
	gone, leave := context.WithCancel(t.Context())
	leave()
	white := bytes.Repeat([]byte{255}, len(dots(gone)))
	assert.True(t, bytes.Equal(white, dots(gone)))
	assert.False(t, bytes.Equal(white, dots(t.Context())))
}
