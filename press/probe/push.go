package probe

import "math"

// A Push is the ram in the probe, and where it must stop a part.
type Push struct {
	Force     float64 // N, typical
	Sigma     float64 // N, standard deviation
	NestForce float64 // N, with which the nest was taught
	Stiffness float64 // N/mm
	Limit     float64 // mm, Q: the part passes when it comes to rest at or before it
}

// A Joint is what pressing in demands at a depth from the contact:
//
//	f(z) = drag + κz + G·clamp(z − pilot, 0, L)
type Joint struct {
	Drag    float64 // N
	Counter float64 // N/mm, κ: what pushes back
	Pilot   float64 // mm
	Length  float64 // mm, L
	Travel  float64 // mm, to the seat; +Inf: not looked at
}

// Threshold is the force above which the ram passes the limit on a part that is met at
// a place, deflection and stall by one and the same force.
//
//	F* = min(min(max(y1, y2), y3), k·w),  w = Q − x + nest_force/k
//	y = (α + βw)/(1 + β/k) for the three lines of f
//
// Arguments: j, N, what the joint demands; x, mm, where the part is met; grip, N/mm, G.
// Result: N.
// Range: a joint that demands more the deeper it is; the travel plays no part.
// Special cases: k·w where the limit comes before the part.
// Source: derived here: f(Q − x − (F − nest_force)/k) = F, solved on each line.
func (p Push) Threshold(j Joint, x, grip float64) float64 {
	w := p.Limit - x + p.NestForce/p.Stiffness
	line := func(alpha, beta float64) float64 { return (alpha + beta*w) / (1 + beta/p.Stiffness) }
	free := line(j.Drag, j.Counter)
	gripped := line(j.Drag-grip*j.Pilot, grip+j.Counter)
	engaged := line(j.Drag+grip*j.Length, j.Counter)
	return math.Min(math.Min(math.Max(free, gripped), engaged), p.Stiffness*w)
}

// A piece is a stretch of forces on which the stalled depth is a straight line.
type piece struct {
	from, to float64 // N
	depth    float64 // mm, at from
	slope    float64 // mm/N
}

// pieces lists how deep a force goes, from none to all forces. A force that is not more
// than what is demanded stalls.
func (j Joint) pieces(grip float64) []piece {
	out := make([]piece, 0, 6)
	add := func(from, to, depth, slope float64) {
		switch {
		case !(to > from):
			return
		case depth >= j.Travel:
			depth, slope = j.Travel, 0
		case slope > 0 && depth+slope*(to-from) > j.Travel:
			seat := from + (j.Travel-depth)/slope
			out = append(out, piece{from, seat, depth, slope})
			from, depth, slope = seat, j.Travel, 0
		}
		out = append(out, piece{from, to, depth, slope})
	}
	per := func(rise float64) float64 {
		if rise > 0 {
			return 1 / rise
		}
		return 0
	}
	gripping := j.Drag + j.Counter*j.Pilot
	engaged := gripping + (grip+j.Counter)*j.Length
	add(math.Inf(-1), j.Drag, 0, 0)
	add(j.Drag, gripping, 0, per(j.Counter))
	add(gripping, engaged, j.Pilot, per(grip+j.Counter))
	if j.Counter > 0 {
		add(engaged, math.Inf(1), j.Pilot+j.Length, per(j.Counter))
	} else {
		add(engaged, math.Inf(1), math.Min(j.Travel, math.MaxFloat64), 0)
	}
	return out
}
