package draw

import (
	"bytes"
	"encoding/xml"
	"io"
	"testing"

	"github.com/stretchr/testify/require"
)

// wellFormedSVG reads the SVG and looks for what a strict page would refuse.
func wellFormedSVG(t testing.TB, svg []byte) {
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

// A box is a text of a drawing and the place that it takes, px.
type box struct {
	text           string
	x0, y0, x1, y1 float64
}

// apart holds that no text of a drawing of a size lies over another, or outside.
func apart(t testing.TB, texts []box, width, height float64, what string) {
	t.Helper()
	const touch = 0.5
	for i, a := range texts {
		if a.x0 < -touch || a.y0 < -touch || a.x1 > width+touch || a.y1 > height+touch {
			t.Errorf("%s: %q lies outside: %+v of %v × %v", what, a.text, a, width, height)
		}
		for _, b := range texts[i+1:] {
			if a.x0 < b.x1-touch && b.x0 < a.x1-touch && a.y0 < b.y1-touch && b.y0 < a.y1-touch {
				t.Errorf("%s: %q and %q overlap: %+v %+v", what, a.text, b.text, a, b)
			}
		}
	}
	if t.Failed() {
		t.FailNow()
	}
}
