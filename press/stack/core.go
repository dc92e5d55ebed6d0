package stack

import "math"

// core is a symmetric distribution about 0, a normal with some uniforms, as a
// Fourier series of period 2·reach:
//
//	density  1/2P + (1/P) Σ φ(ω_k) cos(ω_k z),  ω_k = kπ/P
//	φ(ω)     exp(−σ²ω²/2) Π sin(aω)/(aω)
//
// It answers its own repeated integrals, which the boxes need.
type core struct {
	reach float64 // P; 0 for a point
	top   int     // the level that was asked for most: integrals top and top−1 are kept
	upper series  // level top
	lower series  // level top−1
	m2    float64 // second and further even moments, for the polynomials beyond P
	m4    float64
	m6    float64
}

// series is one repeated integral of the core: a polynomial and a trigonometric sum.
type series struct {
	level  int
	poly   [8]float64 // ascending powers of z
	coeffs []float64  // k = 1, 2, …
}

// split is one way to divide the parts into boxes and core.
type split struct {
	m     int
	terms int
	reach float64
	cost  float64
}

// trySplit tells what m boxes would cost; infinite where the accuracy is out of
// reach.
func trySplit(sigma float64, widths []float64, m int, total, most float64) split {
	p := split{m: m, cost: math.Inf(1)}
	rest := widths[m:]
	scale := 1.0
	for _, a := range widths[:m] {
		scale /= 2 * a
	}
	variance := sigma * sigma
	for _, a := range rest {
		variance += a * a / 3
	}
	p.reach = reach(sigma, rest, math.Sqrt(variance))
	gain := scale
	for i := range m {
		gain *= 2 * (total + p.reach) / float64(i+1)
	}
	switch {
	case gain > most:
		return p
	case p.reach == 0:
		if m > 0 || len(widths) == 0 {
			p.cost = float64(int(1)<<m) * 4
		}
		return p
	}
	size := total + 8*sigma // what the density is measured by
	for n := 8; n <= mostTerms; n += 4 + n/8 {
		omega := float64(n) * math.Pi / p.reach
		env := math.Exp(-sigma * sigma * omega * omega / 2)
		power := m
		for _, a := range rest {
			if a*omega > 1 {
				env /= a * omega
				power++
			}
		}
		if sigma*omega < 3 && power < 2 {
			continue // the tail of the sum does not fall fast enough to be bounded
		}
		tail := env * float64(n) / p.reach / math.Pow(omega, float64(m)) * scale * size
		if tail < wanted {
			p.terms = n
			p.cost = float64(int(1)<<m) * float64(n+8)
			break
		}
	}
	return p
}

// newCore makes the series for the integrals of level m and m−1.
func newCore(sigma float64, widths []float64, p split, m int) core {
	c := core{reach: p.reach, top: m}
	if c.reach == 0 {
		return c
	}
	c.moments(sigma, widths)
	phi := make([]float64, p.terms)
	for k := range phi {
		omega := float64(k+1) * math.Pi / c.reach
		v := math.Exp(-sigma * sigma * omega * omega / 2)
		for _, a := range widths {
			v *= math.Sin(a*omega) / (a * omega)
		}
		phi[k] = v / c.reach
	}
	c.upper = newSeries(phi, c.reach, m)
	c.lower = newSeries(phi, c.reach, m-1)
	return c
}

// newSeries integrates the density level+1 times, each time from −P.
func newSeries(phi []float64, reach float64, level int) series {
	s := series{level: level, coeffs: make([]float64, len(phi))}
	s.poly[0] = 1 / (2 * reach)
	for j := 0; j <= level; j++ {
		for i := j; i >= 0; i-- {
			s.poly[i+1] = s.poly[i] / float64(i+1)
		}
		s.poly[0] = 0
		constant := s.polynomial(-reach)
		if j%2 == 1 { // the sum is of cosines, which do not vanish at −P
			constant += sign(j) * alternating(phi, reach, j)
		}
		s.poly[0] = -constant
	}
	for k, v := range phi {
		omega := float64(k+1) * math.Pi / reach
		s.coeffs[k] = v * math.Pow(omega, -float64(level+1))
	}
	return s
}

// alternating is Σ φ_k (−1)^k / ω_k^(j+1).
func alternating(phi []float64, reach float64, j int) float64 {
	var t float64
	for k, v := range phi {
		omega := float64(k+1) * math.Pi / reach
		v *= math.Pow(omega, -float64(j+1))
		if k%2 == 0 {
			v = -v
		}
		t += v
	}
	return t
}

// sign of the trigonometric sum of a level: −1 cos, 0 sin, 1 −cos, 2 −sin, 3 cos, …
func sign(level int) float64 {
	if (level+4)%4 == 1 || (level+4)%4 == 2 {
		return -1
	}
	return 1
}

func (s *series) polynomial(z float64) float64 {
	v := 0.0
	for i := s.level + 1; i >= 0; i-- {
		v = v*z + s.poly[i]
	}
	return v
}

// at evaluates polynomial and sum (Clenshaw's recurrence).
func (s *series) at(z, reach float64) float64 {
	sin, cos := math.Sincos(z * math.Pi / reach)
	var b1, b2 float64
	for k := len(s.coeffs) - 1; k >= 0; k-- {
		b1, b2 = s.coeffs[k]+2*cos*b1-b2, b1
	}
	wave := b1 * sin
	if s.level%2 != 0 {
		wave = b1*cos - b2
	}
	return s.polynomial(z) + sign(s.level)*wave
}

// integral gives the core's distribution function integrated j times, j = −1
// being its density: E[(z−K)₊^j]/j!.
func (c *core) integral(z float64, j int) float64 {
	switch {
	case z <= -c.reach && c.reach > 0:
		return 0
	case z >= c.reach:
		return c.beyond(z, j)
	case c.reach == 0:
		return 0
	case j == c.top:
		return c.upper.at(z, c.reach)
	}
	return c.lower.at(z, c.reach)
}

// beyond is the integral where the whole core lies below z: a moment of z−K.
func (c *core) beyond(z float64, j int) float64 {
	switch j {
	case -1:
		return 0
	case 0:
		return 1
	}
	z2 := z * z
	switch j {
	case 1:
		return z
	case 2:
		return (z2 + c.m2) / 2
	case 3:
		return z * (z2 + 3*c.m2) / 6
	case 4:
		return (z2*z2 + 6*z2*c.m2 + c.m4) / 24
	case 5:
		return z * (z2*z2 + 10*z2*c.m2 + 5*c.m4) / 120
	}
	return (z2*z2*z2 + 15*z2*z2*c.m2 + 15*z2*c.m4 + c.m6) / 720
}

// moments of the core by its cumulants: κ2 = σ² + Σa²/3, κ4 = −Σ2a⁴/15,
// κ6 = Σ16a⁶/63.
func (c *core) moments(sigma float64, widths []float64) {
	k2, k4, k6 := sigma*sigma, 0.0, 0.0
	for _, a := range widths {
		a2 := a * a
		k2 += a2 / 3
		k4 -= 2 * a2 * a2 / 15
		k6 += 16 * a2 * a2 * a2 / 63
	}
	c.m2 = k2
	c.m4 = k4 + 3*k2*k2
	c.m6 = k6 + 15*k4*k2 + 15*k2*k2*k2
}
