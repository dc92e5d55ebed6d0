package drawtest

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

// Content gives what the page of a PDF draws.
func Content(t *testing.T, file []byte) string {
	t.Helper()
	_, after, found := bytes.Cut(file, []byte("stream\n"))
	require.True(t, found)
	z, err := zlib.NewReader(bytes.NewReader(after))
	require.NoError(t, err)
	page, err := io.ReadAll(z)
	require.NoError(t, err)
	return string(page)
}

var ShownText = regexp.MustCompile(`(?s)BT ([-\d.]+) ([-\d.]+) Td \((.*?)\) Tj ET`)

// TextsOf reads the texts of a page.
func TextsOf(page string) []string {
	var out []string
	for _, m := range ShownText.FindAllStringSubmatch(page, -1) {
		raw := strings.NewReplacer(`\\`, `\`, `\(`, `(`, `\)`, `)`, `\r`, "\r").Replace(m[3])
		var units []uint16
		for i := 0; i+1 < len(raw); i += 2 {
			units = append(units, binary.BigEndian.Uint16([]byte(raw[i:])))
		}
		out = append(out, string(utf16.Decode(units)))
	}
	return out
}
