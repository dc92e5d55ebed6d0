package static

import (
	"bytes"
	"slices"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/stretchr/testify/require"
)

// known are the tags that WOFF2 writes as a number (section 4.1), as far as they
// are used here.
var known = map[string]byte{
	"cmap": 0, "head": 1, "hhea": 2, "hmtx": 3, "maxp": 4, "name": 5, "OS/2": 6, "post": 7, "cvt ": 8, "fpgm": 9, "glyf": 10, "loca": 11, "prep": 12, "gasp": 15,
}

// pack writes a font as WOFF2 with untransformed tables.
func pack(t *testing.T, from tables) []byte {
	tags := make([]string, 0, len(from))
	for tag := range from {
		tags = append(tags, tag)
	}
	slices.Sort(tags)
	checksums(from, tags)
	var directory, data []byte
	plain := 12 + 16*len(tags)
	for _, tag := range tags {
		number, ok := known[tag]
		require.True(t, ok, tag)
		if tag == "glyf" || tag == "loca" {
			number |= 3 << 6 // the null transform of these two
		}
		directory = append(directory, number)
		directory = appendBase128(directory, uint32(len(from[tag])))
		data = append(data, from[tag]...)
		plain += (len(from[tag]) + 3) &^ 3
	}
	var packed bytes.Buffer
	w := brotli.NewWriterOptions(&packed, brotli.WriterOptions{Quality: 11, LGWin: 22})
	_, err := w.Write(data)
	require.NoError(t, err)
	require.NoError(t, w.Close())

	size := 48 + len(directory) + packed.Len()
	out := append([]byte("wOF2"), 0, 1, 0, 0)
	out = be.AppendUint32(out, uint32((size+3)&^3))
	out = be.AppendUint16(out, uint16(len(tags)))
	out = be.AppendUint16(out, 0)
	out = be.AppendUint32(out, uint32(plain))
	out = be.AppendUint32(out, uint32(packed.Len()))
	out = append(out, make([]byte, 24)...) // version, no metadata, no private data
	out = append(out, directory...)
	out = append(out, packed.Bytes()...)
	return append(out, make([]byte, -len(out)&3)...)
}

// checksums sets the checksum of the whole font in its head, over the font as it
// is laid out unpacked.
func checksums(from tables, tags []string) {
	head := from["head"]
	be.PutUint32(head[8:], 0)
	be.PutUint16(head[16:], be.Uint16(head[16:])|1<<11) // losslessly packed, as section 5 wants
	n := uint16(len(tags))
	power, log := uint16(1), uint16(0)
	for power*2 <= n {
		power, log = power*2, log+1
	}
	font := []byte{0, 1, 0, 0}
	for _, v := range []uint16{n, 16 * power, log, 16 * (n - power)} {
		font = be.AppendUint16(font, v)
	}
	at := 12 + 16*len(tags)
	for _, tag := range tags {
		font = append(font, tag...)
		font = be.AppendUint32(font, sum32(from[tag]))
		font = be.AppendUint32(font, uint32(at))
		font = be.AppendUint32(font, uint32(len(from[tag])))
		at += (len(from[tag]) + 3) &^ 3
	}
	total := sum32(font)
	for _, tag := range tags {
		total += sum32(from[tag])
	}
	be.PutUint32(head[8:], 0xb1b0afba-total)
}

func sum32(b []byte) uint32 {
	var s uint32
	for len(b) >= 4 {
		s += be.Uint32(b)
		b = b[4:]
	}
	var rest [4]byte
	copy(rest[:], b)
	return s + be.Uint32(rest[:])
}

// appendBase128 writes a number as WOFF2 does (section 4.1).
func appendBase128(b []byte, v uint32) []byte {
	for shift := 28; shift > 0; shift -= 7 {
		if v>>shift != 0 {
			b = append(b, byte(v>>shift)|0x80)
		}
	}
	return append(b, byte(v)&0x7f)
}
