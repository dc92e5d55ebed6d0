package draw

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"hash/crc32"
	"image/png"
	"io"
	"math"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

// pngDensity is the dots per inch of every PNG, and pxPerInch what a px is in the
// world (CSS Values 3, 5.2).
const (
	pngDensity = 300
	pxPerInch  = 96
)

// PNG writes the drawing as PNG in a density for print. The file says how large
// it is meant to be, and holds title and description as text.
func (d *Picture) PNG(w io.Writer) error {
	// A vg point stands for one px here, so that texts are set at their own size
	// and never scaled as pictures.
	width, height := d.Size()
	c := vgimg.NewWith(vgimg.UseWH(vg.Length(width), vg.Length(height)), vgimg.UseDPI(72*pngDensity/pxPerInch))
	d.on(c)
	var b bytes.Buffer
	encoder := png.Encoder{CompressionLevel: png.BestSpeed}
	if err := encoder.Encode(&b, c.Image()); err != nil {
		return err
	}
	_, err := w.Write(withChunks(b.Bytes(), density(pngDensity), internationalText("Title", d.title), internationalText("Description", d.desc)))
	return err
}

// headEnd is the end of the signature and the header, which is always the first
// chunk (ISO/IEC 15948, 5.2 and 11.2.2).
const headEnd = 8 + 4 + 4 + 13 + 4

// withChunks puts chunks behind the header of a PNG.
func withChunks(picture []byte, chunks ...[]byte) []byte {
	return bytes.Join([][]byte{picture[:headEnd], bytes.Join(chunks, nil), picture[headEnd:]}, nil)
}

// chunk frames data: length, type, data, check sum (ISO/IEC 15948, 5.3).
func chunk(kind string, data []byte) []byte {
	b := binary.BigEndian.AppendUint32(nil, uint32(len(data)))
	b = append(append(b, kind...), data...)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(b[4:]))
}

// density says how many dots make an inch: without it programs take their own
// guess at the size (ISO/IEC 15948, 11.3.5.3).
func density(dotsPerInch float64) []byte {
	perMetre := uint32(math.Round(dotsPerInch / 0.0254))
	b := binary.BigEndian.AppendUint32(nil, perMetre)
	b = binary.BigEndian.AppendUint32(b, perMetre)
	const metre = 1
	return chunk("pHYs", append(b, metre))
}

// internationalText holds a text in UTF-8, compressed (ISO/IEC 15948, 11.3.4.5).
func internationalText(keyword, text string) []byte {
	b := bytes.NewBufferString(keyword)
	b.Write([]byte{0, 1, 0, 0, 0}) // compressed, by zlib, no language, no other keyword
	z := zlib.NewWriter(b)
	_, _ = io.WriteString(z, text) // a buffer takes everything
	_ = z.Close()
	return chunk("iTXt", b.Bytes())
}
