package model

import (
	"syscall"
	"testing"
	"time"
)

// perCore reports the evaluations a second of one core, by the time that the process
// had the processor: what others do on the machine does not count.
func perCore(b *testing.B, f func()) {
	b.ReportAllocs()
	before := processor(b)
	n := 0
	for b.Loop() {
		f()
		n++
	}
	b.ReportMetric(float64(n)/(processor(b)-before).Seconds(), "a-core-s")
}

func processor(b *testing.B) time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		b.Skip(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

func BenchmarkModel(b *testing.B) {
	in := example()
	perCore(b, func() { Evaluate(in) })
}

func BenchmarkModelWithoutRisk(b *testing.B) {
	in := example()
	perCore(b, func() { EvaluateWithoutRisk(in) })
}
