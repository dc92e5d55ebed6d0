package motion

import "math"

// Profile is how the drive moves: from the speed at the start with constant
// acceleration to a set speed, then with constant deceleration to the speed at the
// end.
type Profile struct {
	Speed      float64 // mm/s, set speed, above 0
	Accel      float64 // mm/s², above 0
	Decel      float64 // mm/s², above 0, as a magnitude
	StartSpeed float64 // mm/s, 0 from rest; at most Speed, a higher one is cut to it
	EndSpeed   float64 // mm/s, 0 to stop; at most Speed, a higher one is cut to it
}

// Move is one move along a profile.
type Move struct {
	Time float64 // s, all of it
	Peak float64 // mm/s, highest speed

	TAccel, TCruise, TDecel float64 // s, its three phases; their sum is Time

	Start, End float64 // mm/s, speeds at both ends
}

// Move is the quickest move over a distance along the profile.
//
//	trapezoid: v_p = v,  t = (v−v₀)/a + (s − (v²−v₀²)/2a − (v²−v_e²)/2d)/v + (v−v_e)/d
//	triangle:  v_p² = (2ads + d·v₀² + a·v_e²)/(a+d),  t = (v_p−v₀)/a + (v_p−v_e)/d
//	short:     v_p = √(v₀²+2as),  t = 2s/(v₀+v_p)
//	too fast:  v_p = v₀, v_e = √(v₀²−2ds),  t = 2s/(v₀+v_e)
//
// A triangle never reaches the set speed; a short move does not even reach the
// speed of the end, and ends while it still accelerates. A move that starts too fast
// for its end brakes all the way and ends faster than asked: [Junctions] never gives
// it such a start.
//
// Arguments: distance, mm.
// Result: times in s, speeds in mm/s.
// Range: constant acceleration without limit of jerk; no range is published.
// Special cases: a distance of 0 or less is no move: all zero.
// Source: kinematics of constant acceleration; M. W. Spong, S. Hutchinson,
// M. Vidyasagar, Robot Modeling and Control, section on linear segments with
// parabolic blends (from memory), for equal ramps from rest to rest; unequal ramps
// and speeds at the ends follow from the same areas.
func (p Profile) Move(distance float64) Move {
	if !(distance > 0) {
		return Move{}
	}
	start, end := min(p.StartSpeed, p.Speed), min(p.EndSpeed, p.Speed)
	m := Move{Start: start, End: end}
	switch {
	case end*end >= start*start+2*p.Accel*distance:
		m.Peak = math.Sqrt(start*start + 2*p.Accel*distance)
		m.TAccel = math.Sqrt(2 * distance / p.Accel)
		if start > 0 {
			m.TAccel = 2 * distance / (start + m.Peak)
		}
		m.Time, m.End = m.TAccel, m.Peak
		return m
	case start*start > (end*end+2*p.Decel*distance)*(1+1e-12): // less is binary noise
		m.Peak = start
		m.End = math.Sqrt(max(0, start*start-2*p.Decel*distance))
		m.TDecel = 2 * distance / (start + m.End)
		m.Time = m.TDecel
		return m
	}
	peak := p.Speed
	ramps := (peak*peak-start*start)/(2*p.Accel) + (peak*peak-end*end)/(2*p.Decel)
	if m.TCruise = (distance - ramps) / peak; m.TCruise < 0 {
		m.TCruise = 0
		area := distance + end*end/(2*p.Decel) + start*start/(2*p.Accel)
		peak = math.Sqrt(area * 2 * p.Accel * p.Decel / (p.Accel + p.Decel))
		peak = min(max(peak, start, end), p.Speed) // binary noise at the borders
	}
	m.Peak = peak
	m.TAccel = (peak - start) / p.Accel
	m.TDecel = (peak - end) / p.Decel
	m.Time = m.TAccel + m.TCruise + m.TDecel
	return m
}

// AccelWay is the length on which a move speeds up.
//
//	(v₀+v_p)/2·t_a
//
// Arguments: those of [Move].
// Result: mm.
// Range: as for [Profile.Move].
// Special cases: 0 where it does not speed up.
// Source: area under the speed.
func (m Move) AccelWay() float64 { return (m.Start + m.Peak) / 2 * m.TAccel }

// CruiseWay is the length on which a move keeps its set speed.
//
//	v_p·t_c
//
// Arguments: those of [Move].
// Result: mm.
// Range: as for [Profile.Move].
// Special cases: 0 where the set speed is never reached.
// Source: area under the speed.
func (m Move) CruiseWay() float64 { return m.Peak * m.TCruise }

// DecelWay is the length on which a move slows down.
//
//	(v_p+v_e)/2·t_d
//
// Arguments: those of [Move].
// Result: mm.
// Range: as for [Profile.Move].
// Special cases: 0 where it does not slow down.
// Source: area under the speed.
func (m Move) DecelWay() float64 { return (m.Peak + m.End) / 2 * m.TDecel }

// When is the time at which a move over a distance passes a place on its way, and
// its speed there.
//
//	speeding up: v = √(v₀²+2ax),  t = 2x/(v₀+v)
//	cruising:    v = v_p,  t = t_a + (x−x_a)/v_p
//	slowing:     v = √(v_e²+2d(s−x)),  t = T − 2(s−x)/(v_e+v)
//
// Arguments: distance, mm; x, mm, from the start, 0 to the distance.
// Result: s from the start of the move; mm/s.
// Range: as for [Profile.Move].
// Special cases: outside its way the nearer end of the move.
// Source: as for [Profile.Move].
func (p Profile) When(distance, x float64) (t, speed float64) {
	m := p.Move(distance)
	left := distance - x
	switch {
	case x <= 0 || m.Time == 0:
		return 0, m.Start
	case left <= 0:
		return m.Time, m.End
	case x < m.AccelWay():
		speed = math.Sqrt(m.Start*m.Start + 2*p.Accel*x)
		return 2 * x / (m.Start + speed), speed
	case left > m.DecelWay():
		return m.TAccel + (x-m.AccelWay())/m.Peak, m.Peak
	}
	speed = math.Sqrt(m.End*m.End + 2*p.Decel*left)
	return m.Time - 2*left/(m.End+speed), speed
}

// At is where a move over a distance stands at a time, for drawings.
//
// Arguments: distance, mm; t, s, from the start of the move.
// Result: position, mm, from the start; speed, mm/s.
// Range: as for [Profile.Move].
// Special cases: before the start it stays at 0 with the speed that it starts with;
// from the end on it stays at the distance with the speed that the move ended with; a
// distance of 0 or less stays at 0.
// Source: as for [Profile.Move].
func (p Profile) At(distance, t float64) (position, speed float64) {
	m := p.Move(distance)
	switch {
	case m.Time == 0 || t <= 0:
		return 0, m.Start
	case t >= m.Time:
		return distance, m.End
	case t < m.TAccel:
		return m.Start*t + p.Accel*t*t/2, m.Start + p.Accel*t
	case t < m.TAccel+m.TCruise:
		return m.AccelWay() + m.Peak*(t-m.TAccel), m.Peak
	}
	left := m.Time - t
	return distance - m.End*left - p.Decel*left*left/2, m.End + p.Decel*left
}
