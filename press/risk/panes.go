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
	if p.Height.Point() {
		s := p.Height.Mean()
		t.fill([]pane{{at: s, is: p.given(s)}})
		return
	}
	first, last := p.Height.Support()
	longest := 2 * t.e.Normal() // of a stretch: Gauss's 12 points are exact to 1e-14 on it
	if longest <= 0 || 12*(last-first)/longest > mostPanes {
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
			if panes = p.stretch(panes, from, to, p.total(from, to), 12); len(panes) > mostPanes {
				return
			}
		}
	}
	t.fill(panes)
}

// stretch lays panes on one stretch, halved until its halves agree with the whole.
func (p Population) stretch(panes []pane, a, b float64, whole classes, depth int) []pane {
	mid := (a + b) / 2
	left, right := p.total(a, mid), p.total(mid, b)
	if depth > 0 && differ(left.plus(right), whole) {
		return p.stretch(p.stretch(panes, a, mid, left, depth-1), mid, b, right, depth-1)
	}
	return p.lay(p.lay(panes, a, mid), mid, b)
}

func differ(a, b classes) bool {
	const much = 1e-13
	off := func(a, b float64) bool { return !(a-b < much && b-a < much) }
	return off(a.long, b.long) || off(a.good, b.good) || off(a.short, b.short)
}

// total is what Gauss's rule makes of one stretch.
func (p Population) total(a, b float64) classes {
	var v classes
	middle := p.given((a + b) / 2)
	for i, x := range nodes {
		s := (a+b)/2 + (b-a)/2*x
		is := middle // one class all along, its ends included
		if !p.sharp() {
			is = p.given(s)
		}
		v = v.plus(is.times(weights[i] * p.Height.PDF(s) * (b - a) / 2))
	}
	return v
}

// lay puts the points of one stretch behind the panes.
func (p Population) lay(panes []pane, a, b float64) []pane {
	middle := p.given((a + b) / 2)
	for i, x := range nodes {
		s := (a+b)/2 + (b-a)/2*x
		is := middle
		if !p.sharp() {
			is = p.given(s)
		}
		panes = append(panes, pane{at: s, is: is.times(weights[i] * p.Height.PDF(s) * (b - a) / 2)})
	}
	return panes
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
