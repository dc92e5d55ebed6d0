package draw

import (
	"math"

	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// statement is a drawing of a plan that leaves nothing to draw: it says why, in the
// place where the drawing would stand.
func statement(kind string, o Options, usual, least float64) *canvas.Picture {
	return stated(kind, words.NothingToPress, o, usual, least)
}

// stated is a drawing of which a sentence says why there is nothing to see.
func stated(kind, text string, o Options, usual, least float64) *canvas.Picture {
	const height = 88
	width := o.width(usual, least)
	if o.Compact {
		width = o.width(stripCompact, stripCompactLeast)
	}
	paint := func(p *canvas.Pen) {
		box := canvas.Rect(canvas.Margin, canvas.Margin, width-canvas.Margin, height-canvas.Margin)
		p.Frame(canvas.Quiet, canvas.ThinLine, canvas.Dashed, box)
		st := canvas.Plain(canvas.Black, canvas.Body)
		lines := st.Wrap(text, box.X1-box.X0-16)
		y := (box.Y0+box.Y1)/2 - canvas.Leading*canvas.Body*float64(len(lines)-1)/2 + canvas.Body/3
		for i, l := range lines {
			p.Text(st, (box.X0+box.X1)/2, y+float64(i)*canvas.Leading*canvas.Body, canvas.Middle, l)
		}
	}
	return canvas.NewPicture(canvas.Layout{Kind: kind, Compact: o.Compact, ID: o.ID, Title: text, Desc: text, Width: math.Ceil(width), Height: height, Paint: paint})
}
