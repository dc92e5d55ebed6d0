package press

import (
	"runtime"

	"ramplan/press/simulate"
)

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
