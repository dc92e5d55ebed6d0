package curves_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/curves"
)

func BenchmarkForce(b *testing.B) {
	c := mustNew(b, ram, curves.Monotone)
	x := 10.0
	for b.Loop() {
		if _, err := c.Force(x); err != nil {
			b.Fatal(err)
		}
		if x += 0.37; x > 100 {
			x -= 90
		}
	}
}

func BenchmarkSetting(b *testing.B) {
	c := mustNew(b, ram, curves.Monotone)
	force := 60.0
	for b.Loop() {
		if _, err := c.Setting(force); err != nil {
			b.Fatal(err)
		}
		if force += 3.7; force > 1350 {
			force -= 1290
		}
	}
}

func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		_, err := curves.New(ram, curves.Monotone)
		require.NoError(b, err)
	}
}
