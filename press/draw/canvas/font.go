package canvas

import (
	"strings"
	"sync"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"gonum.org/v1/plot/font"
)

// A face is one weight of the family, with the advances of its characters
// looked up once.
type face struct {
	font   *opentype.Font
	weight xfont.Weight
	perEm  float64

	latin [endOfLatin]glyph // looked up beforehand: almost all texts are of these

	mu     sync.Mutex
	buf    sfnt.Buffer
	others map[rune]glyph
}

// endOfLatin is the first character behind Latin Extended-B.
const endOfLatin = 0x250

// A glyph is what a face knows of a character.
type glyph struct {
	advance float64 // in em; that of an empty box where the face lacks it
	lacking bool
}

var regular = sync.OnceValue(func() *face { return newFace(liberationsansregular.TTF, xfont.WeightNormal) })
var bold = sync.OnceValue(func() *face { return newFace(liberationsansbold.TTF, xfont.WeightBold) })

func newFace(ttf []byte, weight xfont.Weight) *face {
	f, err := opentype.Parse(ttf)
	if err != nil {
		panic("draw: the embedded font cannot be read: " + err.Error())
	}
	out := &face{font: f, weight: weight, perEm: float64(f.UnitsPerEm()), others: map[rune]glyph{}}
	for c := range out.latin {
		out.latin[c] = out.lookUp(rune(c))
	}
	return out
}

// glyph gives what is known of a character.
func (f *face) glyph(c rune) glyph {
	if c < endOfLatin {
		return f.latin[c]
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	g, known := f.others[c]
	if !known {
		g = f.lookUp(c)
		f.others[c] = g
	}
	return g
}

// lookUp finds a character in the font. The caller holds the lock.
func (f *face) lookUp(c rune) glyph {
	i, err := f.font.GlyphIndex(&f.buf, c)
	lacking := err != nil || i == 0
	if i == 0 {
		i, _ = f.font.GlyphIndex(&f.buf, emptyBox)
	}
	ppem := fixed.Int26_6(f.font.UnitsPerEm())
	a, err := f.font.GlyphAdvance(&f.buf, i, ppem, xfont.HintingNone)
	if err != nil {
		a = ppem
	}
	return glyph{float64(a) / f.perEm, lacking}
}

// width of a text at a size, px, with what other fonts set of it.
func (f *face) width(s string, size float64) float64 {
	parts := f.parts(s)
	if parts == nil {
		return f.own(f.boxed(s)) * size
	}
	w := 0.0
	for _, q := range parts {
		w += f.partWidth(q)
	}
	return w * size
}

// partWidth is the width of a part, in em.
func (f *face) partWidth(q part) float64 {
	if q.other != nil {
		return q.width
	}
	return f.own(f.boxed(q.text))
}

// own is the width of a text in this face alone, in em.
func (f *face) own(s string) float64 {
	var w float64
	for _, c := range s {
		w += f.glyph(c).advance
	}
	return w
}

// at is the face as the canvas takes it.
func (f *face) at(size float64) font.Face {
	return font.Face{
		Font: font.Font{Typeface: "Liberation", Variant: "Sans", Weight: f.weight, Size: font.Length(size)},
		Face: f.font,
	}
}

// clip shortens a text to a width, with an ellipsis.
func (f *face) clip(s string, size, width float64) string {
	if f.width(s, size) <= width {
		return s
	}
	runes := []rune(s)
	for len(runes) > 0 && f.width(string(runes)+"…", size) > width {
		runes = runes[:len(runes)-1]
	}
	return strings.TrimRight(string(runes), " ") + "…"
}

// wrap breaks a text into lines of at most a width. A word that is too long
// alone is clipped.
func (f *face) wrap(s string, size, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(s, " ") {
		switch next := line + " " + word; {
		case line == "":
			line = word
		case f.width(next, size) <= width:
			line = next
		default:
			lines = append(lines, line)
			line = word
		}
	}
	lines = append(lines, line)
	for i := range lines {
		lines[i] = f.clip(lines[i], size, width)
	}
	return lines
}
