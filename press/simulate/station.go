package simulate

import (
	"math"
	"sync"

	"ramplan/press/model"
	"ramplan/press/stack"
	"ramplan/press/verdict"
)

// A Station is a plan as the simulation needs it: what is drawn for each part, and what
// then stays the same.
//
// Drawn, each independent of the others; a width of nothing is a fixed value:
//
//	each row            its own shape; one draw for contact, seat and datum
//	hole, shaft         normal about the middle of the limits, sd = width/6
//	smoothing factor    uniform, least to most
//	friction            uniform, low to high; the holding friction is one safe figure
//	measured force      triangular: low, typical, high
//	force               normal, sd h/2: one draw bends the frame and may stall
//	repeatability       normal, half of it
//	reference           normal, half of its uncertainty
//	nest drift          uniform
//	stiffness           normal, the tolerance taken on the compliance, half of it
type Station struct {
	rows []row
	mean sums // of all rows

	nest                         float64 // mm
	repeatability, reference     float64 // mm, one standard deviation
	drift                        float64 // mm, ±
	force, scatter               float64 // N, mean and one standard deviation
	nestForce                    float64 // N
	compliance, complianceSpread float64 // mm/N; one standard deviation as a share of it

	joint joint

	low, high float64    // mm, the requirement
	good      [2]float64 // mm, the readings of parts that meet it

	a       float64 // mm, the approach end
	signals verdict.Signals
	known   bool // the signals are

	doublings int // at which estimates end; 0: as far as there are points

	once  sync.Once // an estimate splits the rows when there is the first
	split *split

	first, width float64 // mm, where the density of readings begins, and each of its cells
}

// sums are what rows add up to, mm.
type sums struct {
	contact float64 // H0
	seat    float64 // H1
	height  float64 // C, above the datum
	travel  float64 // H0 − H1, of its own, so that a row in both leaves no noise
}

func (s *sums) add(o sums, times float64) {
	s.contact += times * o.contact
	s.seat += times * o.seat
	s.height += times * o.height
	s.travel += times * o.travel
}

// row is a row that has spread.
type row struct {
	of    sums // its coefficients
	shape stack.Shape
	half  float64 // mm: half-width, for a normal row the standard deviation
}

// New takes what is simulated from a plan's figures and what they lead to. It is false
// where nothing can be pressed in: then no reading has a meaning.
func New(in *model.Input, out *model.Outcome) (*Station, bool) {
	if !out.Pressable() {
		return nil, false
	}
	st := &in.Station
	s := &Station{
		nest:          st.Nest,
		repeatability: in.Ram.Repeatability / 2,
		reference:     st.ReferenceUncertainty / 2,
		drift:         st.NestDrift,
		force:         out.Force.Typical,
		scatter:       (out.Force.High - out.Force.Typical) / 2,
		nestForce:     st.NestForce,
		compliance:    1 / st.Stiffness, complianceSpread: st.StiffnessTolerance / 100 / 2,
		joint: newJoint(in, out),
		low:   in.Requirement.HeightLow, high: in.Requirement.HeightHigh,
		a: out.Travel.ApproachEnd,
	}
	s.signals, s.known = out.Signals()
	good := out.Window.GoodRange
	s.good = good
	s.first, s.width = good[0]-(good[1]-good[0])/2, 2*(good[1]-good[0])/Cells
	for _, p := range in.Parts {
		c := sums{contact: p.Contact, seat: p.Seat, height: p.Seat - p.DatumCount, travel: p.Contact - p.Seat}
		if !p.Datum {
			c.height = p.Seat
		}
		s.mean.add(c, p.Nominal+(p.Plus-p.Minus)/2)
		r := row{of: c, shape: shapes[p.Shape], half: (p.Minus + p.Plus) / 2}
		if r.shape == stack.Normal {
			r.half /= p.Sigmas
		}
		if r.half > 0 && c != (sums{}) {
			s.rows = append(s.rows, r)
		}
	}
	if math.Abs(s.mean.travel) < verdict.Slack {
		s.mean.travel = 0 // as the plan's own
	}
	return s, true
}

var shapes = map[string]stack.Shape{model.Uniform: stack.Uniform, model.Triangular: stack.Triangular, model.Normal: stack.Normal}

// Known tells whether the positions that make the signals are known. Where they are not,
// only readings can be counted.
func (s *Station) Known() bool { return s.known }

// bend is by how much the frame gives under a force, with a draw of the compliance.
func (s *Station) bend(force, normal float64) float64 {
	return (force - s.nestForce) * s.compliance * (1 + s.complianceSpread*normal)
}

// see tells what the signals say of a part: of the reading at contact and of the one at
// which the ram would come to rest if the stroke were endless. Nothing is forgiven here:
// binary noise decides over nothing that is drawn.
func (s *Station) see(contact, reading float64) Seen {
	switch z := &s.signals; {
	case contact < s.a || reading < s.a:
		return Early
	case reading <= z.End:
		if reading >= z.ZoneStart && reading <= z.ZoneEnd {
			return OnOn
		}
		return OnOff
	case z.End >= z.ZoneStart && z.End <= z.ZoneEnd:
		return OffOn
	}
	return OffOff
}

// Density gives where the density of readings begins, and how wide each of its cells is,
// mm: the range of good readings, widened by half its length on both sides.
func (s *Station) Density() (from, width float64) { return s.first, s.width }
