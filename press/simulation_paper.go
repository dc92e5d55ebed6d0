package press

import (
	"context"
	"sync"

	"ramplan/press/simulate"
)

// How the shares on paper are estimated: as the command line does without flags, so that
// somebody else can repeat them, and bounded, since whoever prints waits for them.
const (
	PaperSeed      = 1
	PaperPrecision = 0.1
	PaperDoublings = 13
)

// PaperShares estimates the shares of the plan as they are printed; none are counted. The
// same plan has the same ones on any machine. They are worked out when they are asked for
// first, and kept for the plans that were asked about last: a sheet is laid out anew for
// each of its pages. Nobody may change them.
func (r *Result) PaperShares() *Simulation {
	return onPaper.of(r.PlanDigest(), func() *Simulation {
		return r.Simulate(context.Background(), SimulationOptions{Seed: PaperSeed, Precision: PaperPrecision, Doublings: PaperDoublings, Work: simulate.Work{Gentle: true}})
	})
}

// onPaper keeps the shares of the plans that were printed last.
var onPaper printedShares

type printedShares struct {
	mu   sync.Mutex
	kept []printedShare // the last asked for at the end
}

type printedShare struct {
	digest string
	shares func() *Simulation
}

// mostPrinted is of how many plans.
const mostPrinted = 8

func (c *printedShares) of(digest string, estimate func() *Simulation) *Simulation {
	return c.entry(digest, estimate)()
}

func (c *printedShares) entry(digest string, estimate func() *Simulation) func() *Simulation {
	c.mu.Lock()
	defer c.mu.Unlock()
	one := printedShare{digest, nil}
	for i, k := range c.kept {
		if k.digest == digest {
			one = k
			c.kept = append(c.kept[:i], c.kept[i+1:]...)
			break
		}
	}
	if one.shares == nil {
		one.shares = sync.OnceValue(estimate)
	}
	if c.kept = append(c.kept, one); len(c.kept) > mostPrinted {
		c.kept = c.kept[1:]
	}
	return one.shares
}
