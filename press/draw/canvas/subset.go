package canvas

import (
	"bytes"
	"compress/zlib"
	"encoding/base64"
	"encoding/binary"
	"fmt"
	"slices"
	"sync"
	"unicode/utf16"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
)

// ownFamily is what the typeface is called inside a file that brings it along. It
// is a changed font, which its licence wants under another name.
const ownFamily = "'Ramplan Sheet'"

var be = binary.BigEndian

// faces gives a style sheet with the characters that the drawing uses, so that a
// file on its own looks the same everywhere. Where a policy forbids style sheets
// the other families of the list stand in, with the same widths.
func (c *svg) faces() string {
	s := "<style>"
	for _, f := range []struct {
		weight int
		ttf    []byte
		used   map[rune]bool
	}{{400, liberationsansregular.TTF, c.used[0]}, {700, liberationsansbold.TTF, c.used[1]}} {
		if len(f.used) > 0 {
			s += fmt.Sprintf("@font-face{font-family:%s;font-weight:%d;src:url(data:font/woff;base64,%s) format('woff')}",
				ownFamily, f.weight, base64.StdEncoding.EncodeToString(woff(subset(f.ttf, f.used))))
		}
	}
	return s + "</style>\n"
}

// tables of a TrueType font, by tag (ISO/IEC 14496-22).
type tables map[string][]byte

func tablesOf(ttf []byte) tables {
	t := tables{}
	for i := range int(be.Uint16(ttf[4:])) {
		entry := ttf[12+16*i:]
		at, n := be.Uint32(entry[8:]), be.Uint32(entry[12:])
		t[string(entry[:4])] = ttf[at : at+n]
	}
	return t
}

// subset cuts a font down to some characters. Hints are dropped: at the sizes of
// print and of today's screens they hardly show.
func subset(ttf []byte, used map[rune]bool) tables {
	from := tablesOf(ttf)
	all := glyphsOf(from["cmap"])
	var chars []rune
	for c := range used {
		if all[c] != 0 {
			chars = append(chars, c)
		}
	}
	slices.Sort(chars)
	kept := []uint16{0} // the box that stands for what the face lacks
	number := map[uint16]uint16{0: 0}
	keep := func(id uint16) uint16 {
		n, known := number[id]
		if !known {
			n = uint16(len(kept))
			number[id], kept = n, append(kept, id)
		}
		return n
	}
	glyph := map[rune]uint16{}
	for _, c := range chars {
		glyph[c] = keep(all[c])
	}
	loca, glyf := from["loca"], from["glyf"]
	var newLoca, newGlyf, metrics []byte
	for i := 0; i < len(kept); i++ { // grows while compound glyphs ask for their parts
		id := int(kept[i])
		newLoca = be.AppendUint32(newLoca, uint32(len(newGlyf)))
		newGlyf = append(newGlyf, unhinted(glyf[be.Uint32(loca[4*id:]):be.Uint32(loca[4*id+4:])], keep)...)
		newGlyf = append(newGlyf, make([]byte, -len(newGlyf)&3)...)
		metrics = append(metrics, metricOf(from, id)...)
	}
	newLoca = be.AppendUint32(newLoca, uint32(len(newGlyf)))
	count := be.AppendUint16(nil, uint16(len(kept)))
	to := tables{
		"loca": newLoca, "glyf": newGlyf, "hmtx": metrics, "cmap": characterMap(chars, glyph), "name": fontNames(),
		"OS/2": from["OS/2"], "post": slices.Concat([]byte{0, 3, 0, 0}, from["post"][4:32]),
		"head": slices.Clone(from["head"]), "hhea": slices.Clone(from["hhea"]), "maxp": slices.Clone(from["maxp"]),
	}
	copy(to["hhea"][34:], count)
	copy(to["maxp"][4:], count)
	copy(to["head"][8:], []byte{0, 0, 0, 0}) // the sum over the whole file, which no reader of WOFF asks for
	copy(to["head"][50:], []byte{0, 1})      // long glyph offsets
	return to
}

// metricOf gives the advance and the left bearing of a glyph.
func metricOf(t tables, id int) []byte {
	n := int(be.Uint16(t["hhea"][34:]))
	if id < n {
		return t["hmtx"][4*id : 4*id+4]
	}
	last := t["hmtx"][4*(n-1):]
	bearing := t["hmtx"][4*n+2*(id-n):]
	return []byte{last[0], last[1], bearing[0], bearing[1]}
}

// Flags of the parts of a compound glyph.
const (
	wideArguments   = 1 << 0
	oneScale        = 1 << 3
	moreParts       = 1 << 5
	twoScales       = 1 << 6
	fullMatrix      = 1 << 7
	hasInstructions = 1 << 8
)

// unhinted gives a glyph without instructions; the parts of a compound one get the
// numbers that keep gives them.
func unhinted(g []byte, keep func(uint16) uint16) []byte {
	if len(g) < 12 {
		return nil
	}
	contours := int(int16(be.Uint16(g)))
	if contours >= 0 {
		at := 10 + 2*contours
		n := int(be.Uint16(g[at:]))
		return slices.Concat(g[:at], []byte{0, 0}, g[at+2+n:])
	}
	g = slices.Clone(g)
	for at := 10; ; {
		flags := be.Uint16(g[at:])
		be.PutUint16(g[at:], flags&^hasInstructions)
		be.PutUint16(g[at+2:], keep(be.Uint16(g[at+2:])))
		at += 6
		if flags&wideArguments != 0 {
			at += 2
		}
		switch {
		case flags&oneScale != 0:
			at += 2
		case flags&twoScales != 0:
			at += 4
		case flags&fullMatrix != 0:
			at += 8
		}
		if flags&moreParts == 0 {
			return g[:at]
		}
	}
}

// glyphsOf reads which glyph shows which character, from a map of format 4.
func glyphsOf(cmap []byte) map[rune]uint16 {
	out := map[rune]uint16{}
	for i := range int(be.Uint16(cmap[2:])) {
		entry := cmap[4+8*i:]
		sub := cmap[be.Uint32(entry[4:]):]
		if be.Uint16(entry) != 3 || be.Uint16(entry[2:]) != 1 || be.Uint16(sub) != 4 {
			continue
		}
		n := int(be.Uint16(sub[6:])) / 2
		ends, starts, deltas, offsets := sub[14:], sub[16+2*n:], sub[16+4*n:], sub[16+6*n:]
		for k := range n {
			first := int(be.Uint16(starts[2*k:]))
			for c := first; c <= int(be.Uint16(ends[2*k:])); c++ {
				id := uint16(c)
				if off := int(be.Uint16(offsets[2*k:])); off != 0 {
					id = be.Uint16(offsets[2*k+off+2*(c-first):])
				}
				if id += be.Uint16(deltas[2*k:]); id != 0 {
					out[rune(c)] = id
				}
			}
		}
	}
	return out
}

// characterMap writes a map of format 4 with a segment for each character.
func characterMap(chars []rune, glyph map[rune]uint16) []byte {
	type segment struct{ char, delta uint16 }
	var list []segment
	for _, c := range chars {
		list = append(list, segment{uint16(c), glyph[c] - uint16(c)})
	}
	list = append(list, segment{0xffff, 1})
	n := uint16(len(list))
	power, log := uint16(1), uint16(0)
	for power*2 <= n {
		power, log = power*2, log+1
	}
	b := []byte{0, 0, 0, 1, 0, 3, 0, 1, 0, 0, 0, 12}
	for _, v := range []uint16{4, 16 + 8*n, 0, 2 * n, 2 * power, log, 2 * (n - power)} {
		b = be.AppendUint16(b, v)
	}
	for _, s := range list {
		b = be.AppendUint16(b, s.char)
	}
	b = be.AppendUint16(b, 0)
	for _, s := range list {
		b = be.AppendUint16(b, s.char)
	}
	for _, s := range list {
		b = be.AppendUint16(b, s.delta)
	}
	return append(b, make([]byte, 2*n)...)
}

// fontNames says what the font is, and under which licence.
func fontNames() []byte {
	entries := []struct {
		id   uint16
		text string
	}{
		{0, "Cut down from Liberation Sans; digitized data copyright (c) 2010 Google Corporation, copyright (c) 2012 Red Hat, Inc."},
		{1, "Ramplan Sheet"}, {2, "Regular"}, {4, "Ramplan Sheet"}, {6, "RamplanSheet"}, {13, "SIL Open Font License, Version 1.1"},
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

// woff packs a font (W3C, WOFF File Format 1.0).
func woff(t tables) []byte {
	var tags []string
	size := uint32(12)
	for tag, data := range t {
		tags = append(tags, tag)
		size += 16 + uint32(len(data)+3)&^3
	}
	slices.Sort(tags)
	directory, body := []byte{}, []byte{}
	begin := 44 + 20*len(tags)
	for _, tag := range tags {
		data := t[tag]
		packed := deflate(data)
		if len(packed) >= len(data) {
			packed = data
		}
		directory = append(directory, tag...)
		for _, v := range []uint32{uint32(begin + len(body)), uint32(len(packed)), uint32(len(data)), checkSum(data)} {
			directory = be.AppendUint32(directory, v)
		}
		body = append(append(body, packed...), make([]byte, -len(packed)&3)...)
	}
	head := append([]byte("wOFF"), 0, 1, 0, 0)
	head = be.AppendUint32(head, uint32(begin+len(body)))
	head = be.AppendUint16(head, uint16(len(tags)))
	head = be.AppendUint16(head, 0)
	head = be.AppendUint32(head, size)
	head = append(head, make([]byte, 24)...) // version and, empty, metadata
	return slices.Concat(head, directory, body)
}

// packers are used again: each holds more than a megabyte, and a file packs many pieces.
var packers = sync.Pool{New: func() any {
	z, _ := zlib.NewWriterLevel(nil, zlib.BestCompression) // that there is such a level
	return z
}}

func deflate(data []byte) []byte {
	var b bytes.Buffer
	z := packers.Get().(*zlib.Writer)
	defer packers.Put(z)
	z.Reset(&b)
	_, _ = z.Write(data) // a buffer takes everything
	_ = z.Close()
	return b.Bytes()
}

func checkSum(data []byte) uint32 {
	var sum uint32
	padded := slices.Concat(data, make([]byte, -len(data)&3))
	for i := 0; i < len(padded); i += 4 {
		sum += be.Uint32(padded[i:])
	}
	return sum
}
