package draw

import (
	"io"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press/draw/drawtest"
)

// BenchmarkRun draws the run of the worked example, and one of a hundred steps.
func BenchmarkRun(b *testing.B) {
	hundred := drawtest.Changes{}
	for n := 9; n < 100; n++ {
		step := "sequence.steps[" + strconv.Itoa(n) + "]."
		hundred[step+"kind"], hundred[step+"to"], hundred[step+"hand_over"] = "move", strconv.Itoa(n%2), "true"
	}
	for _, c := range []struct {
		name    string
		changes drawtest.Changes
	}{{"worked", nil}, {"hundred", hundred}} {
		p, r := drawtest.OfTheRun(b, c.changes)
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				require.NoError(b, NewRun(p, r, Options{Compact: true}).SVG(io.Discard))
			}
		})
	}
}
