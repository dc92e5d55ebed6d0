package presstest_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press/presstest"
	"ramplan/press/study"
)

var (
	strdLines = presstest.Source{
		ID: "nist-strd-regression", Status: presstest.Published,
		Cite: "NIST Statistical Reference Datasets, linear regression: Norris, Pontius, NoInt1, certified values (as carried by public tests, page not seen)",
	}
	strdGroups = presstest.Source{
		ID: "nist-strd-anova", Status: presstest.FromMemory,
		Cite: "NIST Statistical Reference Datasets, analysis of variance: SiRstv, AtmWtAg (data and certified values from memory; they agree to all digits in exact fractions)",
	}
	strdValues = presstest.Source{
		ID: "nist-strd-univariate", Status: presstest.FromMemory,
		Cite: "NIST Statistical Reference Datasets, univariate summary statistics: Michelso (data and certified values from memory; they agree in exact fractions)",
	}
	gaugePrinted = presstest.Source{
		ID: "gauge-type-1", Status: presstest.Published,
		Cite: "a gauge study of type 1 and of a measuring system as printed in a public example (s recovered from the printed Cg)",
	}
	gaugeComputed = presstest.Source{
		ID: "gauge-type-1-computed", Status: presstest.Computed,
		Cite: "25 readings of a master, computed with SciPy 1.10",
	}
	handbookCapability = presstest.Source{
		ID: "nist-handbook-6.1.6", Status: presstest.Published,
		Cite: "NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6, as quoted by two secondary texts",
	}
	publicCapability = presstest.Source{
		ID: "capability-public-test", Status: presstest.Published,
		Cite: "Cpk of N(10; 0.4) in 9 to 11, as printed in a public test file",
	}
)

const twelve = "certified to 15 digits, of which 12 are asked"

// publishedStudies compares the statistics of studies.
func publishedStudies(t *testing.T, ledger *presstest.Ledger) {
	publishedLines(t, ledger)
	publishedGroups(t, ledger)
	publishedGauges(t, ledger)
	publishedCapability(t, ledger)
}

// publishedLines fits the lines of NIST StRD.
func publishedLines(t *testing.T, ledger *presstest.Ledger) {
	data, certified := presstest.Read(t, "nist_strd_data"), presstest.Read(t, "nist_strd_certified")
	for name, powers := range map[string][]int{"Norris": {0, 1}, "Pontius": {0, 1, 2}, "NoInt1": {1}} {
		columns, y := make([][]float64, len(powers)), []float64(nil)
		for _, r := range data {
			if r.Text("dataset") != name {
				continue
			}
			y = append(y, r.Number("y"))
			for j, power := range powers {
				v := 1.0
				for range power {
					v *= r.Number("x")
				}
				columns[j] = append(columns[j], v)
			}
		}
		fit := study.LeastSquares(columns, y, nil)
		require.NotNil(t, fit, name)
		got := map[string]float64{
			"residual_sd": fit.ResidualSD, "residual_df": fit.DF, "residual_SS": fit.ResidualSD * fit.ResidualSD * fit.DF,
		}
		for j, power := range powers {
			digit := string(rune('0' + power))
			got["B"+digit], got["sd_B"+digit] = fit.Coef[j], *fit.CoefSD(j)
		}
		for _, r := range certified {
			if value, ours := got[r.Text("quantity")]; ours && r.Text("dataset") == name {
				ledger.Equal(t, name+" "+r.Text("quantity"), value, presstest.Relative(strdLines, r.Number("certified"), 1e-12, twelve))
			}
		}
	}
}

// publishedGroups analyses the groups of NIST StRD, and the speeds of light of 1879.
func publishedGroups(t *testing.T, ledger *presstest.Ledger) {
	groups := map[string][][]float64{}
	for _, r := range presstest.Read(t, "nist_strd_groups") {
		name, g := r.Text("dataset"), int(r.Number("group"))
		for len(groups[name]) < g {
			groups[name] = append(groups[name], nil)
		}
		groups[name][g-1] = append(groups[name][g-1], r.Number("y"))
	}
	for name, want := range map[string]struct {
		f, between, within, sd float64
		digits                 float64 // what eight leading digits that never change leave of sixteen
	}{
		"SiRstv":  {1.18046237440255, 1.27865654e-02, 1.08318280e-02, 1.04076068334656e-01, 1e-12},
		"AtmWtAg": {15.9467335677930, 3.63834187500000e-09, 2.28155932971014e-10, 1.51048314446410e-05, 1e-8},
	} {
		a := study.AnalyseGroups(groups[name])
		require.NotNil(t, a.F, name)
		for what, pair := range map[string][2]float64{
			"F": {*a.F, want.f}, "mean square between": {a.Between, want.between}, "mean square within": {a.Within, want.within},
			"residual sd": {*a.SDWithin, want.sd},
		} {
			ledger.Equal(t, name+" "+what, pair[0], presstest.Relative(strdGroups, pair[1], want.digits, "certified to 15 digits, as many asked as binary numbers leave"))
		}
	}
	var speeds []float64
	for _, r := range presstest.Read(t, "nist_strd_values") {
		speeds = append(speeds, r.Number("y"))
	}
	ledger.Equal(t, "Michelso mean", study.Mean(speeds), presstest.Relative(strdValues, 299.852400000000, 1e-15, "certified to 15 digits"))
	ledger.Equal(t, "Michelso sd", *study.SD(speeds), presstest.Relative(strdValues, 0.0790105478190518, 1e-12, twelve))
}

// publishedGauges compares gauge studies of type 1.
func publishedGauges(t *testing.T, ledger *presstest.Ledger) {
	printed := presstest.Read(t, "gauge_type1_published")
	find := func(quantity string) presstest.Row { return presstest.Find(t, printed, "quantity", quantity) }
	tolerance, bias := find("T").Number("published"), find("bias").Number("published")
	s := find("s").Number("recomputed")
	cg, cgk := study.GaugeRules[0].Indices(tolerance, s, bias)
	ledger.Equal(t, "Cg", *cg, presstest.Printed(gaugePrinted, find("Cg = 0.2T/(4s)").Text("published")))
	ledger.Equal(t, "Cgk", *cgk, presstest.Printed(gaugePrinted, find("Cgk = (0.1T-|bias|)/(2s)").Text("published")))
	m := study.MeasuringSystem{Calibration: 0.0002, Resolution: 0.001, SD: s, Bias: bias}
	q, c := m.Performance(tolerance)
	ledger.Equal(t, "u_MS", m.Uncertainty(), presstest.Printed(gaugePrinted, find("u_MS = sqrt(u_CAL^2 + max(u_RE,u_EVR)^2 + u_BI^2)").Text("published")))
	ledger.Equal(t, "Q_MS", *q/100, presstest.Printed(gaugePrinted, find("Q_MS = 2 U_MS/T, U = 2u").Text("published")))
	ledger.Equal(t, "C_MS", *c, presstest.Printed(gaugeComputed, find("C_MS = 0.3T/(6 u_MS)").Text("recomputed")))

	var x []float64
	for _, r := range presstest.Read(t, "gauge_type1_data") {
		x = append(x, r.Number("x"))
	}
	rows := presstest.Read(t, "gauge_type1")
	computed := func(variant, quantity string) presstest.Want {
		return presstest.Printed(gaugeComputed, presstest.Find(t, rows, "variant", variant, "quantity", quantity).Text("value"))
	}
	mean, sd := study.Mean(x), *study.SD(x)
	ledger.Equal(t, "mean", mean, computed("data", "mean"))
	ledger.Equal(t, "s", sd, computed("data", "s (n-1)"))
	off := mean - presstest.Find(t, rows, "variant", "data", "quantity", "reference").Number("value")
	for _, rule := range study.GaugeRules {
		for _, r := range rows {
			_, name, _ := strings.Cut(r.Text("variant"), " ")
			if strings.ReplaceAll(name, " ", "") != rule.Name {
				continue
			}
			cg, cgk := rule.Indices(0.2, sd, off)
			got, ours := map[string]float64{"Cg": *cg, "Cgk": *cgk}[r.Text("quantity")]
			if ours {
				ledger.Equal(t, rule.Name+" "+r.Text("quantity"), got, presstest.Printed(gaugeComputed, r.Text("value")))
			}
		}
	}
	at := off * 5 / sd // √25
	ledger.Equal(t, "t of the bias", at, computed("bias test", "t"))
	ledger.Equal(t, "p of the bias", study.TwoSidedP(at, 24), computed("bias test", "p two-sided"))
	ledger.Equal(t, "t quantile", study.TQuantile(0.975, 24), computed("bias test", "t crit 0.975"))
}

// publishedCapability compares indices of a mean and a standard deviation, by a sample that
// has just these.
func publishedCapability(t *testing.T, ledger *presstest.Ledger) {
	rows := presstest.Read(t, "capability_examples")
	sample := func(mean, sd float64) []float64 { return []float64{mean - sd, mean, mean + sd} }
	p := study.ProcessPerformance(sample(16, 2), 8, 20)
	ledger.Equal(t, "Cp", p.Pp, presstest.Printed(handbookCapability, presstest.Find(t, rows, "id", "N1", "quantity", "Cp").Text("published")))
	ledger.Equal(t, "Cpk", p.Ppk, presstest.Printed(handbookCapability, presstest.Find(t, rows, "id", "N1", "quantity", "Cpk").Text("published")))
	p = study.ProcessPerformance(sample(10, 0.4), 9, 11)
	ledger.Equal(t, "Cpk", p.Ppk, presstest.Printed(publicCapability, presstest.Find(t, rows, "id", "S", "quantity", "Cpk").Text("published")))
}
