package proving

import (
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Between the days that are given the state is the same, and the days follow one another
// without a gap: every day of some years is met, with studies and events in any order.
func TestHolds(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 7)) // seeded; any order holds
	day := func(n int) string {
		return time.Date(2026, 11, 1, 0, 0, 0, 0, time.UTC).AddDate(0, 0, n).Format(time.DateOnly)
	}
	for range 5 {
		p := &proof{}
		for range 9 {
			p.add([]string{LoadCell, Stiffness, Master, Samples, Restart, Trial}[r.IntN(6)], day(r.IntN(300)), []Answer{Pass, Pass, Pass, Open, Fail}[r.IntN(5)])
		}
		for range 2 {
			p.happened(Events[r.IntN(len(Events))], day(r.IntN(400)))
		}
		turns, on := 0, day(-1)
		for on < day(1000) {
			first, last := Holds(p.studies, on)
			require.LessOrEqual(t, first, on)
			require.GreaterOrEqual(t, last, on)
			begin, end := theDay(max(first, day(-1))), theDay(min(last, day(1000)))
			want := p.on(t, on)
			for _, other := range []time.Time{begin, end, begin.AddDate(0, 0, r.IntN(1+int(end.Sub(begin).Hours()/24)))} {
				assert.Equal(t, want, p.on(t, other.Format(time.DateOnly)), "%s and %s", on, other)
			}
			on = end.AddDate(0, 0, 1).Format(time.DateOnly)
			turns++
		}
		assert.Greater(t, turns, 9, "each study begins and ends to count")
	}
	first, last := Holds(nil, "2026-11-28")
	assert.Less(t, first, "1900")
	assert.Greater(t, last, "2900")
}
