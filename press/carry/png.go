package carry

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"io"
)

// Keyword names the text chunk of a PNG that holds a document.
const Keyword = "ramplan.sheet"

var pngStart = []byte("\x89PNG\r\n\x1a\n")

func isPNG(data []byte) bool { return bytes.HasPrefix(data, pngStart) }

// readPNG goes from chunk to chunk: length, type, data, check sum (ISO/IEC 15948,
// 5.3).
func readPNG(data []byte) ([]Carried, error) {
	var all []Carried
	var fault error
	left := int64(maxUnpacked)
	rest := data[len(pngStart):]
	for len(all) < maxPlans {
		if len(rest) < 12 {
			return all, graver(fault, ErrDamaged) // it ended before its end
		}
		n := binary.BigEndian.Uint32(rest)
		if uint64(n)+12 > uint64(len(rest)) {
			return all, graver(fault, ErrDamaged)
		}
		kind, body := string(rest[4:8]), rest[8:8+n]
		if ours(kind, body) {
			sound := crc32.ChecksumIEEE(rest[4:8+n]) == binary.BigEndian.Uint32(rest[8+n:])
			c, err := inChunk(kind, body, sound, &left)
			switch {
			case err == nil:
				all = append(all, c)
			case errors.Is(err, ErrBomb):
				return all, err
			default:
				fault = graver(fault, err)
			}
		}
		if kind == "IEND" {
			break
		}
		rest = rest[12+n:]
	}
	return all, fault
}

// ours tells whether a text chunk has the keyword.
func ours(kind string, body []byte) bool {
	return (kind == "iTXt" || kind == "zTXt" || kind == "tEXt") && bytes.HasPrefix(body, []byte(Keyword+"\x00"))
}

// inChunk takes the text out of any of the three kinds of text chunk (ISO/IEC
// 15948, 11.3.4): programs that pack a picture anew may write another kind.
func inChunk(kind string, body []byte, sound bool, left *int64) (Carried, error) {
	body = body[len(Keyword)+1:]
	packed := kind == "zTXt"
	switch {
	case !sound:
		return Carried{}, ErrDamaged
	case kind == "zTXt":
		if len(body) < 1 || body[0] != 0 {
			return Carried{}, ErrDamaged
		}
		body = body[1:]
	case kind == "iTXt":
		if len(body) < 2 || body[0] > 1 || body[1] != 0 {
			return Carried{}, ErrDamaged
		}
		packed = body[0] == 1
		_, after, _ := bytes.Cut(body[2:], []byte{0}) // the language
		var ok bool
		if _, body, ok = bytes.Cut(after, []byte{0}); !ok {
			return Carried{}, ErrDamaged
		}
	}
	if !packed {
		return decode(bytes.NewReader(body))
	}
	return inflated(bytes.NewReader(body), left)
}

// inflated reads a document that is packed by zlib, and its check sum. What it
// unpacks to is taken off what is left for the file.
func inflated(r io.Reader, left *int64) (Carried, error) {
	z, err := zlib.NewReader(r)
	if err != nil {
		return Carried{}, ErrDamaged
	}
	counted := &io.LimitedReader{R: z, N: *left}
	defer func() { *left = counted.N }()
	c, err := decode(counted)
	if err == nil {
		_, err = io.Copy(io.Discard, io.LimitReader(counted, maxDocument))
		if err != nil {
			return Carried{}, ErrDamaged
		}
	}
	if counted.N <= 0 {
		return Carried{}, ErrBomb
	}
	return c, err
}
