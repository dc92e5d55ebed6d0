package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/fit"
)

// anyRings draws two rings, solid inner parts among them.
func anyRings(t *rapid.T) fit.Rings {
	d := rapid.Float64Range(1, 500).Draw(t, "diameter")
	return fit.Rings{
		Diameter:      d,
		HubOutside:    d * rapid.Float64Range(1.05, 6).Draw(t, "outside ratio"),
		InsertBore:    d * rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0.01, 0.95)).Draw(t, "bore ratio"),
		HubModulus:    rapid.Float64Range(1e3, 6e5).Draw(t, "hub modulus"),
		HubPoisson:    rapid.Float64Range(0, 0.49).Draw(t, "hub poisson"),
		InsertModulus: rapid.Float64Range(1e3, 6e5).Draw(t, "insert modulus"),
		InsertPoisson: rapid.Float64Range(0, 0.49).Draw(t, "insert poisson"),
	}
}

// TestPressureFits holds the pressure by another route, Hooke's law at the
// joint: what the hub opens and the inner part yields together make up the
// interference. The hoop stress of the inner part at the joint follows from
// that at its bore, since the two stresses of a ring have the same sum
// everywhere.
func TestPressureFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyRings(t)
		effective := rapid.Float64Range(1e-3, 500).Draw(t, "interference")
		p := r.Pressure(effective)
		atJoint := r.InsertHoop(p) + p
		if r.InsertBore == 0 {
			atJoint = -p
		}
		opens := (r.HubHoop(p) + r.HubPoisson*p) / r.HubModulus
		yields := (atJoint + r.InsertPoisson*p) / r.InsertModulus
		require.InEpsilon(t, effective, (opens-yields)*r.Diameter*1000, 1e-12)
	})
}

// TestPressureScales holds that pressure is proportional to the interference
// and does not depend on the size of the drawing.
func TestPressureScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyRings(t)
		i := rapid.Float64Range(1e-3, 500).Draw(t, "interference")
		factor := rapid.Float64Range(0.01, 100).Draw(t, "factor")
		require.InEpsilon(t, factor*r.Pressure(i), r.Pressure(factor*i), 1e-13)
		large := r
		large.Diameter, large.HubOutside, large.InsertBore = factor*r.Diameter, factor*r.HubOutside, factor*r.InsertBore
		require.InEpsilon(t, r.Pressure(i), large.Pressure(factor*i), 1e-12)
		require.Zero(t, r.Pressure(0))
		require.Zero(t, r.Pressure(-i))
	})
}

// TestSolidSteel holds the case of one material by its short form, derived by
// hand from the general one: p = i·E/(2d)·(1 − Q²).
func TestSolidSteel(t *testing.T) {
	r := fit.Rings{Diameter: 20, HubOutside: 40, HubModulus: 210e3, HubPoisson: 0.3, InsertModulus: 210e3, InsertPoisson: 0.3}
	assert.InEpsilon(t, 0.03*210e3/(2*20)*(1-0.25), r.Pressure(30), 1e-14)
}

// TestHubCarriesThePressure holds the balance of half a hub: the hoop stress
// over its wall carries p·d. Lamé's stress A + B/r² is fixed by its two ends.
func TestHubCarriesThePressure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyRings(t)
		p := rapid.Float64Range(0.1, 500).Draw(t, "pressure")
		ri, ro := r.Diameter/2, r.HubOutside/2
		b := (r.HubHoop(p) - r.HubHoopOutside(p)) / (1/(ri*ri) - 1/(ro*ro))
		a := r.HubHoop(p) - b/(ri*ri)
		wall := a*(ro-ri) + b*(1/ri-1/ro)
		require.InEpsilon(t, p*ri, wall, 1e-9)
	})
}

// TestMises holds the equivalent stresses by their closed forms, derived by
// hand: hub p·√(3 + Q⁴)/(1 − Q²), hollow part 2p/(1 − Q²), solid part p.
func TestMises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyRings(t)
		p := rapid.Float64Range(0.1, 500).Draw(t, "pressure")
		q := r.Diameter / r.HubOutside
		require.InEpsilon(t, p*math.Sqrt(3+math.Pow(q, 4))/(1-q*q), r.HubMises(p), 1e-12)
		want := p
		if r.InsertBore > 0 {
			want = -r.InsertHoop(p)
		}
		require.InEpsilon(t, want, r.InsertMises(p), 1e-12)
	})
}

// TestLimits holds the elastic limits against the equivalent stresses that the
// form of Roloff/Matek (eq. 12.7, as quoted in public texts) compares with
// 2/√3 of the yield stress: 2p/(1 − Q_A²) in the hub, 2p/(1 − Q_I²) in a hollow
// inner part, p in a solid one.
func TestLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyRings(t)
		yield := rapid.Float64Range(50, 2000).Draw(t, "yield")
		hub := r.HubLimit(yield)
		require.InEpsilon(t, 2/math.Sqrt(3)*yield, hub+r.HubHoop(hub), 1e-12, "2p/(1-Q²) is hoop stress plus pressure")
		insert := r.InsertLimit(yield)
		require.InEpsilon(t, 2/math.Sqrt(3)*yield, -r.InsertHoop(insert), 1e-12)
	})
}

// TestPartsMove holds what the fit does to the parts, by hand: d = 20, D = 40,
// b = 10, p = 63 MPa, E = 210,000 MPa: hub 2·63·400/1200 = 42 MPa over 40 mm
// is 8 µm, bore 2·63·400/300 = 168 MPa over 10 mm is 8 µm.
func TestPartsMove(t *testing.T) {
	r := fit.Rings{Diameter: 20, HubOutside: 40, InsertBore: 10, HubModulus: 210e3, InsertModulus: 210e3}
	assert.InEpsilon(t, 8.0, r.HubGrowth(63), 1e-14)
	assert.InEpsilon(t, 8.0, r.BoreClosure(63), 1e-14)
	r.InsertBore = 0
	assert.Zero(t, r.BoreClosure(63))
}
