package draw

// block is a piece of running text on a page for print.
type block struct {
	style style
	lines []string
}

// fill breaks a text into the lines of a block.
func (s style) fill(text string, width float64) block {
	return block{s, s.wrap(text, width)}
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
