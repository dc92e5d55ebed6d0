package web

import (
	"slices"

	"ramplan/curves"
	"ramplan/web/page"
	"ramplan/web/view"
)

// pasteInto reads two columns of text in place of the curve's points. Text with
// a bad line changes nothing and stays in its box with what is wrong.
func (p *posted) pasteInto(b *bench) {
	table, faults := curves.ReadColumns(p.paste)
	box := &page.Paste{Text: p.paste, Do: view.DoPaste, Open: true}
	for i, f := range faults {
		if i == mostShown {
			box.Lines = append(box.Lines, say.AndMore())
			break
		}
		box.Lines = append(box.Lines, say.Line(f.Line, f.Text, f.Message))
	}
	if len(faults) == 0 && len(table.Points) == 0 {
		box.Lines = []string{say.NothingToRead()}
	}
	if len(box.Lines) > 0 {
		b.paste, b.refused = box, true
		return
	}
	b.paste = nil
	read := view.Reading{Points: make([][2]float64, len(table.Points)), Heading: table.Heading, ForceFirst: table.ForceFirst, Turned: table.Falling()}
	for i, c := range table.Points {
		read.Points[i] = [2]float64{c.Setting, c.Force}
	}
	if read.Turned {
		slices.Reverse(read.Points)
	}
	b.typed = view.WithCurve(b.typed, read.Points)
	b.say(read.Said())
	b.doubts = read.Doubts()
}
