package risk

// Panes are worth their while up to so many; readings whose error is far finer than the
// spread of the parts are integrated one by one.
const mostPanes = 6000

// spread lays out the panes: points of Gauss's rule on stretches that are short against
// the error of the readings, and on which the density is that of a polynomial. It lays
// none where the error has no normal part, or too fine a one.
func (t *Edges) spread() {
	p := t.p
	if t.e.Point() {
		return
	}
	t.tail = newTail(t.e)
	if p.Height.Point() {
		s := p.Height.Mean()
		t.fill([]pane{{at: s, is: p.given(s)}})
		return
	}
	if t.tail == nil {
		return
	}
	first, last := p.Height.Support()
	longest := 2 * t.e.Normal() // of a stretch: Gauss's 12 points are exact to 1e-14 on it
	if 12*(last-first)/longest > mostPanes {
		return
	}
	var panes []pane
	cuts := p.bends(first, last)
	for i := 1; i < len(cuts); i++ {
		a, b := cuts[i-1], cuts[i]
		if b <= a {
			continue
		}
		pieces := max(1, int((b-a)/longest+1))
		for k := range pieces {
			from, to := a+(b-a)*float64(k)/float64(pieces), a+(b-a)*float64(k+1)/float64(pieces)
			if panes = p.stretch(panes, p.points(from, to), 12); len(panes) > mostPanes {
				return
			}
		}
	}
	t.fill(panes)
}

// points are those of Gauss's rule on one stretch.
type points struct {
	from, to float64
	panes    [12]pane
	total    classes
}

func (p Population) points(a, b float64) *points {
	out := &points{from: a, to: b}
	middle := p.given((a + b) / 2)
	for i, x := range nodes {
		s := (a+b)/2 + (b-a)/2*x
		is := middle // one class all along, its ends included
		if !p.sharp() {
			is = p.given(s)
		}
		out.panes[i] = pane{at: s, is: is.times(weights[i] * p.Height.PDF(s) * (b - a) / 2)}
		out.total = out.total.plus(out.panes[i].is)
	}
	return out
}

// stretch lays panes on one stretch, halved until its halves agree with the whole.
func (p Population) stretch(panes []pane, whole *points, depth int) []pane {
	mid := (whole.from + whole.to) / 2
	left, right := p.points(whole.from, mid), p.points(mid, whole.to)
	if depth > 0 && differ(left.total.plus(right.total), whole.total) {
		return p.stretch(p.stretch(panes, left, depth-1), right, depth-1)
	}
	return append(append(panes, left.panes[:]...), right.panes[:]...)
}

func differ(a, b classes) bool {
	const much = 1e-13
	off := func(a, b float64) bool { return !(a-b < much && b-a < much) }
	return off(a.long, b.long) || off(a.good, b.good) || off(a.short, b.short)
}

// fill adds up what stands before and behind each pane.
func (t *Edges) fill(panes []pane) {
	var sum classes
	for i := range panes {
		panes[i].before = sum
		sum = sum.plus(panes[i].is)
	}
	sum = classes{}
	for i := len(panes) - 1; i >= 0; i-- {
		sum = sum.plus(panes[i].is)
		panes[i].andBehind = sum
	}
	t.panes = panes
}
