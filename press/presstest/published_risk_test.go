package presstest_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"ramplan/press/presstest"
	"ramplan/press/risk"
	"ramplan/press/stack"
)

var (
	jcgm106Examples = presstest.Source{
		ID: "jcgm106-clause-7", Status: presstest.FromMemory,
		Cite: "JCGM 106:2012, examples of clause 7, printed digits (from memory)",
	}
	jcgm106Case = presstest.Source{
		ID: "jcgm106-scaled", Status: presstest.Published,
		Cite: "a case of JCGM 106:2012 scaled to N(9.5; 0.3), u = 0.1, limits 9 to 10, as printed in a public manual",
	}
	rp19 = presstest.Source{
		ID: "rp-19", Status: presstest.Published,
		Cite: "NCSLI RP-19 (draft), tables as quoted in a public test file",
	}
)

// gauss is a quantity with a normal distribution.
func gauss(mean, sigma float64) *stack.Sum {
	return stack.NewSum([]stack.Term{{Row: stack.Row{Mean: mean, Half: sigma, Shape: stack.Normal, Sigmas: 1}, Times: 1}})
}

// publishedRisks compares conformance probabilities and the risks of all parts.
func publishedRisks(t *testing.T, ledger *presstest.Ledger) {
	rows := presstest.Read(t, "jcgm106_examples")
	printed := func(id, quantity string) string {
		return presstest.Find(t, rows, "id", id, "quantity", quantity).Text("published")
	}

	// Conformance probability of one measured item: only the limits given count.
	for _, c := range []struct {
		id        string
		y, u      float64
		low, high float64
	}{
		{"J1", -5.47, 0.05, math.Inf(-1), -5.40},
		{"J2", 509.7, 8.6, 490, math.Inf(1)},
		{"J3", 13.6, 1.8, 12.5, 16.3},
	} {
		got := risk.Population{Height: gauss(c.y, c.u), Low: c.low, High: c.high}.Conforming()
		ledger.Equal(t, c.id+" conformance probability", got, presstest.Printed(jcgm106Examples, printed(c.id, "conformance probability")))
	}
	one := risk.Population{Height: gauss(9.8, 0.1), Low: 9, High: 10}
	ledger.Equal(t, "J6 probability of non-conformance", 1-one.Conforming(),
		presstest.Within(jcgm106Case, presstest.Find(t, rows, "id", "J6").Number("published"), 1e-10, "printed with more digits than the integrals promise"))

	// All parts, acceptance at the limits. A part of height c reads base − c.
	consumer, producer := atLimits(9.5, 0.3, 0.1, 9, 10)
	for name, got := range map[string]float64{"consumer risk R_C": consumer, "producer risk R_P": producer} {
		for _, r := range rows {
			if r.Text("id") == "J4b" && r.Text("quantity") == name && !r.Empty("published") {
				ledger.Equal(t, "J4b "+name, got, presstest.Within(jcgm106Case, r.Number("published"), 1e-10, "printed with more digits than the integrals promise"))
			}
		}
	}

	var share float64
	for _, r := range rows {
		if r.Text("id") != "J8" || r.Empty("published") {
			continue
		}
		if inputs := r.Text("inputs"); inputs != "" {
			if _, err := fmt.Sscanf(strings.Split(inputs, ";")[0], "in-tolerance %f", &share); err != nil {
				t.Fatal(err)
			}
		}
		sigma := 1 / distuv.UnitNormal.Quantile((1+share)/2)
		consumer, producer := atLimits(0, sigma, sigma/4, -1, 1)
		got := 100 * consumer
		if strings.HasPrefix(r.Text("quantity"), "conditional") {
			got /= consumer + share - producer
		}
		ledger.Equal(t, fmt.Sprintf("RP-19 %v %s", share, r.Text("quantity")), got,
			presstest.Within(rp19, r.Number("published"), 2e-6, "the tables were integrated to about 2e-6"))
	}
}

// atLimits gives the risks of all parts when acceptance is the requirement.
func atLimits(mean, sigma, u, low, high float64) (consumer, producer float64) {
	all := risk.Population{Height: gauss(mean, sigma), Low: low, High: high}
	return all.Global(risk.Window{Low: -high, High: -low, Error: stack.NewError(u, nil)})
}
