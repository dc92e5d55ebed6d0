package press

import (
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// JSON gives the document as it was given, key by key, laid out for reading.
func (p *Plan) JSON() []byte { return p.Document().JSON() }

// Canonical gives the document, as given and without defaults, in the canonical
// form of RFC 8785.
func (p *Plan) Canonical() []byte { return p.Document().Canonical() }

// Digest names the plan: "sha256:" and the SHA-256 of its canonical form.
func (p *Plan) Digest() string { return p.Document().Digest() }

// Document gives the document that the plan was made of.
func (p *Plan) Document() *Document { return &Document{p.doc} }

// write appends JSON text. A negative level writes it on one line; otherwise
// objects and lists of objects are laid out at that level, short lists of plain
// values stay on a line.
func (n *node) write(b *strings.Builder, level int) {
	switch n.shape {
	case object, array:
		n.writeItems(b, level)
	case number:
		b.WriteString(n.text)
	case boolean:
		if n.flag {
			b.WriteString("true")
		} else {
			b.WriteString("false")
		}
	case text:
		b.Write(quote(n.text))
	case null:
		b.WriteString("null")
	}
}

func (n *node) writeItems(b *strings.Builder, level int) {
	open, close := byte('{'), byte('}')
	if n.shape == array {
		open, close = '[', ']'
	}
	flat := level < 0 || n.plainList()
	b.WriteByte(open)
	for i, item := range n.items {
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
		if n.shape == object {
			b.Write(quote(n.keys[i]))
			b.WriteByte(':')
			if level >= 0 {
				b.WriteByte(' ')
			}
		}
		item.write(b, inner)
	}
	if !flat && len(n.items) > 0 {
		newLine(b, level)
	}
	b.WriteByte(close)
}

// plainList tells whether n is a list of values that are no containers.
func (n *node) plainList() bool {
	if n.shape != array {
		return false
	}
	for _, item := range n.items {
		if item.shape == object || item.shape == array {
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
		panic("press: text that is not UTF-8 got into a document: " + err.Error())
	}
	return q
}
