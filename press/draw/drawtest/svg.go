package drawtest

import (
	"bytes"
	"encoding/xml"
	"io"
	"testing"

	"github.com/stretchr/testify/require"
)

// WellFormedSVG reads the SVG and looks for what a strict page would refuse.
func WellFormedSVG(t testing.TB, svg []byte) {
	t.Helper()
	for _, bad := range []string{"NaN", "Inf", "style=", "<style", "<?xml", "url(", "href"} {
		require.NotContains(t, string(svg), bad)
	}
	titles := 0
	dec := xml.NewDecoder(bytes.NewReader(svg))
	for {
		token, err := dec.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
		if e, ok := token.(xml.StartElement); ok && e.Name.Local == "title" {
			titles++
		}
	}
	require.Equal(t, 1, titles)
}

// A Box is a text of a drawing and the place that it takes, px.
type Box struct {
	Text           string
	X0, Y0, X1, Y1 float64
}

// Apart holds that no text of a drawing of a size lies over another, or outside.
func Apart(t testing.TB, texts []Box, width, height float64, what string) {
	t.Helper()
	const touch = 0.5
	for i, a := range texts {
		if a.X0 < -touch || a.Y0 < -touch || a.X1 > width+touch || a.Y1 > height+touch {
			t.Errorf("%s: %q lies outside: %+v of %v × %v", what, a.Text, a, width, height)
		}
		for _, b := range texts[i+1:] {
			if a.X0 < b.X1-touch && b.X0 < a.X1-touch && a.Y0 < b.Y1-touch && b.Y0 < a.Y1-touch {
				t.Errorf("%s: %q and %q overlap: %+v %+v", what, a.Text, b.Text, a, b)
			}
		}
	}
	if t.Failed() {
		t.FailNow()
	}
}
