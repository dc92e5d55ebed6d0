package static

import (
	"bytes"
	"encoding/binary"
	"flag"
	"os"
	"slices"
	"testing"
	"unicode/utf16"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the font files anew")

// TestFonts holds the font files to the face that the drawings use: Liberation
// Sans, cut down to the characters of kept, packed as WOFF2 (W3C, 2018) and
// renamed, as its licence wants of a changed font.
func TestFonts(t *testing.T) {
	for name, ttf := range map[string][]byte{"fonts/ramplan-sans.woff2": liberationsansregular.TTF, "fonts/ramplan-sans-bold.woff2": liberationsansbold.TTF} {
		want := pack(t, cut(t, ttf))
		if *update {
			require.NoError(t, os.WriteFile(name, want, 0o644))
		}
		got, err := os.ReadFile(name)
		require.NoError(t, err)
		assert.True(t, bytes.Equal(want, got), "%s is not what its sources make; run go test ./static -update", name)
	}
	licence, err := FS.ReadFile("fonts/LICENSE.txt")
	require.NoError(t, err)
	assert.Contains(t, string(licence), "SIL OPEN FONT LICENSE Version 1.1")
}

// kept are the characters that the pages can show in their own face: Latin,
// Greek and Cyrillic, punctuation, currencies, letter-like signs, arrows,
// mathematical signs and simple shapes.
var kept = [][2]rune{
	{0x20, 0x7e}, {0xa0, 0x24f}, {0x2b0, 0x36f}, {0x370, 0x3ff}, {0x400, 0x52f}, {0x1e00, 0x1eff},
	{0x2000, 0x206f}, {0x2070, 0x209f}, {0x20a0, 0x20bf}, {0x2100, 0x218f}, {0x2190, 0x21ff}, {0x2200, 0x22ff}, {0x25a0, 0x25ff},
}

func isKept(r rune) bool {
	return slices.ContainsFunc(kept, func(k [2]rune) bool { return r >= k[0] && r <= k[1] })
}

// tables of a font, by tag.
type tables map[string][]byte

var be = binary.BigEndian

// cut drops the glyphs that no kept character needs, their hints and everything
// that only serves dropped glyphs. Glyphs keep their numbers.
func cut(t *testing.T, ttf []byte) tables {
	from := tables{}
	for i := range int(be.Uint16(ttf[4:])) {
		entry := ttf[12+16*i:]
		at, n := be.Uint32(entry[8:]), be.Uint32(entry[12:])
		from[string(entry[:4])] = ttf[at : at+n]
	}
	chars := characters(t, from["cmap"])
	loca, glyf := from["loca"], from["glyf"]
	require.EqualValues(t, 1, be.Uint16(from["head"][50:]), "long glyph offsets")
	glyph := func(id int) []byte { return glyf[be.Uint32(loca[4*id:]):be.Uint32(loca[4*id+4:])] }

	count := len(loca)/4 - 1
	needed := make([]bool, count)
	var need func(id int)
	need = func(id int) {
		if needed[id] {
			return
		}
		needed[id] = true
		for _, part := range components(glyph(id)) {
			need(part)
		}
	}
	need(0) // the box that stands for what the face lacks
	for _, id := range chars {
		need(id)
	}
	var newLoca, newGlyf []byte
	for id := range count {
		newLoca = be.AppendUint32(newLoca, uint32(len(newGlyf)))
		if needed[id] {
			newGlyf = append(newGlyf, glyph(id)...)
			newGlyf = append(newGlyf, make([]byte, -len(newGlyf)&3)...)
		}
	}
	newLoca = be.AppendUint32(newLoca, uint32(len(newGlyf)))
	to := tables{"loca": newLoca, "glyf": newGlyf, "cmap": characterMap(chars), "name": names(t, from["name"])}
	for _, tag := range []string{"OS/2", "head", "hhea", "hmtx", "maxp", "cvt ", "fpgm", "prep", "gasp"} {
		to[tag] = slices.Clone(from[tag])
	}
	to["post"] = append([]byte{0, 3, 0, 0}, from["post"][4:32]...) // without glyph names
	return to
}

// components are the glyphs that a compound glyph is put together from.
func components(g []byte) []int {
	if len(g) < 10 || int16(be.Uint16(g)) >= 0 {
		return nil
	}
	var out []int
	for at := 10; ; {
		flags := be.Uint16(g[at:])
		out = append(out, int(be.Uint16(g[at+2:])))
		at += 6
		if flags&1 != 0 {
			at += 2
		}
		switch {
		case flags&8 != 0:
			at += 2
		case flags&0x40 != 0:
			at += 4
		case flags&0x80 != 0:
			at += 8
		}
		if flags&0x20 == 0 {
			return out
		}
	}
}

// characters reads the kept characters and their glyphs from a cmap of format 4.
func characters(t *testing.T, cmap []byte) map[rune]int {
	var sub []byte
	for i := range int(be.Uint16(cmap[2:])) {
		entry := cmap[4+8*i:]
		if be.Uint16(entry) == 3 && be.Uint16(entry[2:]) == 1 {
			sub = cmap[be.Uint32(entry[4:]):]
		}
	}
	require.NotNil(t, sub)
	require.EqualValues(t, 4, be.Uint16(sub))
	n := int(be.Uint16(sub[6:])) / 2
	ends, starts, deltas, offsets := sub[14:], sub[16+2*n:], sub[16+4*n:], sub[16+6*n:]
	out := map[rune]int{}
	for i := range n {
		for c := int(be.Uint16(starts[2*i:])); c <= int(be.Uint16(ends[2*i:])); c++ {
			id := uint16(c)
			if off := int(be.Uint16(offsets[2*i:])); off != 0 {
				id = be.Uint16(offsets[2*i+off+2*(c-int(be.Uint16(starts[2*i:]))):])
			}
			if id += be.Uint16(deltas[2*i:]); id != 0 && isKept(rune(c)) {
				out[rune(c)] = int(id)
			}
		}
	}
	require.Greater(t, len(out), 1000)
	return out
}

// characterMap writes a cmap of format 4: one segment a run of characters whose
// glyphs run along.
func characterMap(chars map[rune]int) []byte {
	type segment struct{ start, end, delta uint16 }
	var segments []segment
	order := make([]rune, 0, len(chars))
	for c := range chars {
		order = append(order, c)
	}
	slices.Sort(order)
	for _, c := range order {
		delta := uint16(chars[c]) - uint16(c)
		if k := len(segments) - 1; k >= 0 && segments[k].end+1 == uint16(c) && segments[k].delta == delta {
			segments[k].end++
			continue
		}
		segments = append(segments, segment{uint16(c), uint16(c), delta})
	}
	segments = append(segments, segment{0xffff, 0xffff, 1})
	n := uint16(len(segments))
	power := uint16(1)
	log := uint16(0)
	for power*2 <= n {
		power, log = power*2, log+1
	}
	b := []byte{0, 0, 0, 1, 0, 3, 0, 1, 0, 0, 0, 12}
	for _, v := range []uint16{4, 16 + 8*n, 0, 2 * n, 2 * power, log, 2 * (n - power)} {
		b = be.AppendUint16(b, v)
	}
	for _, s := range segments {
		b = be.AppendUint16(b, s.end)
	}
	b = be.AppendUint16(b, 0)
	for _, s := range segments {
		b = be.AppendUint16(b, s.start)
	}
	for _, s := range segments {
		b = be.AppendUint16(b, s.delta)
	}
	return append(b, make([]byte, 2*n)...)
}

// names keeps copyright and licence and gives the changed font a name of its own.
func names(t *testing.T, table []byte) []byte {
	old := map[uint16]string{}
	text := table[be.Uint16(table[4:]):]
	for i := range int(be.Uint16(table[2:])) {
		r := table[6+12*i:]
		if be.Uint16(r) == 3 && be.Uint16(r[4:]) == 0x409 {
			raw := text[be.Uint16(r[10:]):][:be.Uint16(r[8:])]
			units := make([]uint16, len(raw)/2)
			for k := range units {
				units[k] = be.Uint16(raw[2*k:])
			}
			old[be.Uint16(r[6:])] = string(utf16.Decode(units))
		}
	}
	require.NotEmpty(t, old[0], "copyright")
	style := old[2]
	entries := []struct {
		id   uint16
		text string
	}{
		{0, old[0]}, {1, "Ramplan Sans"}, {2, style}, {3, "Ramplan Sans " + style + " 1"}, {4, "Ramplan Sans " + style},
		{5, "Version 1"}, {6, "RamplanSans-" + style}, {13, "Licensed under the SIL Open Font License, Version 1.1"}, {14, "http://scripts.sil.org/OFL"},
	}
	head := be.AppendUint16(nil, 0)
	head = be.AppendUint16(head, uint16(len(entries)))
	head = be.AppendUint16(head, uint16(6+12*len(entries)))
	var store []byte
	for _, e := range entries {
		at := len(store)
		for _, u := range utf16.Encode([]rune(e.text)) {
			store = be.AppendUint16(store, u)
		}
		for _, v := range []uint16{3, 1, 0x409, e.id, uint16(len(store) - at), uint16(at)} {
			head = be.AppendUint16(head, v)
		}
	}
	return append(head, store...)
}
