package press

import "ramplan/press/strict"

// A Document is a plan's text read as what it says, whether or not the rules of
// today take it as a plan: what was kept long ago stays readable when a range is
// tightened.
type Document struct{ doc *strict.Node }

// ReadDocument reads a document of the format of plans. It fails only where the text
// is no such document.
func ReadDocument(data []byte) (*Document, Problems) {
	doc, ps := readDocument(data, Format)
	if len(ps) > 0 {
		return nil, ps
	}
	d := &Document{doc}
	if _, err := d.doc.Canonical(); err != nil { // such as a number that is too large for one
		return nil, Problems{{Code: CodeSyntax, Message: "no canonical form: " + err.Error()}}
	}
	return d, nil
}

// Check makes the plan of a document, or tells every fault.
func (d *Document) Check() (*Plan, Problems) { return check(d.doc) }

// Draft gives the document as typed text.
func (d *Document) Draft() *Draft {
	out := &Draft{}
	out.add("", d.doc)
	return out
}

// JSON gives the document as it was given, key by key, laid out for reading.
func (d *Document) JSON() []byte { return d.doc.JSON() }

// Canonical gives the document, as given and without defaults, in the canonical
// form of RFC 8785.
func (d *Document) Canonical() []byte {
	v, err := d.doc.Canonical()
	if err != nil {
		panic("press: a document that was read has no canonical form: " + err.Error())
	}
	return v
}

// Digest names the document: "sha256:" and the SHA-256 of its canonical form.
func (d *Document) Digest() string { return strict.Digest(d.Canonical()) }
