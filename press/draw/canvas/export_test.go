package canvas

// What the tests of whole drawings look at.

// DotsPerPx of every PNG.
const DotsPerPx = pngDensity / float64(pxPerInch)

// Printed is the text of a label as a canvas gets it that draws the letters itself.
func (l Label) Printed() string { return l.Style.face().boxed(l.Text) }

// Noted is what is said under a drawing.
func (d *Picture) Noted() []string {
	d.annotate(nil)
	return d.note
}
