package press

import (
	"context"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func printedPlan(t *testing.T, file string) *Plan {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	p, faults := Decode(data)
	require.Empty(t, faults)
	return p
}

// An estimate ends at its bound, whatever precision was asked for, and the bad lot's with
// it; without one it goes on.
func TestEstimatesAreBounded(t *testing.T) {
	r := Evaluate(printedPlan(t, "../testdata/plans/derived/24.json"))
	o := SimulationOptions{Seed: 1, Precision: 0.001, Doublings: 10}
	s := r.Simulate(context.Background(), o)
	assert.True(t, s.Complete)
	assert.Equal(t, 1<<10, s.Shares.Points)
	assert.False(t, s.Shares.Met)
	o.Doublings = 11
	assert.Equal(t, 1<<11, r.Simulate(context.Background(), o).Shares.Points)
	o.Doublings = 1
	assert.Equal(t, 1<<9, r.Simulate(context.Background(), o).Shares.Points, "an estimate begins with so many")
}

// What is printed of a plan is estimated once, and again when others were asked about in
// between.
func TestPrintedSharesAreKept(t *testing.T) {
	var c printedShares
	times := map[string]int{}
	ask := func(digest string) *Simulation {
		return c.of(digest, func() *Simulation { times[digest]++; return &Simulation{PlanDigest: digest} })
	}
	for range 3 {
		assert.Equal(t, "a", ask("a").PlanDigest)
	}
	for i := range mostPrinted - 1 {
		ask(fmt.Sprint(i))
	}
	ask("a")
	assert.Equal(t, 1, times["a"])
	ask("b")
	ask("a")
	assert.Equal(t, 1, times["a"], "asked about last but one")
	ask("0")
	assert.Equal(t, 2, times["0"], "fell out")
}
