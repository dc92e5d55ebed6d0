package presstest_test

import (
	"math"
	"testing"

	"ramplan/press/motion"
	"ramplan/press/presstest"
)

var (
	wentzell = presstest.Source{
		ID: "wentzell", Status: presstest.Published,
		Cite: "T. H. Wentzell, Machine Design, Example 7.1, p. 137 (open companion, page not seen)",
	}
	hibbeler14 = presstest.Source{
		ID: "hibbeler-14", Status: presstest.Published,
		Cite: "R. C. Hibbeler, Mechanics of Materials, Examples 14.8 (p. 743) and 14.10 (open companion, page not seen)",
	}
	spong = presstest.Source{
		ID: "spong-lspb", Status: presstest.FromMemory,
		Cite: "M. W. Spong, S. Hutchinson, M. Vidyasagar, Robot Modeling and Control, LSPB from 0 to 40 at 60 in 1 s (from memory)",
	}
	hibbeler12 = presstest.Source{
		ID: "hibbeler-dynamics-12", Status: presstest.FromMemory,
		Cite: "R. C. Hibbeler, Engineering Mechanics: Dynamics, chapter 12, problem of the train (from memory)",
	}
)

const (
	gravity    = 9.80665                    // m/s², standard acceleration of free fall
	inch       = 25.4                       // mm, by definition
	poundForce = 4.4482216152605            // N, by definition
	psi        = poundForce / (inch * inch) // MPa
	perMetre   = 1000                       // mm in 1 m
)

// fallen is the peak force, N, of a weight, N, that falls onto a spring, N/mm,
// from a height, mm: the bound at the seat with the weight as force, no demand.
func fallen(weight, height, stiffness float64) float64 {
	speed := math.Sqrt(2 * gravity * height / perMetre) // m/s
	return motion.Seat{Force: weight, Speed: speed * perMetre, Stiffness: stiffness, Mass: weight / gravity}.Bound()
}

// publishedImpacts compares worked examples of the energy method.
func publishedImpacts(t *testing.T, ledger *presstest.Ledger) {
	rows := presstest.Read(t, "impact_examples")
	printed := func(id, quantity string) string {
		return presstest.Find(t, rows, "id", id, "quantity", quantity).Text("published")
	}

	// 500 lb falls 1 in onto a bar of 2 in diameter, 10 in long, E = 30e6 psi.
	area := math.Pi / 4 * 2 * 2 * inch * inch // mm²
	bar := 30e6 * psi * area / (10 * inch)    // N/mm
	ledger.Equal(t, "stress, psi", fallen(500*poundForce, inch, bar)/area/psi,
		presstest.Printed(wentzell, printed("Wentzell7.1", "stress psi")))

	// A weight of 150 kip is let go on a pipe of 3 and 2.5 in radius, 12 in
	// long, E = 10e3 ksi: the suddenly applied load.
	area = math.Pi * (3*3 - 2.5*2.5) * inch * inch
	pipe := 10e6 * psi * area / (12 * inch)
	ledger.Equal(t, "14.8 suddenly applied deflection, in", fallen(150e3*poundForce, 0, pipe)/pipe/inch,
		presstest.Printed(hibbeler14, printed("Hibbeler14.8", "suddenly applied deflection in (factor 2)")))

	// 80 Mg at 0.2 m/s hit a post of 200 by 200 mm at 1.5 m, E = 200 GPa; the
	// top of the cantilever is 1 m above and moves with its slope.
	const lever, top, modulus = 1500.0, 1000.0, 200e3
	second := math.Pow(200, 4) / 12 // mm⁴
	force := motion.ImpactForce(200, 3*modulus*second/math.Pow(lever, 3), 80e3)
	deflection := force * math.Pow(lever, 3) / (3 * modulus * second)
	slope := force * lever * lever / (2 * modulus * second)
	ledger.Equal(t, "14.10 deflection of the top, mm", deflection+slope*top,
		presstest.Printed(hibbeler14, printed("Hibbeler14.10", "top deflection mm")))

	// 180 N fall 0.1 m on mid-span of a beam of 25 by 75 mm, 1.16 m long,
	// E = 200 GPa.
	const span = 1160.0
	second = 25 * math.Pow(75, 3) / 12
	beam := 48 * modulus * second / math.Pow(span, 3)
	peak := fallen(180, 100, beam)
	ledger.Equal(t, "4.7 impact factor", peak/180, presstest.Printed(ugural, printed("UF4.7", "impact factor")))
	ledger.Equal(t, "4.7 stress, MPa", peak*span/4*(75.0/2)/second, presstest.Printed(ugural, printed("UF4.7", "max stress MPa")))
}

// publishedMoves compares worked moves, and our own as regression values.
func publishedMoves(t *testing.T, ledger *presstest.Ledger) {
	rows := presstest.Read(t, "motion_examples")
	move := func(row presstest.Row) motion.Move {
		return motion.Profile{
			Speed: row.Number("vmax") * perMetre, Accel: row.Number("accel") * perMetre, Decel: row.Number("decel") * perMetre,
		}.Move(row.Number("distance") * perMetre)
	}

	m := move(presstest.Find(t, rows, "id", "LSPB"))
	ledger.Equal(t, "blend time, s", m.TAccel, presstest.Printed(spong, "0.333333"))
	ledger.Equal(t, "total, s", m.Time, presstest.Exact(spong, 1))

	m = move(presstest.Find(t, rows, "id", "HIB12"))
	ledger.Equal(t, "speeding up, s", m.TAccel, presstest.Exact(hibbeler12, 60))
	ledger.Equal(t, "cruising, s", m.TCruise, presstest.Exact(hibbeler12, 900))
	ledger.Equal(t, "slowing down, s", m.TDecel, presstest.Exact(hibbeler12, 30))

	regression := presstest.Source{ID: "own-moves", Cite: "own computation of moves, not published", Status: presstest.Computed}
	for _, id := range []string{"T1", "T2", "T3", "T4"} {
		row := presstest.Find(t, rows, "id", id)
		m := move(row)
		for column, got := range map[string]float64{
			"t_total": m.Time, "t_accel": m.TAccel, "t_cruise": m.TCruise, "t_decel": m.TDecel, "v_peak": m.Peak / perMetre,
		} {
			ledger.Equal(t, id+" "+column, got, presstest.Within(regression, row.Number(column), 1e-9, "nine digits"))
		}
	}
}
