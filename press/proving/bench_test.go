package proving_test

import (
	"testing"

	"ramplan/press/proving"
)

// Studies of ten thousand rows: what a data logger sends.
func BenchmarkLoadCell(b *testing.B) {
	plan := station(b, nil)
	s := rightStation(plan, 1)
	study, _ := s.underCell()
	for len(study.Rows) < 10000 {
		more, _ := s.underCell()
		study.Rows = append(study.Rows, more.Rows...)
	}
	judged(b, func() { proving.Judge(plan, study) })
}

func BenchmarkStiffness(b *testing.B) {
	plan := station(b, nil)
	s := blockStation(plan, 1)
	study := s.onBlock(five, 0)
	for len(study.Rows) < 10000 {
		study.Rows = append(study.Rows, s.onBlock(five, 0).Rows...)
	}
	judged(b, func() { proving.Judge(plan, study) })
}

func BenchmarkMaster(b *testing.B) {
	plan := station(b, nil)
	study := rightStation(plan, 1).onMaster(10000)
	judged(b, func() { proving.Judge(plan, study) })
}

func BenchmarkTrial(b *testing.B) {
	plan := station(b, nil)
	study := rightStation(plan, 1).trialOf(10000, 1)
	judged(b, func() { proving.Judge(plan, study) })
}

func judged(b *testing.B, judge func()) {
	judge()
	b.ReportAllocs()
	for b.Loop() {
		judge()
	}
}
