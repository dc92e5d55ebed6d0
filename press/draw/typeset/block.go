package typeset

import (
	"ramplan/press/draw/canvas"
)

// Block is a piece of running text on a page for print.
type Block struct {
	Style canvas.Style
	Lines []string
}

// Fill breaks a text into the lines of a block.
func Fill(s canvas.Style, text string, width float64) Block {
	return Block{s, s.Wrap(text, width)}
}

// Most cuts a block to so many lines, with an ellipsis where something is left out.
func (b Block) Most(lines int) Block {
	if len(b.Lines) > lines {
		b.Lines = append(b.Lines[:lines-1:lines-1], b.Lines[lines-1]+" …")
	}
	return b
}

const blockLeading = 1.2

// Height of the lines, px.
func (b Block) Height() float64 { return blockLeading * b.Style.Size * float64(len(b.Lines)) }

// WriteBlock writes a block with its top at y and gives its end.
func WriteBlock(p *canvas.Pen, b Block, x, y float64) float64 {
	for i, l := range b.Lines {
		p.Text(b.Style, x, y+(0.95+blockLeading*float64(i))*b.Style.Size, canvas.Start, l)
	}
	return y + b.Height()
}
