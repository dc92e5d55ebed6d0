package simulate

import (
	"context"
	"flag"
	"os"
	"runtime"
	"strconv"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/model"
	"ramplan/press/study"
)

// busy is the example on which something of everything happens.
func busy() *model.Input {
	in := example()
	in.Ram.ForceTolerance, in.Motion.Clearance = 20, 0
	in.Joint.HoldingRequired, in.Joint.FrictionHigh = 300, 0.17
	in.Parts[0].Minus, in.Parts[0].Plus = 0.1, 0.1
	in.Parts[2].Plus = 0.3
	in.Window.GuardFactor = 0
	return in
}

// The same parts come out whoever works on them, and however many.
func TestSameOnAnyNumberOfCores(t *testing.T) {
	s := station(t, busy())
	const parts = 3*Block + 77
	ctx := context.Background()
	want, complete := s.Count(ctx, parts, 9, Work{Workers: 1})
	require.True(t, complete)
	for truth := range want.Matrix {
		n := int64(0)
		for _, k := range want.Matrix[truth] {
			n += k
		}
		assert.Positive(t, n, "truth %d is met", truth)
	}
	estimate, _ := s.Estimate(ctx, 9, 0.5, Work{Workers: 1}, nil)
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	cores := []int{2}
	if everything() {
		cores = []int{1, 2, 4}
	}
	for _, cores := range cores {
		runtime.GOMAXPROCS(cores)
		fresh := station(t, busy()) // its table not made yet
		for name, w := range map[string]Work{"plain": {}, "seven": {Workers: 7}, "gentle": {Gentle: true}, "slots": {Workers: 3, Slots: NewSlots(1)}} {
			got, complete := fresh.Count(ctx, parts, 9, w)
			assert.True(t, complete)
			assert.Equal(t, want, got, "%d cores, %s", cores, name)
			e, complete := fresh.Estimate(ctx, 9, 0.5, w, nil)
			assert.True(t, complete)
			assert.Equal(t, estimate, e, "%d cores, %s", cores, name)
		}
	}
}

// Another seed gives other parts.
func TestSeedsDiffer(t *testing.T) {
	s := station(t, busy())
	a, _ := s.Count(context.Background(), Block, 1, Work{})
	b, _ := s.Count(context.Background(), Block, 2, Work{})
	assert.NotEqual(t, a.Seated, b.Seated)
	x, _ := s.Estimate(context.Background(), 1, 1, Work{}, nil)
	y, _ := s.Estimate(context.Background(), 2, 1, Work{}, nil)
	assert.NotEqual(t, x.Named, y.Named)
}

// A stopped count holds the first blocks without a gap: what a count of so many parts
// gives.
func TestStoppedCountIsTheBeginning(t *testing.T) {
	s := station(t, busy())
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	var told atomic.Int64
	got, complete := s.Count(ctx, 1e12, 3, Work{Workers: 4, Progress: func(n int64) {
		if told.Add(n) >= 5*Block {
			stop()
		}
	}})
	assert.False(t, complete)
	require.Positive(t, got.Parts)
	require.Zero(t, got.Parts%Block)
	want, _ := s.Count(context.Background(), got.Parts, 3, Work{})
	assert.Equal(t, want, got)
	assert.LessOrEqual(t, got.Parts, told.Load())
}

func TestStoppedEstimateKeepsTheLastAnswer(t *testing.T) {
	s := station(t, busy())
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	var answers []Estimated
	got, complete := s.Estimate(ctx, 3, 1e-9, Work{}, func(e Estimated) {
		if answers = append(answers, e); len(answers) == 2 {
			stop()
		}
	})
	assert.False(t, complete)
	require.Len(t, answers, 2)
	assert.Equal(t, []int{512, 1024}, []int{answers[0].Points, answers[1].Points})
	assert.Equal(t, answers[1], got)
	none, complete := s.Estimate(ctx, 3, 1, Work{}, nil)
	assert.False(t, complete)
	assert.Equal(t, Estimated{}, none)
}

// What is worked on in pieces may panic; whoever asked is told, and nobody waits for ever.
func TestPanicsComeOut(t *testing.T) {
	assert.PanicsWithError(t, "simulate: broken", func() {
		Work{Workers: 3}.each(context.Background(), 9, func() func(int64) {
			return func(piece int64) {
				if piece == 4 {
					panic("broken")
				}
			}
		})
	})
}

// Memory does not grow with the parts: forty blocks take no more than four.
func TestMemoryDoesNotGrow(t *testing.T) {
	s := station(t, example())
	s.rows = nil // quick
	bytes := func(blocks int64) uint64 {
		var before, after runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&before)
		s.Count(context.Background(), blocks*Block, 1, Work{Workers: 1})
		runtime.ReadMemStats(&after)
		return after.TotalAlloc - before.TotalAlloc
	}
	few, many := bytes(4), bytes(40)
	assert.Less(t, many, few+65536) // a tally takes 3.5 KB
}

// A gentle count of one worker gives way: what else runs on the same processor comes to
// its turn again and again, and not only when the count is over.
func TestGentleGivesWay(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
	s := station(t, example())
	var turns, during atomic.Int64
	done := make(chan struct{})
	go func() {
		defer func() { _ = recover() }()
		for {
			select {
			case <-done:
				return
			default:
				turns.Add(1)
				runtime.Gosched()
			}
		}
	}()
	s.Count(context.Background(), 4*Block, 1, Work{Gentle: true, Progress: func(int64) { during.Store(turns.Load()) }})
	close(done)
	assert.Greater(t, during.Load(), int64(4*Block/lot/2), "about a turn a lot")
}

// everything tells whether all is asked for, whatever time it takes.
func everything() bool { return os.Getenv("RAMPLAN_PLANS") == "all" }

// checks has a random test draw fewer cases than usual, unless their number is given or
// all is asked for.
func checks(t *testing.T, n int) {
	f := flag.Lookup("rapid.checks")
	if everything() || f.Value.String() != f.DefValue || os.Getenv("RAPID_CHECKS") != "" {
		return
	}
	before := f.Value.String()
	require.NoError(t, flag.Set("rapid.checks", strconv.Itoa(n)))
	t.Cleanup(func() { _ = flag.Set("rapid.checks", before) })
}

// repetitions is how often coverage is looked at: each time a thousand where all is asked
// for.
func repetitions() int {
	if everything() {
		return 1000
	}
	return 75
}

// The limits of both ways hold a share that is known in about 95 of 100 repetitions: at
// least as often, but for chance of once in 1e5 (by the normal approximation).
func TestCoverage(t *testing.T) {
	s := closing()
	accepted, unseated := 0.25-1.0/9, 0.25 // by hand, as in TestMeasuredForceThatStalls
	n := repetitions()
	held := map[string]int{}
	const few = 2000
	for seed := range uint64(n) {
		c, _ := s.Count(context.Background(), few, seed, Work{})
		e, _ := s.Estimate(context.Background(), seed, 1, Work{}, nil)
		for name, one := range map[string]struct {
			share Share
			want  float64
		}{"accepted": {FalseAccept, accepted}, "unseated": {UnseatedShare, unseated}} {
			if low, high := study.ShareLimits(c.Count(one.share), few); low <= one.want && one.want <= high {
				held["counted "+name]++
			}
			if f := e.Named[one.share]; f.Low-1e-12 <= one.want && one.want <= f.High+1e-12 {
				held["estimated "+name]++
			}
		}
	}
	least := 0.95 - 4.3*0.218/sqrt(n)
	for name, k := range held {
		t.Logf("%s: %d of %d", name, k, n)
		assert.GreaterOrEqual(t, float64(k)/float64(n), least, name)
	}
	assert.Len(t, held, 4)
	assert.Less(t, float64(held["estimated accepted"])/float64(n), 0.95+4.3*0.218/sqrt(n)+0.01, "limits are no wider than they need be")
}
