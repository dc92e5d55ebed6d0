package canvas

import (
	"bytes"
	"compress/zlib"
	"context"
	"encoding/binary"
	"hash/crc32"
	"image"
	"io"
	"math"
	"slices"
)

// pngDensity is the dots per inch of every PNG, and pxPerInch what a px is in the
// world (CSS Values 3, 5.2).
const (
	pngDensity = 300
	pxPerInch  = 96
)

// PNG writes the drawing as PNG in a density for print. The file says how large
// it is meant to be, and holds title and description as text.
func (d *Picture) PNG(w io.Writer) error { return d.dots(context.Background(), w) }

// dots writes the drawing as PNG, unless the context ends before it is done.
func (d *Picture) dots(ctx context.Context, w io.Writer) error {
	// A vg point stands for one px here, so that texts are set at their own size
	// and never scaled as pictures.
	width, height := d.Size()
	if err := ctx.Err(); err != nil {
		return err
	}
	c := newRaster(width, height)
	c.ctx = ctx
	defer c.close()
	d.On(c)
	if err := ctx.Err(); err != nil {
		return err
	}
	picture := encoded(c.dots, density(pngDensity), internationalText("Title", d.Layout.Title), internationalText("Description", d.Desc))
	_, err := w.Write(picture)
	return err
}

// PNGCarrying writes the drawing as PNG, unless the context ends before it is done, with a
// text that it carries under a keyword.
func (d *Picture) PNGCarrying(ctx context.Context, w io.Writer, keyword, text string) error {
	var b bytes.Buffer
	if err := d.dots(ctx, &b); err != nil {
		return err
	}
	_, err := w.Write(withChunks(b.Bytes(), internationalText(keyword, text)))
	return err
}

// encoded is a picture without holes as PNG, with chunks before its data. Each row
// is kept as its difference from the row above (ISO/IEC 15948, 9.2): on paper most
// rows are alike, and trying the other filters as the library does takes longer than
// it saves.
func encoded(m *image.RGBA, chunks ...[]byte) []byte {
	w, h := m.Rect.Dx(), m.Rect.Dy()
	head := binary.BigEndian.AppendUint32(nil, uint32(w))
	head = binary.BigEndian.AppendUint32(head, uint32(h))
	head = append(head, 8, 2, 0, 0, 0) // bits, red green blue, deflated, filtered by row, no interlacing
	var data bytes.Buffer
	z, _ := zlib.NewWriterLevel(&data, zlib.BestSpeed)
	const up = 2
	row, above := make([]byte, 1+3*w), make([]byte, 4*w)
	row[0] = up
	for y := range h {
		pix := m.Pix[y*m.Stride : y*m.Stride+4*w]
		if bytes.Equal(pix, above) {
			clear(row[1:])
		} else {
			for x := range w {
				p, q, to := pix[4*x:4*x+3:4*x+3], above[4*x:4*x+3:4*x+3], row[1+3*x:4+3*x:4+3*x]
				to[0], to[1], to[2] = p[0]-q[0], p[1]-q[1], p[2]-q[2]
			}
		}
		_, _ = z.Write(row) // a buffer takes everything
		above = pix
	}
	_ = z.Close()
	return slices.Concat([]byte("\x89PNG\r\n\x1a\n"), chunk("IHDR", head), bytes.Join(chunks, nil), chunk("IDAT", data.Bytes()), chunk("IEND", nil))
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
