package canvas

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"hash/crc32"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// chunksOf reads the chunks of a PNG and checks their sums.
func chunksOf(t *testing.T, data []byte) (kinds []string, bodies [][]byte) {
	t.Helper()
	for b := data[8:]; len(b) > 0; {
		n := binary.BigEndian.Uint32(b)
		require.Equal(t, crc32.ChecksumIEEE(b[4:8+n]), binary.BigEndian.Uint32(b[8+n:]))
		kinds, bodies = append(kinds, string(b[4:8])), append(bodies, b[8:8+n])
		b = b[12+n:]
	}
	return kinds, bodies
}

// TestPNGChunks: the size that the picture is meant to have, and what it shows
// in words, whatever the script.
func TestPNGChunks(t *testing.T) {
	d := NewPicture(Layout{Title: "Ω ≤ 中 𝄞", Desc: strings.Repeat("a figure. ", 40), Width: 20, Height: 10, Paint: func(*Pen) {}})
	var b bytes.Buffer
	require.NoError(t, d.PNG(&b))
	kinds, bodies := chunksOf(t, b.Bytes())
	assert.Equal(t, []string{"IHDR", "pHYs", "iTXt", "iTXt", "IDAT", "IEND"}, kinds)
	// 300 dots per inch of 25.4 mm, exact by definition: 11811.02 per metre.
	assert.Equal(t, []byte{0, 0, 0x2E, 0x23, 0, 0, 0x2E, 0x23, 1}, bodies[1])
	for i, want := range []string{"Title\x00" + d.Layout.Title, "Description\x00" + d.Desc} {
		keyword, rest, _ := strings.Cut(string(bodies[2+i]), "\x00")
		require.Equal(t, "\x01\x00\x00\x00", rest[:4])
		z, err := zlib.NewReader(strings.NewReader(rest[4:]))
		require.NoError(t, err)
		text, err := io.ReadAll(z)
		require.NoError(t, err)
		assert.Equal(t, want, keyword+"\x00"+string(text))
	}
}
