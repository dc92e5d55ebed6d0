package study

import "math"

// A Spread is how values scattered in one group.
type Spread struct {
	DF float64 // degrees of freedom, 0 where the group has one value
	SD float64 // 0 without degrees of freedom
	X  float64 // what the proportional part of the variance grows with, not negative
}

// A Split is a variance in a part that grows with X and a constant one.
type Split struct {
	Share  float64 // w, of the growing part in the mean variance
	Fitted bool    // the data tell the share; else it is the one that was assumed
	Kappa  float64 // root of the mean variance
	DF     float64 // of Kappa, one less where the share is fitted
	MeanX  float64 // mean of X over degrees of freedom
}

// SplitVariance tells by how much scatter grows with the size of what scatters.
//
//	σ_j² = κ²v_j, v_j = w·x_j/x̄ + 1 − w, x̄ = Σν_j x_j/Σν_j;
//	l(w) = −½Σν_j ln v_j − ½Σν_j·ln(Σν_j s_j²/v_j); κ² = Σν_j s_j²/v_j/ν
//
// The share w is the assumed one unless 2(l(ŵ) − l(w)) exceeds 3.841, the 95 % quantile
// of χ² with one degree of freedom; ŵ is looked for on [0, 1] in 201 places and refined.
//
// Arguments: groups, the spreads; assumed, –, the assumed share w, from 0 to 1.
// Result: w, –, and κ, –, in the unit of the spreads.
// Range: normal values.
// Special cases: nil without degrees of freedom; where no x is over 0 the growing part cannot
// be seen and the share is 0; nothing scatters: κ is 0 and the share is the assumed one.
// Source: profile likelihood: D. R. Cox, D. V. Hinkley, Theoretical Statistics (1974), 9.3,
// from memory.
func SplitVariance(groups []Spread, assumed float64) *Split {
	s := &Split{Share: assumed}
	for _, g := range groups {
		s.DF += g.DF
		s.MeanX += g.DF * g.X
	}
	if s.DF == 0 {
		return nil
	}
	s.MeanX /= s.DF
	if !(s.MeanX > 0) {
		s.MeanX, s.Share = 0, 0
	} else if w := s.likeliest(groups); 2*(s.likelihood(groups, w)-s.likelihood(groups, assumed)) > 3.841 {
		s.Share, s.Fitted = w, true
	}
	sum := 0.0
	for _, g := range groups {
		if g.DF > 0 && g.SD > 0 {
			sum += g.DF * square(g.SD) / s.At(g.X)
		}
	}
	if s.Fitted {
		s.DF--
	}
	s.Kappa = math.Sqrt(sum / s.DF)
	return s
}

// At is the variance where X is so large, over the mean one.
//
//	v = w·x/x̄ + 1 − w
//
// Arguments: x, –, in the unit of the groups' X.
// Result: v, –.
// Range: any x that is not negative.
// Special cases: no x was over 0: 1.
// Source: as [SplitVariance].
func (s *Split) At(x float64) float64 { return s.at(x, s.Share) }

// at is v at a share.
func (s *Split) at(x, share float64) float64 {
	if s.MeanX == 0 {
		return 1
	}
	return share*x/s.MeanX + 1 - share
}

// likelihood is l(w); −Inf where a group could not scatter as it does.
func (s *Split) likelihood(groups []Spread, share float64) float64 {
	logs, squares, df := 0.0, 0.0, 0.0
	for _, g := range groups {
		if g.DF == 0 {
			continue
		}
		v := s.at(g.X, share)
		if !(v > 0) {
			return math.Inf(-1)
		}
		df += g.DF
		logs += g.DF * math.Log(v)
		squares += g.DF * square(g.SD) / v
	}
	if squares == 0 {
		return math.Inf(-1)
	}
	return -(logs + df*math.Log(squares)) / 2
}

// likeliest is the share of the greatest likelihood.
func (s *Split) likeliest(groups []Spread) float64 {
	const places = 201
	best, top := 0.0, math.Inf(-1)
	for i := range places {
		w := float64(i) / (places - 1)
		if l := s.likelihood(groups, w); l > top {
			best, top = w, l
		}
	}
	// Between its neighbours the slope falls through 0, or the greatest is an end of [0, 1].
	// Values of the likelihood are flat there and would tell the place to half the digits only.
	from, to := math.Max(0, best-1.0/(places-1)), math.Min(1, best+1.0/(places-1))
	switch {
	case !s.rises(groups, from):
		return from
	case s.rises(groups, to):
		return to
	}
	for {
		w := (from + to) / 2
		if w <= from || w >= to {
			return w
		}
		if s.rises(groups, w) {
			from = w
		} else {
			to = w
		}
	}
}

// rises tells whether the likelihood grows with the share.
//
//	dl/dw = −½Σν_j(x_j/x̄ − 1)/v_j + ½Σν_j·Σν_j s_j²(x_j/x̄ − 1)/v_j²/(Σν_j s_j²/v_j)
func (s *Split) rises(groups []Spread, share float64) bool {
	logs, slope, squares, df := 0.0, 0.0, 0.0, 0.0
	for _, g := range groups {
		if g.DF == 0 {
			continue
		}
		v, by := s.at(g.X, share), g.X/s.MeanX-1
		df += g.DF
		logs += g.DF * by / v
		slope += g.DF * square(g.SD) * by / square(v)
		squares += g.DF * square(g.SD) / v
	}
	return df*slope/squares > logs
}
