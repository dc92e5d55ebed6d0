package canvas

import (
	"slices"
	"strings"
)

// What neither the typeface nor another font has is shown as an empty box, with a word
// beside it; the texts in which that happens are named once, in a few lines under the
// drawing: see note.go.

// lacks tells whether the face has no picture of a character.
func (f *face) lacks(c rune) bool { return f.glyph(c).lacking }

// emptyBox stands for a character that the face lacks.
const emptyBox = '□'

// noFont stands beside a name whose letters cannot be printed.
const noFont = " (no font)"

// boxed puts empty boxes in place of what neither the face nor another font has, and
// says beside them why: a canvas that draws the letters itself would leave them out.
func (f *face) boxed(s string) string {
	if plainText(s) || f.lackingIn(s) == nil {
		return s
	}
	var out strings.Builder
	words := strings.Split(s, " ")
	for i, word := range words {
		if i > 0 {
			out.WriteByte(' ')
		}
		lacking := f.lackingIn(word)
		for _, c := range word {
			if slices.Contains(lacking, c) {
				c = emptyBox
			}
			out.WriteRune(c)
		}
		if lacking != nil && (i+1 == len(words) || f.lackingIn(words[i+1]) == nil) {
			out.WriteString(noFont)
		}
	}
	return out.String()
}

// plainText tells whether a text is of printable ASCII, as almost all are.
func plainText(s string) bool {
	return strings.IndexFunc(s, func(c rune) bool { return c < ' ' || c > '~' }) < 0
}

// lackingIn gives the characters of a word that neither the face nor another font has,
// each once.
func (f *face) lackingIn(word string) []rune {
	var out []rune
	for _, c := range word {
		if f.lacks(c) && !elsewhere(c) && !slices.Contains(out, c) {
			out = append(out, c)
		}
	}
	return out
}
