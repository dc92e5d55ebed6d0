package carry

import "bytes"

// lastBytes are how far before its end a file may have the mark of its end: some
// programs write blanks or lines of their own behind it.
const lastBytes = 1024

// Cut tells whether a file that may hold a plan ends before its format does, as one
// that a full disk cut off: the trailer of a PDF (ISO 32000-2, 7.5.5), the last chunk
// of a PNG (ISO/IEC 15948, 11.2.5), the end of an SVG's root. A plan that lies before
// may still be whole.
func Cut(data []byte) bool {
	end := data[max(0, len(data)-lastBytes):]
	switch {
	case isPNG(data):
		return !bytes.Contains(end, []byte("IEND"))
	case isPDF(data):
		return !bytes.Contains(end, []byte("%%EOF"))
	case isSVG(data):
		return !bytes.Contains(end, []byte("svg>"))
	}
	return false
}
