package simulate

// mostDoublings is to how many points a replication may grow: 2 to this power. To so many
// binary digits no two points of one dimension share an interval.
const mostDoublings = 17

// scramble is a nested uniform scrambling of one dimension: each binary digit is turned
// over or not by a fair coin of its own for every value of the digits before it. From the
// digit on that tells all points apart the digits are coins altogether, one set a point.
// The first 2^k points stay what they are when their number is doubled.
//
// Source: A. B. Owen, Randomly permuted (t, m, s)-nets and (t, s)-sequences, 1995; Monte
// Carlo variance of scrambled net quadrature, SIAM J. Numer. Anal. 34 (1997), 1884. The
// coins are drawn one by one, not hashed.
type scramble [1 << mostDoublings / 64]uint64

func (c *scramble) draw(g *generator) {
	s := *g
	for i := range c {
		s, c[i] = s.next()
	}
	*g = s
}

// apply turns the digits of a point, with further coins for those behind, to a number
// between 0 and 1.
func (c *scramble) apply(x uint32, coins uint64) float64 {
	node, out := uint32(1), uint64(0)
	for range mostDoublings {
		digit := x >> (sobolBits - 1)
		x <<= 1
		coin := uint32(c[node>>6]>>(node&63)) & 1
		out = out<<1 | uint64(digit^coin)
		node = node<<1 | digit
	}
	return open(out<<(64-mostDoublings) | coins>>mostDoublings)
}

// points gives the points of one replication one after the other: scrambled Sobol points
// in the first dimensions, plain draws in those for which there are no direction numbers.
type points struct {
	sobol
	scrambles []scramble
	g         generator
	at        []float64
}

func newPoints(dimensions int, g generator) *points {
	n := min(dimensions, mostSobol)
	p := &points{sobol: newSobol(n), scrambles: make([]scramble, n), g: g, at: make([]float64, dimensions)}
	for d := range p.scrambles {
		p.scrambles[d].draw(&p.g)
	}
	return p
}

// next gives the next point; the slice is used again.
func (p *points) next() []float64 {
	g, x := p.g, uint64(0)
	for d := range p.at {
		g, x = g.next()
		if d < len(p.scrambles) {
			p.at[d] = p.scrambles[d].apply(p.sobol.at[d], x)
		} else {
			p.at[d] = open(x)
		}
	}
	p.g = g
	p.step()
	return p.at
}
