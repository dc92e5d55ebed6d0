package draw

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
)

// content gives what the page of a PDF draws.
func content(t *testing.T, file []byte) string {
	t.Helper()
	_, after, found := bytes.Cut(file, []byte("stream\n"))
	require.True(t, found)
	z, err := zlib.NewReader(bytes.NewReader(after))
	require.NoError(t, err)
	page, err := io.ReadAll(z)
	require.NoError(t, err)
	return string(page)
}

var shownText = regexp.MustCompile(`(?s)BT ([-\d.]+) ([-\d.]+) Td \((.*?)\) Tj ET`)

// textsOf reads the texts of a page.
func textsOf(page string) []string {
	var out []string
	for _, m := range shownText.FindAllStringSubmatch(page, -1) {
		raw := strings.NewReplacer(`\\`, `\`, `\(`, `(`, `\)`, `)`, `\r`, "\r").Replace(m[3])
		var units []uint16
		for i := 0; i+1 < len(raw); i += 2 {
			units = append(units, binary.BigEndian.Uint16([]byte(raw[i:])))
		}
		out = append(out, string(utf16.Decode(units)))
	}
	return out
}
