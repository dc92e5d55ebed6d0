package proof

import "ramplan/press/draw/canvas"

// Marks are told apart by their shape; the colour only helps.

// Sizes of marks, px.
const (
	disc  = 3.5
	small = 2
)

func markDisc(p *canvas.Pen, x, y float64) {
	p.Circle(canvas.Black, canvas.Black, canvas.ThinLine, x, y, disc)
}

func markRing(p *canvas.Pen, x, y float64) {
	p.Circle(canvas.Paper, canvas.Black, canvas.Outline, x, y, disc)
}

func markDot(p *canvas.Pen, x, y float64) {
	p.Circle(canvas.Black, canvas.Black, canvas.ThinLine, x, y, small)
}

// markSmallRing is a single push, beside what all of them say.
func markSmallRing(p *canvas.Pen, x, y float64) {
	p.Circle(canvas.Paper, canvas.Quiet, canvas.ThinLine, x, y, small)
}

func markSquare(p *canvas.Pen, x, y float64) {
	p.Fill(canvas.Black, canvas.Rect(x-disc, y-disc, x+disc, y+disc))
}

// markTriangle points up.
func markTriangle(p *canvas.Pen, x, y float64) {
	p.Area(canvas.Black, [2]float64{x, y - 4.5}, [2]float64{x - 4.5, y + 3.5}, [2]float64{x + 4.5, y + 3.5})
}

// markCross strikes out what failed.
func markCross(p *canvas.Pen, x, y float64) {
	const r = 5
	for _, way := range []float64{1, -1} {
		p.Line(canvas.Alert, 2, canvas.Solid, [2]float64{x - r, y - way*r}, [2]float64{x + r, y + way*r})
	}
}

// markWrong is a mark that is wrong: in a square, and struck out.
func markWrong(p *canvas.Pen, x, y float64) {
	p.Fill(canvas.Paper, canvas.Rect(x-disc-1, y-disc-1, x+disc+1, y+disc+1))
	p.Frame(canvas.Alert, canvas.Outline, canvas.Solid, canvas.Rect(x-disc-1, y-disc-1, x+disc+1, y+disc+1))
	markCross(p, x, y)
}

// markOdd rings what stands out.
func markOdd(p *canvas.Pen, x, y float64) {
	p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{x - 7, y}, [2]float64{x, y - 7}, [2]float64{x + 7, y}, [2]float64{x, y + 7}, [2]float64{x - 7, y})
}

// markBar is an interval, upright.
func markBar(p *canvas.Pen, x, y0, y1 float64) {
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x, y0}, [2]float64{x, y1})
	for _, y := range []float64{y0, y1} {
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x - 4, y}, [2]float64{x + 4, y})
	}
}

// lying is a line as it is named in the key.
func lying(k canvas.Ink, width float64, dash canvas.Dash) func(*canvas.Pen, float64, float64) {
	return func(p *canvas.Pen, x, y float64) {
		p.Line(k, width, dash, [2]float64{x - 9, y}, [2]float64{x + 9, y})
	}
}

// field is a fill as it is named in the key.
func field(k canvas.Ink, h canvas.Hatch, hatch canvas.Ink) func(*canvas.Pen, float64, float64) {
	return func(p *canvas.Pen, x, y float64) {
		box := canvas.Rect(x-9, y-6, x+9, y+6)
		p.Fill(k, box)
		p.Hatch(hatch, h, box)
	}
}
