package presstest_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/presstest"
)

// recorder stands in for a test and keeps its faults.
type recorder struct {
	testing.TB
	faults []string
}

func (r *recorder) Helper() {}

func (r *recorder) Errorf(format string, args ...any) {
	r.faults = append(r.faults, fmt.Sprintf(format, args...))
}

// source is a made-up source for tests of the helpers themselves.
var source = presstest.Source{ID: "made-up", Cite: "made up for this test", Status: presstest.Computed}

// TestPrintedTolerance holds the reading of printed digits: half a unit of the
// last one. Source: rounding, by definition.
func TestPrintedTolerance(t *testing.T) {
	for _, c := range []struct {
		digits           string
		value, tolerance float64
	}{
		{"12.3", 12.3, 0.05},
		{"0.0208", 0.0208, 0.00005},
		{"-56.23", -56.23, 0.005},
		{"60", 60, 0.5},
		{"2.50e3", 2500, 5},
		{"1E-3", 0.001, 0.0005},
	} {
		w := presstest.Printed(source, c.digits)
		assert.Equal(t, c.value, w.Value, c.digits)
		assert.InEpsilon(t, c.tolerance, w.Tolerance, 1e-6, c.digits)
	}
	assert.Panics(t, func() { presstest.Printed(source, "12,3") })
}

// TestEqualRefuses holds what the comparison must never let pass.
func TestEqualRefuses(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, c := range []struct {
		name string
		got  float64
		want presstest.Want
	}{
		{"differs", 12.36, presstest.Printed(source, "12.3")},
		{"result not a number", nan, presstest.Printed(source, "12.3")},
		{"both not a number", nan, presstest.Within(source, nan, 1, "test")},
		{"expected not a number", 1, presstest.Within(source, nan, 1, "test")},
		{"both infinite", inf, presstest.Within(source, inf, 1, "test")},
		{"tolerance infinite", 1, presstest.Within(source, 1, inf, "test")},
		{"tolerance not a number", 1, presstest.Within(source, 1, nan, "test")},
		{"tolerance negative", 1, presstest.Within(source, 1, -1, "test")},
		{"no source", 1, presstest.Exact(presstest.Source{}, 1)},
		{"no status", 1, presstest.Exact(presstest.Source{ID: "x", Cite: "x"}, 1)},
		{"relative to zero", 1e-300, presstest.Relative(source, 0, 0.5, "test")},
	} {
		r := new(recorder)
		assert.False(t, presstest.Equal(r, "value", c.got, c.want), c.name)
		assert.Len(t, r.faults, 1, c.name)
	}
}

// TestEqualAccepts holds the other side, with the edge of the print included.
func TestEqualAccepts(t *testing.T) {
	r := new(recorder)
	assert.True(t, presstest.Equal(r, "edge", 12.35, presstest.Printed(source, "12.3")))
	assert.True(t, presstest.Equal(r, "exact", -21, presstest.Exact(source, -21)))
	assert.True(t, presstest.Equal(r, "relative", 100.9, presstest.Relative(source, 100, 0.01, "test")))
	assert.Empty(t, r.faults)
}

// TestLedger holds that only values that agree are counted, each once.
func TestLedger(t *testing.T) {
	var l presstest.Ledger
	read := presstest.Source{ID: "read", Cite: "a book", Status: presstest.Published}
	r := new(recorder)
	l.Equal(r, "one", 1, presstest.Exact(read, 1))
	l.Equal(r, "two", 2, presstest.Exact(read, 2))
	l.Equal(r, "ours", 2, presstest.Exact(source, 2))
	require.Empty(t, r.faults)

	l.Equal(r, "three", 3.1, presstest.Exact(read, 3))
	assert.Len(t, r.faults, 1, "a value that differs is a fault")
	l.Equal(r, "two", 2, presstest.Exact(read, 2))
	assert.Len(t, r.faults, 2, "a value compared again is a fault")

	values, sources := l.Count(presstest.Published)
	assert.Equal(t, [2]int{2, 1}, [2]int{values, sources})
	assert.Equal(t, "published: 2 values from 1 sources\n      2  a book\n"+
		"computed: 1 values from 1 sources\n      1  made up for this test\n", l.String())
}
