package presstest_test

import (
	"testing"

	"ramplan/press/fit"
	"ramplan/press/presstest"
)

var (
	ugural = presstest.Source{
		ID: "ugural-fenster", Status: presstest.Published,
		Cite: "A. C. Ugural, S. K. Fenster, Advanced Strength and Applied Elasticity, Examples 4.7 (p. 115) and 8.3 (p. 243) (open companion, page not seen)",
	}
	timoshenko = presstest.Source{
		ID: "timoshenko-2", Status: presstest.FromMemory,
		Cite: "S. Timoshenko, Strength of Materials, part II, built-up cylinders (from memory)",
	}
)

// rings reads a worked example: the rings, and the interference in µm.
func rings(row presstest.Row) (fit.Rings, float64) {
	return fit.Rings{
		Diameter: row.Number("d"), HubOutside: row.Number("Do"), InsertBore: row.Number("di"),
		HubModulus: row.Number("E_hub"), HubPoisson: row.Number("nu_hub"),
		InsertModulus: row.Number("E_shaft"), InsertPoisson: row.Number("nu_shaft"),
	}, row.Number("delta_diametral") * 1000
}

// publishedJoints compares worked press and shrink fits.
func publishedJoints(t *testing.T, ledger *presstest.Ledger) {
	examples, answers := presstest.Read(t, "pressfit_examples"), presstest.Read(t, "pressfit_answers")
	printed := func(id, quantity string) presstest.Row {
		return presstest.Find(t, answers, "id", id, "quantity", quantity)
	}

	// The book goes on from the rounded pressure of 12.3 MPa.
	r, i := rings(presstest.Find(t, examples, "id", "UF8.3"))
	p := printed("UF8.3", "p")
	ledger.Equal(t, "p", r.Pressure(i), presstest.Printed(ugural, p.Text("published")))
	for quantity, got := range map[string]float64{
		"hub_hoop_bore":   r.HubHoop(p.Number("published")),
		"hub_hoop_outer":  r.HubHoopOutside(p.Number("published")),
		"shaft_hoop_bore": r.InsertHoop(p.Number("published")),
		// The sum of hoop and radial stress is the same all through a ring.
		"shaft_hoop_interface": r.InsertHoop(p.Number("published")) + p.Number("published"),
	} {
		ledger.Equal(t, quantity, got, presstest.Printed(ugural, printed("UF8.3", quantity).Text("published")))
	}

	r, i = rings(presstest.Find(t, examples, "id", "BH22.6"))
	reason := "the interference is a difference of bores printed to 1e-6 mm"
	ledger.Equal(t, "22.6 p", r.Pressure(i),
		presstest.Relative(bhandari, printed("BH22.6", "p").Number("published"), 2e-5, reason))
	ledger.Equal(t, "22.6 hub hoop", r.HubHoop(r.Pressure(i)),
		presstest.Relative(bhandari, printed("BH22.6", "hub_hoop_bore").Number("published"), 2e-5, reason))

	r, i = rings(presstest.Find(t, examples, "id", "BH22.8"))
	ledger.Equal(t, "22.8 p", r.Pressure(i),
		presstest.Relative(bhandari, printed("BH22.8", "p").Number("published"), 7e-5, reason))

	// Radii 4, 6 and 8 in, E = 30e6 psi, radial interference 0.005 in:
	// p = 4,050 psi, three digits. Inches and psi are as good as mm and MPa,
	// the formula has no unit of its own; µm are thousandths.
	built := fit.Rings{Diameter: 12, HubOutside: 16, InsertBore: 8,
		HubModulus: 30e6, HubPoisson: 0.3, InsertModulus: 30e6, InsertPoisson: 0.3}
	ledger.Equal(t, "p", built.Pressure(2*0.005*1000), presstest.Within(timoshenko, 4050, 5, "three digits"))

	own, i := rings(presstest.Find(t, examples, "id", "OWN1"))
	row := presstest.Find(t, examples, "id", "OWN1")
	regression := presstest.Source{ID: "own-joint", Cite: "own computation, not published", Status: presstest.Computed}
	pressure := own.Pressure(i)
	push := fit.Push{Diameter: own.Diameter, Engagement: row.Number("L")}
	for quantity, got := range map[string]float64{
		"p": pressure, "hub_hoop_bore": own.HubHoop(pressure), "hub_hoop_outer": own.HubHoopOutside(pressure),
		"shaft_hoop_bore": own.InsertHoop(pressure),
		"axial_force":     push.Force(row.Number("mu"), pressure, row.Number("L")),
	} {
		want := printed("OWN1", quantity).Number("recomputed_lame")
		ledger.Equal(t, quantity, got, presstest.Relative(regression, want, 1e-8, "nine digits"))
	}
}
