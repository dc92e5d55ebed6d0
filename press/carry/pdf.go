package carry

import (
	"bufio"
	"bytes"
	"compress/zlib"
	"errors"
	"io"
	"regexp"
)

// FileName is the name of the attachment of a PDF that holds a document.
const FileName = "ramplan-sheet.json"

func isPDF(data []byte) bool { return bytes.Contains(data[:min(len(data), 1024)], []byte("%PDF-")) }

var (
	stream    = regexp.MustCompile(`\bstream\r?\n`)
	embedded  = regexp.MustCompile(`/Type\s*/EmbeddedFile\b`)
	deflated  = regexp.MustCompile(`/Filter\s*\[?\s*/FlateDecode\s*\]?`)
	filtered  = regexp.MustCompile(`/Filter\b`)
	encrypted = regexp.MustCompile(`/Encrypt\s*(\d+\s+\d+\s+R|<<)`)
)

// longestDictionary is how far before its data the description of a stream may
// begin.
const longestDictionary = 4096

// readPDF looks at every embedded file (ISO 32000-2, 7.11.4). It needs no table of
// the objects: a stream is never inside another, whatever program saved the file
// again, and its dictionary stands before it.
func readPDF(data []byte) ([]Carried, error) {
	var all []Carried
	var fault error
	left := int64(maxUnpacked)
	for at := 0; len(all) < maxPlans; {
		m := stream.FindIndex(data[at:])
		if m == nil {
			break
		}
		last, begin, body := at, at+m[0], at+m[1]
		at = body
		dictionary := data[max(last, begin-longestDictionary):begin]
		if i := bytes.LastIndex(dictionary, []byte(" obj")); i >= 0 {
			dictionary = dictionary[i:]
		}
		if !embedded.Match(dictionary) {
			continue
		}
		c, err := inStream(dictionary, data[body:], &left)
		switch {
		case err == nil:
			all = append(all, c)
		case errors.Is(err, ErrBomb):
			return all, err
		case !errors.Is(err, ErrNoPlan):
			fault = graver(fault, err)
		}
	}
	if len(all) == 0 && encrypted.Match(data) {
		return nil, ErrLocked
	}
	return all, fault
}

// inStream reads an embedded file if it holds a document.
func inStream(dictionary, data []byte, left *int64) (Carried, error) {
	var r io.Reader = bytes.NewReader(data)
	packed := deflated.Match(dictionary)
	switch {
	case packed:
		z, err := zlib.NewReader(r)
		if err != nil {
			return Carried{}, ErrDamaged
		}
		r = z
	case filtered.Match(dictionary):
		return Carried{}, ErrNoPlan // packed in a way that no sheet is
	}
	if *left <= 0 {
		return Carried{}, ErrBomb
	}
	counted := &io.LimitedReader{R: r, N: *left}
	buffered := bufio.NewReader(counted)
	defer func() { *left = counted.N }()
	head, err := buffered.Peek(len(opening))
	if err != nil && packed && err != io.EOF {
		return Carried{}, ErrDamaged
	}
	if !bytes.Equal(head, opening) {
		return Carried{}, ErrNoPlan
	}
	c, err := decode(buffered)
	if err == nil && packed {
		if _, err := io.Copy(io.Discard, buffered); err != nil {
			return Carried{}, ErrDamaged
		}
	}
	return c, err
}
