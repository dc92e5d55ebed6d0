package motion

import "math"

// Profile is how the drive moves: from rest with constant acceleration to a
// set speed, then with constant deceleration to the speed at the end.
type Profile struct {
	Speed    float64 // mm/s, set speed, above 0
	Accel    float64 // mm/s², above 0
	Decel    float64 // mm/s², above 0, as a magnitude
	EndSpeed float64 // mm/s, 0 to stop; at most Speed, a higher one is cut to it
}

// Move is one move along a profile.
type Move struct {
	Time float64 // s, all of it
	Peak float64 // mm/s, highest speed

	TAccel, TCruise, TDecel float64 // s, its three phases; their sum is Time
}

// Move is the quickest move over a distance along the profile.
//
//	trapezoid: v_p = v,  t = v/a + (s − v²/2a − (v²−v_e²)/2d)/v + (v−v_e)/d
//	triangle:  v_p² = (s + v_e²/2d)·2ad/(a+d),  t = v_p/a + (v_p−v_e)/d
//	short:     v_p = √(2as),  t = √(2s/a)
//
// A triangle never reaches the set speed; a short move does not even reach the
// speed of the end, and ends while it still accelerates.
//
// Arguments: distance, mm.
// Result: times in s, speeds in mm/s.
// Range: constant acceleration without limit of jerk; no range is published.
// Special cases: a distance of 0 or less is no move: all zero.
// Source: kinematics of constant acceleration; M. W. Spong, S. Hutchinson,
// M. Vidyasagar, Robot Modeling and Control, section on linear segments with
// parabolic blends (from memory), for equal ramps to rest; unequal ramps and an
// end speed follow from the same areas.
func (p Profile) Move(distance float64) Move {
	if !(distance > 0) {
		return Move{}
	}
	end := min(p.EndSpeed, p.Speed)
	if end*end >= 2*p.Accel*distance {
		t := math.Sqrt(2 * distance / p.Accel)
		return Move{Time: t, Peak: math.Sqrt(2 * p.Accel * distance), TAccel: t}
	}
	peak := p.Speed
	ramps := peak*peak/(2*p.Accel) + (peak*peak-end*end)/(2*p.Decel)
	cruise := (distance - ramps) / peak
	if cruise < 0 {
		cruise = 0
		area := distance + end*end/(2*p.Decel)
		peak = math.Sqrt(area * 2 * p.Accel * p.Decel / (p.Accel + p.Decel))
		peak = min(max(peak, end), p.Speed) // binary noise at the two borders
	}
	m := Move{
		Peak:    peak,
		TAccel:  peak / p.Accel,
		TCruise: cruise,
		TDecel:  (peak - end) / p.Decel,
	}
	m.Time = m.TAccel + m.TCruise + m.TDecel
	return m
}

// At is where a move over a distance stands at a time, for drawings.
//
// Arguments: distance, mm; t, s, from the start of the move.
// Result: position, mm, from the start; speed, mm/s.
// Range: as for [Profile.Move].
// Special cases: before the start it rests at 0; from the end on it stays at
// the distance with the speed that the move ended with; a distance of 0 or
// less stays at 0.
// Source: as for [Profile.Move].
func (p Profile) At(distance, t float64) (position, speed float64) {
	m := p.Move(distance)
	end := m.Peak - p.Decel*m.TDecel
	switch {
	case m.Time == 0 || t <= 0:
		return 0, 0
	case t >= m.Time:
		return distance, end
	case t < m.TAccel:
		return p.Accel * t * t / 2, p.Accel * t
	case t < m.TAccel+m.TCruise:
		return m.Peak*m.TAccel/2 + m.Peak*(t-m.TAccel), m.Peak
	}
	left := m.Time - t
	return distance - end*left - p.Decel*left*left/2, end + p.Decel*left
}
