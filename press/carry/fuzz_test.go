package carry

import (
	"strings"
	"testing"

	"ramplan/press"
)

// fuzz looks for a file that brings a reader down, or out of which comes a plan
// that is none.
func fuzz(f *testing.F, kind string, read func([]byte) ([]Carried, error)) {
	document := string(example(f).Encode())
	for name, put := range containers {
		if strings.HasPrefix(name, kind) {
			f.Add(put(document))
			f.Add(put(document[:200]))
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		all, err := read(data)
		if len(all) > 0 {
			err = nil
		}
		for _, c := range all {
			plan, ps := press.Decode(c.Plan)
			if len(ps) > 0 || plan.Digest() != c.Digest {
				t.Fatal("a plan came out that is none")
			}
		}
		if err != nil && !strings.HasPrefix(err.Error(), "carry: ") {
			t.Fatalf("not a sentence of this package: %v", err)
		}
	})
}

func FuzzSVG(f *testing.F) { fuzz(f, "svg", readSVG) }

func FuzzPNG(f *testing.F) {
	fuzz(f, "png", func(data []byte) ([]Carried, error) {
		if !isPNG(data) {
			return nil, nil
		}
		return readPNG(data)
	})
}

func FuzzPDF(f *testing.F) { fuzz(f, "pdf", readPDF) }
