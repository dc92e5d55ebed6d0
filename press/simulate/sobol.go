package simulate

import "math/bits"

// primitive is a row of the table of direction numbers: the degree s of a primitive
// polynomial over two elements, its inner coefficients a, and the first m.
type primitive struct {
	degree int
	inner  uint32
	first  []uint32
}

// primitives are the rows of the table for the dimensions from the second on; the first
// has none.
//
// Source: S. Joe, F. Y. Kuo, Constructing Sobol sequences with better two-dimensional
// projections, SIAM J. Sci. Comput. 30 (2008), 2635, table new-joe-kuo-6.21201, the
// first 21 dimensions. A test holds the points to those that SciPy makes.
var primitives = []primitive{
	{1, 0, []uint32{1}},
	{2, 1, []uint32{1, 3}},
	{3, 1, []uint32{1, 3, 1}},
	{3, 2, []uint32{1, 1, 1}},
	{4, 1, []uint32{1, 1, 3, 3}},
	{4, 4, []uint32{1, 3, 5, 13}},
	{5, 2, []uint32{1, 1, 5, 5, 17}},
	{5, 4, []uint32{1, 1, 5, 5, 5}},
	{5, 7, []uint32{1, 1, 7, 11, 19}},
	{5, 11, []uint32{1, 1, 5, 1, 1}},
	{5, 13, []uint32{1, 1, 1, 3, 11}},
	{5, 14, []uint32{1, 3, 5, 5, 31}},
	{6, 1, []uint32{1, 3, 3, 9, 7, 49}},
	{6, 13, []uint32{1, 1, 1, 15, 21, 21}},
	{6, 16, []uint32{1, 3, 1, 13, 27, 49}},
	{6, 19, []uint32{1, 1, 1, 15, 7, 5}},
	{6, 22, []uint32{1, 3, 1, 15, 13, 25}},
	{6, 25, []uint32{1, 1, 5, 5, 19, 61}},
	{7, 1, []uint32{1, 3, 7, 11, 23, 15, 103}},
	{7, 4, []uint32{1, 3, 7, 13, 13, 15, 69}},
}

// sobolBits is to how many binary digits the points are made.
const sobolBits = 32

// mostSobol is for how many dimensions there are direction numbers.
var mostSobol = len(primitives) + 1

var directions = func() [][sobolBits]uint32 {
	all := make([][sobolBits]uint32, len(primitives)+1)
	for i := range sobolBits {
		all[0][i] = 1 << (sobolBits - 1 - i)
	}
	for d, p := range primitives {
		v := &all[d+1]
		for i := range v {
			if i < p.degree {
				v[i] = p.first[i] << (sobolBits - 1 - i)
				continue
			}
			v[i] = v[i-p.degree] ^ v[i-p.degree]>>p.degree
			for k := 1; k < p.degree; k++ {
				if p.inner>>(p.degree-1-k)&1 == 1 {
					v[i] ^= v[i-k]
				}
			}
		}
	}
	return all
}()

// sobol gives the points of Sobol's sequence one after the other, in the order of the
// Gray code: the first 2^k of them are the same as in any other order.
//
// Source: I. M. Sobol, USSR Comput. Math. Math. Phys. 7 (1967), 86; the order by
// I. A. Antonov, V. M. Saleev, ibid. 19 (1979), 252.
type sobol struct {
	n  uint32   // points given
	at []uint32 // the point to be given next, as a binary fraction
}

func newSobol(dimensions int) sobol { return sobol{at: make([]uint32, dimensions)} }

// step goes on to the next point.
func (s *sobol) step() {
	bit := bits.TrailingZeros32(^s.n)
	s.n++
	if bit >= sobolBits {
		panic("simulate: Sobol's sequence is at its end")
	}
	for d := range s.at {
		s.at[d] ^= directions[d][bit]
	}
}
