package simulate

import "math"

// The standard normal by the ziggurat: its density is covered by layers of the same
// area, one on top of the other; a draw takes a layer and a place in it, and is done
// where the layer lies under the density altogether, as 99 of 100 do. The answer is
// exactly normal; layer, sign and place come from different bits of one draw.
//
// Source: G. Marsaglia, W. W. Tsang, The Ziggurat Method for Generating Random
// Variables, J. Stat. Softw. 5 (8), 2000; bits kept apart as J. A. Doornik, An Improved
// Ziggurat Method, 2005, asks for.
const (
	layers = 256
	// From here on is the tail: then 256 layers of one area close at the density's peak,
	// which a test checks (Marsaglia and Tsang give 3.6541528853610088).
	tailFrom = 3.6541528853610088
)

var zigguratWidth, zigguratInner, zigguratHeight = func() (width, inner [layers]float64, height [layers + 1]float64) {
	// Layer 0 is the strip along the axis with the tail; its width stands for both.
	density := func(x float64) float64 { return math.Exp(-x * x / 2) }
	area := tailFrom*density(tailFrom) + math.Sqrt(math.Pi/2)*math.Erfc(tailFrom/math.Sqrt2)
	x := [layers + 1]float64{1: tailFrom}
	x[0] = area / density(tailFrom)
	for i := 2; i < layers; i++ {
		x[i] = math.Sqrt(-2 * math.Log(density(x[i-1])+area/x[i-1]))
	}
	for i := range layers {
		width[i] = x[i] * 0x1p-54 // times 55 bits with sign
		if x[i] > 0 {
			inner[i] = x[i+1]
		}
		height[i] = density(x[i])
	}
	height[layers] = 1
	return width, inner, height
}()

// addNormal adds to each number a normal draw of this standard deviation.
func (g *generator) addNormal(to []float64, sd float64) {
	s, x := *g, uint64(0)
	for j := range to {
		s, x = s.next()
		layer := x & (layers - 1)
		z := float64(int64(x)>>9) * zigguratWidth[layer]
		if math.Abs(z) >= zigguratInner[layer] {
			s, z = s.normalOutside(layer, z)
		}
		to[j] += sd * z
	}
	*g = s
}

// normalOutside goes on where a draw fell beside the sure part of its layer.
func (g generator) normalOutside(layer uint64, z float64) (generator, float64) {
	for {
		var x uint64
		switch {
		case layer == 0: // the tail, by two exponentials
			for {
				g, x = g.next()
				beyond := -math.Log(open(x)) / tailFrom
				g, x = g.next()
				if -2*math.Log(open(x)) > beyond*beyond {
					return g, math.Copysign(tailFrom+beyond, z)
				}
			}
		default: // between the layer's corners: under the density or not
			g, x = g.next()
			low, high := zigguratHeight[layer], zigguratHeight[layer+1]
			if low+open(x)*(high-low) < math.Exp(-z*z/2) {
				return g, z
			}
		}
		g, x = g.next()
		layer = x & (layers - 1)
		z = float64(int64(x)>>9) * zigguratWidth[layer]
		if math.Abs(z) < zigguratInner[layer] {
			return g, z
		}
	}
}
