package simulate

import (
	"context"
	"testing"
)

// What plain sampling costs, against drawing the same random numbers and no more, both in
// the same run: look at the ratio, not at the time.
func BenchmarkCounts(b *testing.B) {
	s := station(b, example())
	p := newPress(s)
	g := newStream(1, 0)
	b.Run("all", func(b *testing.B) {
		var t Tally
		for b.Loop() {
			p.draw(&g, lot)
			p.judge(lot, &t)
		}
		b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/lot, "ns/part")
	})
	b.Run("numbers", func(b *testing.B) {
		for b.Loop() {
			p.draw(&g, lot)
		}
		b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/lot, "ns/part")
	})
}

// What a share of about 1 ppm costs to ±10 %, from a plan's outcome on: tables and all.
// That is the first answer of the bench as well.
func BenchmarkEstimate(b *testing.B) {
	in := example()
	_, out := evaluated(b, in)
	b.ReportAllocs()
	for b.Loop() {
		s, _ := New(in, out)
		s.Estimate(context.Background(), 1, 0.1, Work{Workers: 1}, nil)
	}
}
