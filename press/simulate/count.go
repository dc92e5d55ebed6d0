package simulate

import (
	"context"
	"fmt"
	"runtime"
	"sync"
	"sync/atomic"
)

// Block is how many parts have a stream of random numbers of their own.
const Block = 65536

// Work is how an engine may use the machine. None of it changes an answer.
type Work struct {
	Workers int    // goroutines; 0: one a processor that Go may use
	Slots   *Slots // shared with other work; nil: none
	Gentle  bool   // gives way to whoever else has something to do, many times a block

	// Progress is told of parts that are done, from any goroutine; nil: nobody asks.
	Progress func(parts int64)

	// Sofar is given a reader of what a count holds so far, when it begins: of the blocks
	// from the first to the last before one that is not finished. It may be called from any
	// goroutine, also later. nil: nobody asks.
	Sofar func(read func() Tally)
}

// Slots are how many goroutines of all the work that shares them run at a time.
type Slots struct{ free chan struct{} }

// NewSlots makes n of them, at least one.
func NewSlots(n int) *Slots { return &Slots{make(chan struct{}, max(1, n))} }

func (s *Slots) take() {
	if s != nil {
		s.free <- struct{}{}
	}
}

func (s *Slots) give() {
	if s != nil {
		<-s.free
	}
}

func (w Work) workers(most int64) int {
	n := w.Workers
	if n <= 0 {
		n = runtime.GOMAXPROCS(0)
	}
	return int(min(int64(n), most))
}

// between is what happens between two slices of work.
func (w Work) between() {
	if w.Gentle {
		runtime.Gosched()
	}
}

// each does n pieces of work, each of them once, on some goroutines at a time. Where ctx
// ends, no further ones are begun. A piece of work that panics does so here.
func (w Work) each(ctx context.Context, n int64, worker func() func(piece int64)) {
	var next atomic.Int64
	var all sync.WaitGroup
	var once sync.Once
	var broken error
	for range w.workers(n) {
		all.Add(1)
		go func() {
			defer all.Done()
			defer func() {
				if v := recover(); v != nil {
					once.Do(func() { broken = fmt.Errorf("simulate: %v", v) })
				}
			}()
			do := worker()
			for ctx.Err() == nil {
				piece := next.Add(1) - 1
				if piece >= n {
					return
				}
				w.Slots.take()
				func() {
					defer w.Slots.give()
					do(piece)
				}()
			}
		}()
	}
	all.Wait()
	if broken != nil {
		panic(broken)
	}
}

// Count presses parts in and counts what becomes of them: plain sampling.
//
// Arguments: parts, how many, at least 1; seed, which random numbers.
// Result: the counts, and whether all parts are in them. Parts come in blocks of
// [Block], each with a stream of its own, so that the answer is the same on any number of
// processors. Where ctx ends before, it counts the blocks from the first to the last
// before one that was not finished.
// Range: parts up to 10¹²; memory does not grow with them.
// Special cases: where the signals are not known, Matrix says nothing.
// Source: plain Monte Carlo, JCGM 101:2008, clause 7.
func (s *Station) Count(ctx context.Context, parts int64, seed uint64, w Work) (Tally, bool) {
	blocks := (parts + Block - 1) / Block
	run := &inOrder{waiting: map[int64]*Tally{}}
	if w.Sofar != nil {
		w.Sofar(run.read)
	}
	w.each(ctx, blocks, func() func(int64) {
		p := newPress(s)
		return func(b int64) {
			n := min(parts-b*Block, Block)
			t := run.fresh()
			p.block(newStream(seed, uint64(b)), int(n), t, w.between)
			run.done(b, t)
			if w.Progress != nil {
				w.Progress(n)
			}
		}
	})
	return run.sum, run.next == blocks
}

// inOrder adds up blocks from the first on, without a gap.
type inOrder struct {
	mu      sync.Mutex
	next    int64 // the first block that is not in the sum
	sum     Tally
	waiting map[int64]*Tally // those after it
	idle    []*Tally
}

func (r *inOrder) fresh() *Tally {
	r.mu.Lock()
	defer r.mu.Unlock()
	if n := len(r.idle); n > 0 {
		t := r.idle[n-1]
		r.idle = r.idle[:n-1]
		*t = Tally{}
		return t
	}
	return &Tally{}
}

func (r *inOrder) read() Tally {
	r.mu.Lock()
	defer r.mu.Unlock()
	return r.sum
}

func (r *inOrder) done(b int64, t *Tally) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.waiting[b] = t
	for {
		t, there := r.waiting[r.next]
		if !there {
			return
		}
		r.sum.Add(t)
		delete(r.waiting, r.next)
		r.idle = append(r.idle, t)
		r.next++
	}
}
