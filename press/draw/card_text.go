package draw

// block is a piece of running text on a page for print.
type block struct {
	style style
	lines []string
}

// fill breaks a text into the lines of a block.
func (s style) fill(text string, width float64) block {
	return block{s, s.face().wrap(text, s.size, width)}
}

// most cuts a block to so many lines, with an ellipsis where something is left out.
func (b block) most(lines int) block {
	if len(b.lines) > lines {
		b.lines = append(b.lines[:lines-1:lines-1], b.lines[lines-1]+" …")
	}
	return b
}

const blockLeading = 1.2

func (b block) height() float64 { return blockLeading * b.style.size * float64(len(b.lines)) }

// block writes a block with its top at y and gives its end.
func (p *pen) block(b block, x, y float64) float64 {
	for i, l := range b.lines {
		p.text(b.style, x, y+(0.95+blockLeading*float64(i))*b.style.size, start, l)
	}
	return y + b.height()
}

// pxPerMM at the size of print.
const pxPerMM = pxPerInch / 25.4

// capital gives the type size whose capitals are so many mm high: in the embedded
// face they take 1409 of 2048 units.
func capital(mm float64) float64 { return mm * pxPerMM * 2048 / 1409 }

// paged makes a picture of the size of the paper: where a note on the typeface
// has to stand under it, the drawing itself is made so much lower.
func paged(height float64, build func(height float64) *Picture) *Picture {
	d := build(height)
	if _, h := d.Size(); h > height {
		d = build(2*height - h)
	}
	return d
}
