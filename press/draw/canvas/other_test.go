package canvas

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/draw/drawtest"
)

// madeFont is a font whose characters look like the letters A, B and so on.
func madeFont(chars string, licence string) []byte {
	used, glyph, list := map[rune]bool{' ': true}, map[rune]uint16{' ': 1}, []rune{' '}
	for i, c := range []rune(chars) {
		used[rune('A'+i)] = true
		glyph[c] = uint16(2 + i)
		list = append(list, c)
	}
	slices.Sort(list)
	to := subset(liberationsansregular.TTF, used)
	to["cmap"] = characterMap(list, glyph)
	free := []byte("SIL Open Font License, Version 1.1")
	wide := func(s string) []byte { return []byte("\x00" + strings.Join(strings.Split(s, ""), "\x00")) }
	to["name"] = bytes.Replace(to["name"], wide(string(free)), wide((licence + strings.Repeat(" ", len(free)))[:len(free)]), 1)
	return fileOf(to)
}

// fileOf writes a font as a file.
func fileOf(to tables) []byte {
	var tags []string
	for tag := range to {
		tags = append(tags, tag)
	}
	slices.Sort(tags)
	head := []byte{0, 1, 0, 0}
	for _, v := range []uint16{uint16(len(tags)), 128, 3, uint16(16*len(tags) - 128)} {
		head = be.AppendUint16(head, v)
	}
	var body []byte
	for _, tag := range tags {
		head = append(head, tag...)
		for _, v := range []uint32{checkSum(to[tag]), uint32(12 + 16*len(tags) + len(body)), uint32(len(to[tag]))} {
			head = be.AppendUint32(head, v)
		}
		body = append(append(body, to[tag]...), make([]byte, -len(to[tag])&3)...)
	}
	return append(head, body...)
}

// withFont uses a font for one test.
func withFont(t *testing.T, data []byte) {
	t.Helper()
	file := filepath.Join(t.TempDir(), "own.ttf")
	require.NoError(t, os.WriteFile(file, data, 0o600))
	source, err := FontFile(file)
	require.NoError(t, err)
	UseFonts(source)
	t.Cleanup(func() { UseFonts(nil) })
}

// TestOtherFont: what the typeface lacks is drawn in another font, as wide as its
// letters are (by hand: they are those of A and B), on paper alone; nothing is said to
// be lacking then, and what neither has is still told.
func TestOtherFont(t *testing.T) {
	d := func() *Picture { return named(300, "x 中文 y") }
	require.Contains(t, string(d().exported("")), "Not in the typeface")
	withFont(t, madeFont("中文", "SIL Open Font License, Version 1.1"))
	assert.InDelta(t, regular().width("x AB y", 10), regular().width("x 中文 y", 10), 0.01)
	assert.InDelta(t, bold().width("x  y", 10)+regular().width("AB", 10), bold().width("x 中文 y", 10), 0.01)

	onPaper, onScreen := string(d().exported("")), string(d().svg())
	assert.NotContains(t, onPaper, "Not in the typeface")
	assert.NotContains(t, onPaper, "中", "outlines, for there may be no font where it is read")
	assert.Contains(t, onScreen, "x 中文 y", "the system's fonts serve in a browser")
	assert.NotContains(t, strings.Join(drawtest.TextsOf(drawtest.Content(t, pdfOf(t, d()))), " "), "□")
	var with, without bytes.Buffer
	require.NoError(t, d().PNG(&with))
	UseFonts(nil)
	require.NoError(t, d().PNG(&without))
	assert.NotEqual(t, without.Len(), with.Len())

	withFont(t, madeFont("中文", ""))
	assert.Equal(t, "a 中 □ (no font)", regular().boxed("a 中 名"))
	assert.Equal(t, "Not in the typeface: “名” U+540D.", strings.Join(noteOf(named(300, "中 名").draw(Blank{}, 60), 300), " "))
}

// TestOtherFontBackward: a script that is written from right to left is drawn so, word
// by word, within a line that runs from left to right (by hand).
func TestOtherFontBackward(t *testing.T) {
	withFont(t, madeFont("بت", "")) // a font without joined forms
	ids := func(s string) string {
		out := ""
		for _, q := range regular().parts(s) {
			if q.other == nil {
				out += q.text
				continue
			}
			for _, g := range q.glyph {
				out += string(rune('A' + int(g.id) - 2))
			}
		}
		return strings.ReplaceAll(out, "@", " ")
	}
	assert.Equal(t, "BA", ids("بت"))
	assert.Equal(t, "x BA y", ids("x بت y"))
	assert.Equal(t, "x AA BA y", ids("x بت بب y"))
	assert.Equal(t, "A 12 BA", ids("بت 12 ب"))
	assert.Empty(t, ids("no such letter"))
}

// TestOtherFontWithoutOutlines: a font that has a character and nothing to draw for it,
// as those with coloured pictures are, does not make it vanish.
func TestOtherFontWithoutOutlines(t *testing.T) {
	used, glyph := map[rune]bool{' ': true}, map[rune]uint16{'中': 1} // of a blank
	to := subset(liberationsansregular.TTF, used)
	to["cmap"] = characterMap([]rune{'中'}, glyph)
	withFont(t, fileOf(to))
	assert.Nil(t, regular().parts("中"))
	assert.Equal(t, "□ (no font)", regular().boxed("中"))
}

// TestOtherFontShapes: letters join as their script wants it. It needs a free font of
// this machine that has them.
func TestOtherFontShapes(t *testing.T) {
	UseFonts(MachineFonts())
	t.Cleanup(func() { UseFonts(nil) })
	for script, s := range map[string]string{"Arabic": "ببب", "Devanagari": "क्ष"} {
		parts := regular().parts(s)
		if len(parts) == 0 {
			t.Log("no free font of this machine has " + script)
			continue
		}
		require.Len(t, parts, 1)
		seen := map[uint32]bool{}
		for _, g := range parts[0].glyph {
			seen[uint32(g.id)] = true
		}
		if script == "Arabic" {
			assert.Len(t, seen, 3, "the first, the middle and the last letter have forms of their own")
		} else {
			assert.Less(t, len(parts[0].glyph), 3, "the letters become one")
		}
	}
}

// TestMachineFonts: only a font that says that it is free is taken from the machine;
// one that is named is taken as it is, and no file is that holds no font.
func TestMachineFonts(t *testing.T) {
	free, closed := t.TempDir(), t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(free, "a.ttf"), madeFont("中", "SIL Open Font License, Version 1.1"), 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(free, "broken.ttf"), []byte("no font"), 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(closed, "b.ttf"), madeFont("中", "All rights reserved."), 0o600))
	data, _ := MachineFonts(closed, free)('中')
	assert.NotNil(t, data)
	data, _ = MachineFonts(closed)('中')
	assert.Nil(t, data, "it does not say that it is free")
	data, _ = MachineFonts(free)('文')
	assert.Nil(t, data)
	named, err := FontFile(filepath.Join(closed, "b.ttf"))
	require.NoError(t, err)
	data, _ = FirstOf(MachineFonts(free), named)('中')
	assert.NotNil(t, data)
	for _, name := range []string{filepath.Join(free, "broken.ttf"), filepath.Join(free, "none.ttf")} {
		_, err := FontFile(name)
		assert.ErrorContains(t, err, filepath.Base(name))
	}
}

// TestBackwardInTheTypeface: Hebrew, which the typeface has, stands in a PDF in the order of
// paper, with figures that keep theirs (by hand); an SVG holds it as it is read, because who
// shows it orders it.
func TestBackwardInTheTypeface(t *testing.T) {
	require.False(t, regular().lacks('ש'))
	assert.Equal(t, "x םולש 12 ב y", visual("x ב 12 שלום y"))
	assert.Equal(t, "no such letter ±", visual("no such letter ±"))
	d := named(300, "x שלום y")
	assert.Contains(t, strings.Join(drawtest.TextsOf(drawtest.Content(t, pdfOf(t, d))), " "), "x םולש y")
	assert.Contains(t, string(d.exported("")), "x שלום y")
}
