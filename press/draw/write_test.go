package draw

import (
	"bytes"
	"io"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// TestWrite: every drawing in every format, the same bytes every time, whoever
// else is drawing.
func TestWrite(t *testing.T) {
	assert.Equal(t, []string{"strip", "force", "press", "cycle", "card", "run", "probe", "shift", "spread", "wear"}, Names())
	assert.Equal(t, []string{"svg", "png", "pdf"}, canvas.Formats())
	starts := map[string]string{"svg": "<svg ", "png": "\x89PNG\r\n\x1a\n", "pdf": "%PDF-1."}
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	for _, what := range Names() {
		for _, format := range canvas.Formats() {
			t.Run(what+"."+format, func(t *testing.T) {
				t.Parallel()
				var files [2]bytes.Buffer
				var all sync.WaitGroup
				for i := range files {
					all.Go(func() { assert.NoError(t, Write(&files[i], format, what, p, r)) })
				}
				all.Wait()
				assert.True(t, bytes.HasPrefix(files[0].Bytes(), []byte(starts[format])))
				for i := range files[1:] {
					assert.True(t, bytes.Equal(files[0].Bytes(), files[i+1].Bytes()), "the bytes differ")
				}
			})
		}
	}
}

// TestWriteUnknown: names that nobody knows are refused, and nothing is written.
func TestWriteUnknown(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	var b bytes.Buffer
	assert.EqualError(t, Write(&b, "svg", "stripe", p, r), `draw: no drawing is called "stripe"; there are strip, force, press, cycle, card, run, probe, shift, spread, wear`)
	assert.EqualError(t, Write(&b, "gif", "strip", p, r), `draw: no format is called "gif"; there are svg, png, pdf`)
	assert.EqualError(t, NewStrip(p, r, Options{}).Write(&b, ""), `draw: no format is called ""; there are svg, png, pdf`)
	assert.Zero(t, b.Len())
}

// full is a disk without room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

// TestWriteFails: an error of the writer comes back.
func TestWriteFails(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	for _, format := range canvas.Formats() {
		assert.ErrorIs(t, Write(full{}, format, "press", p, r), io.ErrShortWrite, format)
	}
}

func BenchmarkWrite(b *testing.B) {
	p := drawtest.Example(b, nil)
	r := press.Evaluate(p)
	for _, what := range Names() {
		for _, format := range canvas.Formats() {
			b.Run(what+"/"+format, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					require.NoError(b, Write(io.Discard, format, what, p, r))
				}
			})
		}
	}
}
