package motion

import "math"

// Link is one move of a chain: all of them run the same way, each begins where the one
// before ends.
type Link struct {
	Profile          // its own set speed and ramps; of the ends only the chain's are read
	Distance float64 // mm, above 0
}

// Junction is where one link hands over to the next without rest.
type Junction struct {
	Speed  float64 // mm/s
	Braked bool    // braking decides it: the set speeds alone would allow more, and it is reached
}

// Junctions gives the speeds at which the links of a chain hand over.
//
//	least:    c_i = min(v_i, v_{i+1})
//	backward: b_i = min(c_i, √(b_{i+1}² + 2·d_{i+1}·s_{i+1}))
//	forward:  u_i = min(b_i, √(u_{i−1}² + 2·a_i·s_i))
//
// First backward, what the next link can still brake from over its own length with its
// own deceleration; then forward, what can be reached.
//
// Arguments: links, in their order, with StartSpeed of the first and EndSpeed of the
// last as the chain's own.
// Result: one less than there are links; speeds in mm/s.
// Range: as for [Profile.Move], and a start from which the first link can brake to what
// comes after it; a start from rest always can.
// Special cases: less than two links have none.
// Source: derived here from v² = v₀² + 2as; the two passes are common practice, no
// source.
func Junctions(links []Link) []Junction {
	n := len(links) - 1
	if n < 1 {
		return nil
	}
	out := make([]Junction, n)
	next := min(links[n].EndSpeed, links[n].Speed)
	for i := n - 1; i >= 0; i-- {
		after, set := links[i+1], min(links[i].Speed, links[i+1].Speed)
		brake := math.Sqrt(next*next + 2*after.Decel*after.Distance)
		next = min(set, brake)
		out[i] = Junction{next, brake < set-slack}
	}
	before := min(links[0].StartSpeed, links[0].Speed)
	for i := range out {
		reach := math.Sqrt(before*before + 2*links[i].Accel*links[i].Distance)
		if reach <= out[i].Speed {
			out[i] = Junction{Speed: reach}
		}
		before = out[i].Speed
	}
	return out
}

// slack is what comparisons forgive: binary noise makes no difference, mm or mm/s.
const slack = 1e-9

// Chain gives the links with the speeds at which they hand over filled in, and their
// junctions.
//
//	end speed of a link = start speed of the next = u of [Junctions]
//
// Arguments: links, as for [Junctions].
// Result: links with their speeds, mm/s; junctions.
// Range: as for [Junctions].
// Special cases: a single link stays as it is; the links that were given do not change.
// Source: as for [Junctions].
func Chain(links []Link) ([]Link, []Junction) {
	out := append([]Link(nil), links...)
	js := Junctions(links)
	for i, j := range js {
		out[i].EndSpeed, out[i+1].StartSpeed = j.Speed, j.Speed
	}
	return out, js
}

// Stop is what it takes to come to rest when the ram must hold.
type Stop struct {
	Time float64 // s
	Way  float64 // mm
}

// Brake is the stop from a speed.
//
//	t = v/d,  s = v²/2d
//
// Arguments: speed, mm/s; decel, mm/s², above 0.
// Result: s, mm.
// Range: constant deceleration, as for [Profile.Move]; no hold input is a safety
// function, and nothing here says how a ram stops when it must not hurt anyone.
// Special cases: 0 from rest.
// Source: kinematics of constant acceleration.
func Brake(speed, decel float64) Stop {
	return Stop{Time: speed / decel, Way: speed * speed / (2 * decel)}
}

// Resume is when a ram that had to hold sets off again: when the hold is over and it
// stands.
//
//	max(hold, v/d)
//
// Arguments: hold, s, for how long the input is off; those of [Stop].
// Result: s, from the moment the input went off.
// Range: as for [Brake]; a controller that sets off again before it stands differs.
// Special cases: a hold that is over before the ram stands counts as its stop.
// Source: derived here from what a hold means.
func (s Stop) Resume(hold float64) float64 { return math.Max(hold, s.Time) }
