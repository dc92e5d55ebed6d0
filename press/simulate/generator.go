package simulate

import "math/bits"

// generator draws 64 random bits at a time: a linear congruential generator of 128 bits
// with the output function DXSM. It gives the same bits as math/rand/v2's PCG, which a
// test compares; it stands here so that a loop can keep its state in registers.
//
// Source: M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good
// Algorithms for Random Number Generation, 2014; DXSM as in NumPy and math/rand/v2.
type generator struct{ hi, lo uint64 }

// Constants of PCG-DXSM: multiplier and increment of the state, multiplier of the output.
const (
	pcgMulHi, pcgMulLo = 2549297995355413924, 4865540595714422341
	pcgIncHi, pcgIncLo = 6364136223846793005, 1442695040888963407
	pcgCheapMul        = 0xda942042e4dd58b5
)

// next is one draw. It is small enough to be compiled into the loops that call it.
func (g generator) next() (generator, uint64) {
	hi, lo := bits.Mul64(g.lo, pcgMulLo)
	hi += g.hi*pcgMulLo + g.lo*pcgMulHi
	lo, carry := bits.Add64(lo, pcgIncLo, 0)
	hi, _ = bits.Add64(hi, pcgIncHi, carry)
	x := hi
	x ^= x >> 32
	x *= pcgCheapMul
	x ^= x >> 48
	x *= lo | 1
	return generator{hi, lo}, x
}

// weyl is the step between the states of the SplitMix64 generator: 2⁶⁴ over the golden
// ratio, odd.
const weyl = 0x9E3779B97F4A7C15

// newStream gives a generator of its own to each stream of a seed: neighbouring seeds and
// streams do not give neighbouring states.
//
//	high = mix(S), low = mix(S + (n+1)·0x9E3779B97F4A7C15)   modulo 2⁶⁴
func newStream(seed, n uint64) generator {
	return generator{mix(seed), mix(seed + (n+1)*weyl)}
}

// mix is the finaliser of SplitMix64: every bit of the answer hangs on every bit of x.
//
// Source: G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number
// Generators, OOPSLA 2014; constants by D. Stafford, variant 13.
func mix(x uint64) uint64 {
	x = (x ^ x>>30) * 0xBF58476D1CE4E5B9
	x = (x ^ x>>27) * 0x94D049BB133111EB
	return x ^ x>>31
}

// open turns random bits into a number between 0 and 1 that is neither: 53 bits, in the
// middle of their cell.
func open(x uint64) float64 { return (float64(x>>11) + 0.5) * 0x1p-53 }

// addUniform adds to each number a draw between −half and half.
func (g *generator) addUniform(to []float64, half float64) {
	s, x := *g, uint64(0)
	for j := range to {
		s, x = s.next()
		to[j] += half * (float64(int64(x)>>10) + 0.5) * 0x1p-53
	}
	*g = s
}

// addTriangular adds to each number a draw of the symmetric triangle between −half and
// half: the sum of two uniform draws of half the width.
func (g *generator) addTriangular(to []float64, half float64) {
	s, x, y := *g, uint64(0), uint64(0)
	for j := range to {
		s, x = s.next()
		s, y = s.next()
		to[j] += half * (float64(int64(x)>>11) + float64(int64(y)>>11) + 1) * 0x1p-53
	}
	*g = s
}

// fillOpen puts into each place a draw between 0 and 1.
func (g *generator) fillOpen(to []float64) {
	s, x := *g, uint64(0)
	for j := range to {
		s, x = s.next()
		to[j] = open(x)
	}
	*g = s
}
