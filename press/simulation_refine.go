package press

import (
	"context"
	"runtime"

	"ramplan/press/simulate"
)

// Refine estimates the shares of the plan and tells of each answer on the way: the first
// from few points, each next from twice as many, the last as precise as o asks or from the
// most points that there are. Where ctx ends before, it is told no more. No parts are
// counted.
func (r *Result) Refine(ctx context.Context, o SimulationOptions, refined func(*Simulation)) {
	station, can := simulate.New(&r.Plan.Input, &r.Outcome)
	if !can || !station.Known() {
		return
	}
	station.Estimate(ctx, o.Seed, o.Precision, o.Work, func(e simulate.Estimated) {
		refined(&Simulation{
			Format: SimulationFormat, PlanDigest: r.PlanDigest(), File: r.File, Seed: o.Seed, Precision: o.Precision,
			Verdicts: pairs(r.Verdict.Table), Closed: r.closedForm(), Shares: estimated(&e), Says: []Saying{},
		})
	})
}

// Beside is what simulations share that run beside other work: how many goroutines at a
// time, of all of them together, and that they give way.
type Beside struct{ slots *simulate.Slots }

// NewBeside leaves one of the processors, where there are several, to the other work.
func NewBeside() *Beside { return &Beside{simulate.NewSlots(besideWorkers())} }

func besideWorkers() int { return max(1, runtime.GOMAXPROCS(0)-1) }

// Work is how one of the simulations is done; progress is told of parts that are done, from
// any goroutine; nil: nobody asks.
func (b *Beside) Work(progress func(parts int64)) simulate.Work {
	return simulate.Work{Workers: besideWorkers(), Slots: b.slots, Gentle: true, Progress: progress}
}
