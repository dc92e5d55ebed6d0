package canvas

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/draw/drawtest"
)

// named is a drawing that holds a text in each weight.
func named(width float64, texts ...string) *Picture {
	return NewPicture(Layout{Kind: "strip", Title: "t", Desc: "d", Width: width, Height: 40 + 20*float64(len(texts)), Paint: func(p *Pen) {
		for i, text := range texts {
			st := Style{Black, Body, i%2 == 1}
			p.Text(st, Margin, 30+20*float64(i), Start, st.face().clip(text, Body, width-2*Margin))
		}
	}})
}

// TestLacking names what the typeface lacks, once, and nothing that it has. The
// code points are those of the Unicode Standard.
func TestLacking(t *testing.T) {
	for _, c := range []struct {
		name  string
		texts []string
		want  string
	}{
		{"Latin, Greek, Cyrillic, marks that the face has", []string{"Lagerhülse Ωж e\u0301 −5\u202fµm ≤ →"}, ""},
		{"an ideograph", []string{"hub 中文 x"}, "Not in the typeface: “中文” U+4E2D, U+6587."},
		{"the same word twice, in both weights", []string{"中", "中"}, "Not in the typeface: “中” U+4E2D."},
		{"beyond the basic plane", []string{"a𝄞 ok"}, "Not in the typeface: “a𝄞” U+1D11E."},
		{"an emoji of several characters", []string{"x👷🏽\u200d♀\ufe0f"}, "Not in the typeface: “x👷🏽\u200d♀\ufe0f” U+1F477, U+1F3FD, U+FE0F."},
		{"a combining mark that the face lacks", []string{"a\u20dd b"}, "Not in the typeface: “a\u20dd” U+20DD."},
		{"two words", []string{"नट", "بطانة"}, "Not in the typeface: “नट” U+0928, U+091F; “بطانة” U+0628, U+0637, U+0627, U+0646, U+0629."},
		{"more characters than are said", []string{"一二三四五六七"}, "Not in the typeface: “一二三四五六七” U+4E00, U+4E8C, U+4E09, U+56DB, U+4E94, 2 more."},
		{"a control character", []string{"a\tb"}, "Not in the typeface: “a\tb” U+0009."},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := named(700, c.texts...)
			assert.Equal(t, c.want, strings.Join(noteOf(d.draw(Blank{}, d.Height), d.Width), " "))
			checkNote(t, d, c.want != "")
		})
	}
}

// checkNote writes the drawing in every format: with a note it grows, and the
// note stands under everything else.
func checkNote(t *testing.T, d *Picture, noted bool) {
	t.Helper()
	labelsApart(t, d, "note")
	width, height := d.Size()
	assert.Equal(t, noted, height > d.Height)
	svg := string(d.svg())
	assert.Equal(t, noted, strings.Contains(svg, "Not in the typeface"))
	assert.Contains(t, svg, fmt.Sprintf(`height="%s"`, number(height)))
	drawtest.WellFormedSVG(t, []byte(svg))
	file := pdfOf(t, d)
	assert.Equal(t, noted, strings.Contains(strings.Join(drawtest.TextsOf(drawtest.Content(t, file)), " "), "Not in the typeface"))
	assert.Contains(t, string(file), fmt.Sprintf("/MediaBox [0 0 %.2f %.2f]", width*0.75, height*0.75))
	var b bytes.Buffer
	require.NoError(t, d.PNG(&b))
	picture, err := png.DecodeConfig(&b)
	require.NoError(t, err)
	assert.InDelta(t, height*pngDensity/pxPerInch, picture.Height, 1)
}

// TestBoxes: what the typeface lacks is drawn as an empty box, as wide as one,
// where the letters are drawn and not told to a browser.
func TestBoxes(t *testing.T) {
	pixels := func(text string) []byte {
		var b bytes.Buffer
		require.NoError(t, (NewPicture(Layout{Width: 200, Height: 60, Paint: func(p *Pen) {
			p.Text(Style{Black, Body, false}, 10, 20, Start, text)
		}})).PNG(&b))
		picture, err := png.Decode(&b)
		require.NoError(t, err)
		const dots = 200 * pngDensity / pxPerInch
		return picture.(*image.RGBA).Pix[:4*dots*80] // the text, without the note
	}
	assert.True(t, bytes.Equal(pixels("a□□b (no font)"), pixels("a中𝄞b")))
	assert.False(t, bytes.Equal(pixels("a□b"), pixels("ab")))
	assert.Equal(t, regular().width("a□□b (no font)", 10), regular().width("a中𝄞b", 10))
	assert.Equal(t, "a□b (no font)", drawtest.TextsOf(drawtest.Content(t, pdfOf(t, named(300, "a中b"))))[0])
	assert.Equal(t, "x □ □ (no font) y □ (no font)", regular().boxed("x 中 文 y 名"), "said once beside each name")
}

// TestLackingLong: a note of many words says how many more there are, and takes
// three lines at most.
func TestLackingLong(t *testing.T) {
	var texts []string
	for i := range 40 {
		texts = append(texts, strings.Repeat(string(rune(0x4E00+i)), 30))
	}
	for _, width := range []float64{340, 700} {
		d := named(width, texts...)
		lines := noteOf(d.draw(Blank{}, d.Height), width)
		require.LessOrEqual(t, len(lines), noteLines)
		said := strings.Join(lines, " ")
		named := strings.Count(said, "U+")
		assert.Contains(t, said, fmt.Sprintf("; and %d more.", 40-named), "every word is named or counted")
		labelsApart(t, d, "many words")
	}
}

// labelsApart holds that no text of a picture lies over another, or outside.
func labelsApart(t *testing.T, d *Picture, what string) {
	t.Helper()
	width, height := d.Size()
	var texts []drawtest.Box
	for _, l := range d.Texts() {
		texts = append(texts, drawtest.Box{Text: l.Text, X0: l.X0, Y0: l.Y0, X1: l.X1, Y1: l.Y1})
	}
	drawtest.Apart(t, texts, width, height, what)
}
