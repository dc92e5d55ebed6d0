package carry

import (
	"bytes"
	"compress/zlib"
	"encoding/base64"
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// example is the example plan on its way, with bytes that no editor leaves alone.
func example(t testing.TB) Carried {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	data = bytes.ReplaceAll(data, []byte("\n"), []byte(" \r\n\t"))
	plan, ps := press.Decode(data)
	require.Empty(t, ps)
	return Carried{Plan: data, Digest: plan.Digest(), Issue: &Issue{Revision: "AA", Date: "2026-03-02", Reason: "]]> -- \" \\ Ω 𝄞\r\n"}}
}

// The files of this test hold nothing but what is needed for the document to be
// found: whole ones are tested where they are made.

func svgWith(document string) []byte {
	return []byte(`<svg xmlns="http://www.w3.org/2000/svg"><metadata><s:sheet xmlns:s="` + Namespace + `">` +
		base64.StdEncoding.EncodeToString([]byte(document)) + `</s:sheet></metadata></svg>`)
}

func pngChunk(kind, data string) []byte {
	b := binary.BigEndian.AppendUint32(nil, uint32(len(data)))
	b = append(append(b, kind...), data...)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(b[4:]))
}

func pngWith(kind, data string) []byte {
	return bytes.Join([][]byte{pngStart, pngChunk("IHDR", strings.Repeat("\x00", 13)), pngChunk(kind, Keyword+"\x00"+data), pngChunk("IEND", "")}, nil)
}

func pdfWith(dictionary, stream string) []byte {
	return fmt.Appendf(nil, "%%PDF-1.7\n1 0 obj\n<</Type /EmbeddedFile %s>>\nstream\n%s\nendstream\nendobj\n", dictionary, stream)
}

func packed(s string) string {
	var b bytes.Buffer
	z := zlib.NewWriter(&b)
	_, _ = io.WriteString(z, s)
	_ = z.Close()
	return b.String()
}

// containers are all the ways in which a document may lie in a file.
var containers = map[string]func(document string) []byte{
	"svg":             svgWith,
	"svg, own prefix": func(d string) []byte { return bytes.ReplaceAll(svgWith(d), []byte("s:"), []byte("")) },
	"svg, wrapped": func(d string) []byte {
		s := string(svgWith(d))
		return []byte("\xEF\xBB\xBF<?xml version=\"1.0\"?>\r\n<!-- saved -->" + strings.Replace(s, "eyJ", "\r\n  ey\n J", 1))
	},
	"png, iTXt packed": func(d string) []byte { return pngWith("iTXt", "\x01\x00en\x00\x00"+packed(d)) },
	"png, iTXt":        func(d string) []byte { return pngWith("iTXt", "\x00\x00\x00\x00"+d) },
	"png, zTXt":        func(d string) []byte { return pngWith("zTXt", "\x00"+packed(d)) },
	"png, tEXt":        func(d string) []byte { return pngWith("tEXt", d) },
	"pdf":              func(d string) []byte { return pdfWith("/Filter /FlateDecode", packed(d)) },
	"pdf, filters":     func(d string) []byte { return pdfWith("/Filter [ /FlateDecode ]", packed(d)) },
	"pdf, plain":       func(d string) []byte { return pdfWith("", d) },
}

// TestThereAndBack: from every container the same bytes come back.
func TestThereAndBack(t *testing.T) {
	want := example(t)
	for name, put := range containers {
		t.Run(name, func(t *testing.T) {
			got, err := Extract(put(string(want.Encode())))
			require.NoError(t, err)
			assert.Equal(t, want, got)
			draft := Carried{Plan: want.Plan, Digest: want.Digest}
			got, err = Extract(put(string(draft.Encode())))
			require.NoError(t, err)
			assert.Equal(t, draft, got)
		})
	}
}

// TestFaults: what holds no plan that can be trusted is told in one sentence, in
// every container.
func TestFaults(t *testing.T) {
	good := example(t)
	whole := string(good.Encode())
	renewed := func(change func(*document)) string {
		d := document{Format: Format, Plan: string(good.Plan), Digest: good.Digest, Issue: good.Issue}
		change(&d)
		d.Check = d.sum()
		return string(d.marshal())
	}
	noPlan := renewed(func(d *document) {
		d.Plan = strings.Replace(d.Plan, `"format"`, `"formart"`, 1)
	})
	for name, c := range map[string]struct {
		document string
		want     error
	}{
		"cut":                    {whole[:len(whole)/2], ErrDamaged},
		"a figure changed":       {strings.Replace(whole, "150", "151", 1), ErrDamaged},
		"another reason":         {strings.Replace(whole, "AA", "AB", 1), ErrDamaged},
		"the digest of another":  {renewed(func(d *document) { d.Digest = "sha256:" + strings.Repeat("0", 64) }), ErrDamaged},
		"another name of format": {renewed(func(d *document) { d.Format = "ramplan.sheet/2" }), ErrNewer},
		"something else":         {`{"format":"something/1"}`, ErrNoPlan},
		"no plan of ours":        {noPlan, nil},
		"without end":            {unending + strings.Repeat(" ", maxDocument) + "}", ErrBomb},
	} {
		for container, put := range containers {
			_, err := Extract(put(c.document))
			switch {
			case c.want != nil:
				assert.ErrorIs(t, err, c.want, "%s in %s", name, container)
			default:
				assert.ErrorContains(t, err, "carry: what is inside is no sound plan: ", "%s in %s", name, container)
			}
		}
	}
}

const unending = `{"format":"ramplan.sheet/1","x":`

// TestFiles: faults of the file itself.
func TestFiles(t *testing.T) {
	document := string(example(t).Encode())
	png := pngWith("iTXt", "\x01\x00\x00\x00"+packed(document))
	bitten := bytes.Clone(png)
	bitten[len(bitten)/2] ^= 1
	for name, c := range map[string]struct {
		file []byte
		want error
	}{
		"empty":               {nil, ErrKind},
		"text":                {[]byte("a plan"), ErrKind},
		"another page":        {[]byte("<html><body>"), ErrKind},
		"no page":             {[]byte("<<<"), ErrKind},
		"svg without":         {[]byte(`<svg xmlns="http://www.w3.org/2000/svg"/>`), ErrNoPlan},
		"svg of other names":  {bytes.ReplaceAll(svgWith(document), []byte(Namespace), []byte("urn:other")), ErrNoPlan},
		"svg cut":             {svgWith(document)[:900], ErrDamaged},
		"svg, no base64":      {bytes.Replace(svgWith(document), []byte("eyJ"), []byte("!!!"), 1), ErrDamaged},
		"png without":         {bytes.Join([][]byte{pngStart, pngChunk("IEND", "")}, nil), ErrNoPlan},
		"png cut":             {png[:len(png)/2], ErrDamaged},
		"png, a bit changed":  {bitten, ErrDamaged},
		"png, end of packing": {pngWith("iTXt", "\x01\x00\x00\x00"+packed(document)[:400]), ErrDamaged},
		"png, no packing":     {pngWith("zTXt", "\x00"+document), ErrDamaged},
		"pdf without":         {[]byte("%PDF-1.7\n"), ErrNoPlan},
		"pdf, another file":   {pdfWith("", "<svg/>"), ErrNoPlan},
		"pdf cut":             {pdfWith("/Filter/FlateDecode", packed(document)[:400]), ErrDamaged},
		"pdf, other packing":  {pdfWith("/Filter/LZWDecode", packed(document)), ErrNoPlan},
		"pdf, encrypted":      {append(pdfWith("/Filter/FlateDecode", "\x00\x01"), "trailer <</Encrypt 7 0 R>>"...), ErrLocked},
		"huge":                {append([]byte("%PDF-1.7"), make([]byte, MaxFile)...), ErrLarge},
	} {
		_, err := Extract(c.file)
		assert.ErrorIs(t, err, c.want, name)
	}
}

// TestSeveral: many plans in one PDF come out in their order, the same one once.
func TestSeveral(t *testing.T) {
	a := example(t)
	b := a
	b.Issue = nil
	file := joined(pdfWith("", string(a.Encode())), pdfWith("", string(b.Encode())), pdfWith("", string(a.Encode())))
	all, err := All(file)
	require.NoError(t, err)
	assert.Equal(t, []Carried{a, b}, all)
	_, err = Extract(file)
	assert.ErrorIs(t, err, ErrMany)
	assert.True(t, Is(file))
	assert.False(t, Is(a.Plan))
}

func joined(parts ...[]byte) []byte { return bytes.Join(parts, nil) }

// TestSays names what was carried.
func TestSays(t *testing.T) {
	c := example(t)
	assert.Equal(t, "revision AA of 2026-03-02, "+c.Digest, c.Says())
	c.Issue = nil
	assert.Equal(t, "a draft, "+c.Digest, c.Says())
}

// TestBombs: what unpacks without end is given up soon, and costs no memory,
// however many of them one file holds.
func TestBombs(t *testing.T) {
	huge := packed(unending + `"` + strings.Repeat("a", 2*maxDocument) + `"}`)
	large := packed(strings.Replace(string(example(t).Encode()), "\\r\\n", strings.Repeat(" ", maxUnpacked/10)+"\\r\\n", 1))
	for name, file := range map[string][]byte{
		"png":                                 pngWith("iTXt", "\x01\x00\x00\x00"+huge),
		"png, many":                           manyChunks("\x01\x00\x00\x00"+huge, 50),
		"png, each of a size that is allowed": manyChunks("\x01\x00\x00\x00"+large, 12),
		"pdf, many":                           bytes.Repeat(pdfWith("/Filter/FlateDecode", huge), 50),
	} {
		_, err := Extract(file)
		assert.ErrorIs(t, err, ErrBomb, name)
	}
}

// manyChunks is a PNG with the same text chunk many times.
func manyChunks(data string, n int) []byte {
	text := pngChunk("iTXt", Keyword+"\x00"+data)
	return bytes.Join([][]byte{pngStart, pngChunk("IHDR", strings.Repeat("\x00", 13)), bytes.Repeat(text, n), pngChunk("IEND", "")}, nil)
}
