package proving

import (
	"fmt"
	"strings"
	"testing"
)

// The longest study that may be, in both formats.
func longTrial() []byte {
	var b strings.Builder
	b.WriteString("# kind: trial\n# taken_at: 2026-11-24\ntime,reading [mm],arrival,zone,height [mm],force [N],remark\n")
	for i := range MostRows {
		fmt.Fprintf(&b, "%d,%.3f,on,on,%.3f,%d,\"row %d, odd\"\n", i, 115.1+float64(i%97)/1000, 24.9+float64(i%101)/1000, 2400+i%50, i)
	}
	return []byte(b.String())
}

func BenchmarkReadCSV(b *testing.B) {
	data := longTrial()
	b.ReportAllocs()
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		if _, lines := ReadCSV(data); !lines.Sound() {
			b.Fatal(lines.Faults[0])
		}
	}
}

func BenchmarkDecode(b *testing.B) {
	s, _ := ReadCSV(longTrial())
	data := s.JSON()
	b.ReportAllocs()
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		if _, problems := Decode(data); len(problems) > 0 {
			b.Fatal(problems)
		}
	}
}

func BenchmarkDigest(b *testing.B) {
	s, _ := ReadCSV(longTrial())
	b.ReportAllocs()
	for b.Loop() {
		_ = s.Digest()
	}
}
