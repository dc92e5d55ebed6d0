package canvas

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"

	"github.com/go-text/typesetting/di"
	"github.com/go-text/typesetting/font"
	"github.com/go-text/typesetting/font/opentype"
	"github.com/go-text/typesetting/language"
	"github.com/go-text/typesetting/shaping"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/math/fixed"
	"golang.org/x/text/unicode/bidi"
	"gonum.org/v1/plot/vg"
)

// Scripts that the typeface lacks are set in another font, where there is one: shaped
// as the script wants it, and drawn as the outlines of the glyphs that are needed, on
// paper alone. In a browser the fonts of the system serve.

// A FontSource gives a font file, TrueType or OpenType or a collection of them, that
// has a character, and tells which font of it; nil data where it knows none.
type FontSource func(c rune) (data []byte, index int)

// others are the fonts for what the typeface lacks.
var others struct {
	mu     sync.Mutex
	source FontSource
	fonts  []*font.Face
	none   map[rune]bool // characters for which there is no font
	shaped map[shapedText][]part
}

// A shapedText is a text in one weight of the typeface.
type shapedText struct {
	text   string
	weight xfont.Weight
}

// UseFonts says where fonts come from for what the typeface lacks; nil: from nowhere.
func UseFonts(source FontSource) {
	others.mu.Lock()
	defer others.mu.Unlock()
	others.source, others.fonts = source, nil
	others.none, others.shaped = map[rune]bool{}, map[shapedText][]part{}
}

// otherFont finds the font for a character; nil where there is none. The caller holds
// the lock.
func otherFont(c rune) *font.Face {
	if others.source == nil || others.none[c] {
		return nil
	}
	has := func(f *font.Face) bool { return outlined(f, c) }
	if i := slices.IndexFunc(others.fonts, has); i >= 0 {
		return others.fonts[i]
	}
	if data, index := others.source(c); data != nil {
		if f, err := fontOf(data, index); err == nil && has(f) {
			others.fonts = append(others.fonts, f)
			return f
		}
	}
	others.none[c] = true
	return nil
}

// outlined tells whether a font has the outlines of a character: some have pictures
// instead, of which nothing would be seen.
func outlined(f *font.Face, c rune) bool {
	id, has := f.NominalGlyph(c)
	if !has || id == 0 {
		return false
	}
	outline, ok := f.GlyphDataOutline(id)
	return ok && (len(outline.Segments) > 0 || unicode.IsSpace(c))
}

// fontOf reads one font of a file.
func fontOf(data []byte, index int) (f *font.Face, err error) {
	defer func() { // a file of others, which may hold anything
		if broken := recover(); broken != nil {
			f, err = nil, fmt.Errorf("draw: the font cannot be read: %v", broken)
		}
	}()
	fonts, err := font.ParseTTC(bytes.NewReader(data))
	if err != nil {
		return nil, fmt.Errorf("draw: the font cannot be read: %w", err)
	}
	if index < 0 || index >= len(fonts) {
		return nil, fmt.Errorf("draw: the file holds no font of number %d", index)
	}
	return fonts[index], nil
}

// elsewhere tells whether another font has a character.
func elsewhere(c rune) bool {
	others.mu.Lock()
	defer others.mu.Unlock()
	return otherFont(c) != nil
}

// A part of a text in one face, in the order in which it is drawn. Without a font it
// is of the typeface itself.
type part struct {
	text  string
	other *font.Face
	back  bool // a text of the typeface that runs from right to left
	glyph []placedGlyph
	width float64 // in em, of what another font sets
}

// A placedGlyph is a glyph of another font and where it stands, in em, y growing
// upward.
type placedGlyph struct {
	id   font.GID
	x, y float64
}

// keptTexts bounds the memory for texts that were shaped.
const keptTexts = 4096

// parts takes a text apart that needs other fonts; nil where it needs none.
func (f *face) parts(s string) []part {
	if plainText(s) {
		return nil
	}
	others.mu.Lock()
	defer others.mu.Unlock()
	if others.source == nil {
		return nil
	}
	key := shapedText{s, f.weight}
	if out, known := others.shaped[key]; known {
		return out
	}
	out := f.newParts(s)
	if len(others.shaped) >= keptTexts {
		others.shaped = map[shapedText][]part{}
	}
	others.shaped[key] = out
	return out
}

// newParts finds the parts of a text in the order of the screen.
func (f *face) newParts(s string) []part {
	fontOf := func(c rune) *font.Face {
		if f.lacks(c) {
			return otherFont(c)
		}
		return nil
	}
	needed := false
	for _, c := range s {
		needed = needed || fontOf(c) != nil
	}
	if !needed {
		return nil
	}
	var out []part
	for _, run := range visualRuns(s) {
		parts := splitByFont(run.text, fontOf)
		if run.backward {
			slices.Reverse(parts)
		}
		for k := range parts {
			switch {
			case parts[k].other != nil:
				parts[k].shape(run.backward)
			default:
				parts[k].back = run.backward
			}
		}
		out = append(out, parts...)
	}
	return out
}

// A textRun is a stretch of a text in one direction.
type textRun struct {
	text     string
	backward bool
}

// leftToRight is a mark that has no width: a line runs from left to right, whatever
// script it begins with (Unicode Standard Annex 9).
const leftToRight = "\u200e"

// visualRuns gives the runs of a text in the order in which they stand on paper from
// left to right. Runs from right to left stand in reverse order with the figures that
// are between them.
func visualRuns(s string) []textRun {
	var paragraph bidi.Paragraph
	if _, err := paragraph.SetString(leftToRight + s); err != nil {
		return []textRun{{text: s}}
	}
	order, err := paragraph.Order()
	if err != nil {
		return []textRun{{text: s}}
	}
	var out []textRun
	for i := range order.NumRuns() {
		run := order.Run(i)
		if text := strings.TrimPrefix(run.String(), leftToRight); text != "" {
			out = append(out, textRun{text, run.Direction() == bidi.RightToLeft})
		}
	}
	for i := 0; i < len(out); i++ {
		if !out[i].backward {
			continue
		}
		last := i
		for k := i + 1; k < len(out) && (out[k].backward || !hasLetter(out[k].text)); k++ {
			if out[k].backward {
				last = k
			}
		}
		slices.Reverse(out[i : last+1])
		i = last
	}
	return out
}

// visual is a text of the typeface in the order in which it stands on paper from left to
// right. Programs that show text order it themselves.
func visual(s string) string {
	if !strings.ContainsFunc(s, rightToLeft) {
		return s
	}
	var b strings.Builder
	for _, run := range visualRuns(s) {
		if run.backward {
			run.text = bidi.ReverseString(run.text)
		}
		b.WriteString(run.text)
	}
	return b.String()
}

// rightToLeft tells whether a character is a letter of a script that runs from right to
// left.
func rightToLeft(c rune) bool {
	if c < 0x590 {
		return false
	}
	p, _ := bidi.LookupRune(c)
	return p.Class() == bidi.R || p.Class() == bidi.AL
}

func hasLetter(s string) bool { return strings.ContainsFunc(s, unicode.IsLetter) }

// splitByFont takes a text apart where the font changes. Blanks and marks between two
// stretches of one font belong to them.
func splitByFont(s string, fontOf func(rune) *font.Face) []part {
	var out []part
	for _, c := range s {
		other := fontOf(c)
		last := len(out) - 1
		switch {
		case last >= 0 && out[last].other == other:
			out[last].text += string(c)
		case last >= 1 && other != nil && out[last].other == nil && out[last-1].other == other && oneBlank(out[last].text, other):
			out[last-1].text += out[last].text + string(c)
			out = out[:last]
		default:
			out = append(out, part{text: string(c), other: other})
		}
	}
	return out
}

// oneBlank tells whether a text is one blank that a font has as well.
func oneBlank(s string, f *font.Face) bool {
	_, has := f.NominalGlyph(' ')
	return s == " " && has
}

// shape puts the glyphs of a part into their places.
func (q *part) shape(backward bool) {
	text := []rune(q.text)
	const size = 1000 // to which the shaper rounds
	in := shaping.Input{Text: text, RunEnd: len(text), Face: q.other, Size: fixed.I(size), Direction: di.DirectionLTR, Language: language.NewLanguage("en")}
	if backward {
		in.Direction = di.DirectionRTL
	}
	for _, c := range text {
		if in.Script = language.LookupScript(c); in.Script != language.Common && in.Script != language.Inherited {
			break
		}
	}
	var shaper shaping.HarfbuzzShaper
	out := shaper.Shape(in)
	em := func(v fixed.Int26_6) float64 { return float64(v) / 64 / size }
	x := 0.0
	for _, g := range out.Glyphs {
		q.glyph = append(q.glyph, placedGlyph{g.GlyphID, x + em(g.XOffset), em(g.YOffset)})
		x += em(g.Advance)
	}
	q.width = x
}

// outlines are the contours of a part whose first glyph stands at a place.
func (q *part) outlines(path *vg.Path, place func(x, y float64) vg.Point) {
	others.mu.Lock()
	defer others.mu.Unlock()
	upem := float64(q.other.Upem())
	for _, g := range q.glyph {
		outline, ok := q.other.GlyphDataOutline(g.id)
		if !ok {
			continue
		}
		at := func(p opentype.SegmentPoint) vg.Point { return place(g.x+float64(p.X)/upem, -g.y-float64(p.Y)/upem) }
		open := false
		for _, s := range outline.Segments {
			switch s.Op {
			case opentype.SegmentOpMoveTo:
				if open {
					path.Close()
				}
				path.Move(at(s.Args[0]))
				open = true
			case opentype.SegmentOpLineTo:
				path.Line(at(s.Args[0]))
			case opentype.SegmentOpQuadTo:
				path.QuadTo(at(s.Args[0]), at(s.Args[1]))
			case opentype.SegmentOpCubeTo:
				path.CubeTo(at(s.Args[0]), at(s.Args[1]), at(s.Args[2]))
			}
		}
		if open {
			path.Close()
		}
	}
}
