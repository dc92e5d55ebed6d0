package paper

import (
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// BenchmarkSheet is one sheet in each format, and 100 plans in one PDF.
func BenchmarkSheet(b *testing.B) {
	p := drawtest.Example(b, nil)
	r := press.Evaluate(p)
	for _, format := range canvas.Formats() {
		b.Run(format, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				require.NoError(b, NewSheet(p, r, SheetOptions{}).Write(io.Discard, format, 0))
			}
		})
	}
	b.Run("100-in-one-pdf", func(b *testing.B) {
		for b.Loop() {
			var docs []*Document
			for range 100 {
				docs = append(docs, NewSheet(p, press.Evaluate(p), SheetOptions{}))
			}
			require.NoError(b, WritePDF(io.Discard, docs...))
		}
	})
}
