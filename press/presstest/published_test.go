package presstest_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press/presstest"
)

// suites are the published comparisons of the project, one function a subject.
// A new subject is a new file and a line here.
var suites = []struct {
	name    string
	compare func(*testing.T, *presstest.Ledger)
}{
	{"iso 286 tables", publishedTables},
	{"iso 286 examples", publishedFits},
	{"joint", publishedJoints},
	{"curve", publishedCurves},
	{"impact", publishedImpacts},
	{"motion", publishedMoves},
	{"risk", publishedRisks},
	{"simulation", publishedSimulations},
	{"study", publishedStudies},
}

// What the project promises: so many published values, of so many sources.
const (
	promisedValues  = 150
	promisedSources = 8
)

// TestPublished compares the program with everything published that it can be
// compared with, and prints what was compared: go test -v ./press/presstest.
func TestPublished(t *testing.T) {
	var ledger presstest.Ledger
	for _, s := range suites {
		t.Run(s.name, func(t *testing.T) {
			before, _ := ledger.Count(presstest.Published)
			remembered, _ := ledger.Count(presstest.FromMemory)
			s.compare(t, &ledger)
			after, _ := ledger.Count(presstest.Published)
			recalled, _ := ledger.Count(presstest.FromMemory)
			assert.Greater(t, after+recalled, before+remembered, "a subject without a published value")
		})
	}
	t.Logf("compared and in agreement:\n%s", ledger.String())
	values, sources := ledger.Count(presstest.Published)
	assert.GreaterOrEqual(t, values, promisedValues, "published values")
	assert.GreaterOrEqual(t, sources, promisedSources, "published sources")
}
