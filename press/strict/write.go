package strict

import (
	"crypto/sha256"
	"encoding/hex"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// JSON gives the document as it was given, key by key, laid out for reading.
func (n *Node) JSON() []byte {
	var b strings.Builder
	n.write(&b, 0)
	b.WriteByte('\n')
	return []byte(b.String())
}

// Canonical gives the document in the canonical form of RFC 8785. It fails where that form
// cannot hold it, such as a number that is too large for one.
func (n *Node) Canonical() ([]byte, error) {
	var b strings.Builder
	n.write(&b, -1)
	v := jsontext.Value(b.String())
	return v, v.Canonicalize()
}

// Digest names a document of this canonical form: "sha256:" and its SHA-256.
func Digest(canonical []byte) string {
	sum := sha256.Sum256(canonical)
	return "sha256:" + hex.EncodeToString(sum[:])
}

// write appends JSON text. A negative level writes it on one line; otherwise
// objects and lists of objects are laid out at that level, short lists of plain
// values stay on a line.
func (n *Node) write(b *strings.Builder, level int) {
	switch n.Shape {
	case Object, Array:
		n.writeItems(b, level)
	case Number:
		b.WriteString(n.Text)
	case Boolean:
		if n.Flag {
			b.WriteString("true")
		} else {
			b.WriteString("false")
		}
	case Text:
		b.Write(quote(n.Text))
	case Null:
		b.WriteString("null")
	}
}

func (n *Node) writeItems(b *strings.Builder, level int) {
	open, close := byte('{'), byte('}')
	if n.Shape == Array {
		open, close = '[', ']'
	}
	flat := level < 0 || n.plainList()
	b.WriteByte(open)
	for i, item := range n.Items {
		if i > 0 {
			b.WriteByte(',')
		}
		inner := level
		if !flat {
			inner = level + 1
			newLine(b, inner)
		} else if i > 0 && level >= 0 {
			b.WriteByte(' ')
		}
		if n.Shape == Object {
			b.Write(quote(n.Keys[i]))
			b.WriteByte(':')
			if level >= 0 {
				b.WriteByte(' ')
			}
		}
		item.write(b, inner)
	}
	if !flat && len(n.Items) > 0 {
		newLine(b, level)
	}
	b.WriteByte(close)
}

// plainList tells whether n is a list of values that are no containers.
func (n *Node) plainList() bool {
	if n.Shape != Array {
		return false
	}
	for _, item := range n.Items {
		if item.Shape == Object || item.Shape == Array {
			return false
		}
	}
	return true
}

func newLine(b *strings.Builder, level int) {
	b.WriteByte('\n')
	for range level {
		b.WriteString("  ")
	}
}

func quote(s string) []byte {
	q, err := jsontext.AppendQuote(nil, s)
	if err != nil {
		panic("strict: text that is not UTF-8 got into a document: " + err.Error())
	}
	return q
}
