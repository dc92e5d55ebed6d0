package simulate

// Cells is into how many cells the density of readings is cut.
const Cells = 200

// A Tally counts parts. Only whole numbers are added up, so that it does not matter in
// which order they come.
type Tally struct {
	Parts  int64
	Matrix [Truths][Verdicts]int64
	Fails  int64 // those that would let go, whatever else they are

	// Readings of parts that are not met early: where the ram would come to rest.
	Seated, Stalled [Cells]int64
	Below, Above    int64 // beyond the first and the last cell
}

// Add takes the parts of another tally in.
func (t *Tally) Add(o *Tally) {
	t.Parts += o.Parts
	for i := range o.Matrix {
		for j, n := range o.Matrix[i] {
			t.Matrix[i][j] += n
		}
	}
	t.Fails += o.Fails
	for i, n := range o.Seated {
		t.Seated[i] += n
	}
	for i, n := range o.Stalled {
		t.Stalled[i] += n
	}
	t.Below += o.Below
	t.Above += o.Above
}

// Count gives the count of a named share.
func (t *Tally) Count(s Share) int64 {
	if s == LooseFails {
		return t.Fails
	}
	n := int64(0)
	for truth := range t.Matrix {
		for seen, k := range t.Matrix[truth] {
			if s.holds(Truth(truth), Seen(seen)) {
				n += k
			}
		}
	}
	return n
}
