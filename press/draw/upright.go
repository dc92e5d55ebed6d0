package draw

// A4 upright, px.
const (
	uprightWidth  = 210 * perMM
	uprightHeight = 297 * perMM
)

// paged makes a picture of the size of the paper: where a note on the typeface
// has to stand under it, the drawing itself is made so much lower.
func paged(height float64, build func(height float64) *Picture) *Picture {
	d := build(height)
	if _, h := d.Size(); h > height {
		d = build(2*height - h)
	}
	return d
}
