package press

// JSON gives the document as it was given, key by key, laid out for reading.
func (p *Plan) JSON() []byte { return p.Document().JSON() }

// Canonical gives the document, as given and without defaults, in the canonical
// form of RFC 8785.
func (p *Plan) Canonical() []byte { return p.Document().Canonical() }

// Digest names the plan: "sha256:" and the SHA-256 of its canonical form.
func (p *Plan) Digest() string { return p.Document().Digest() }

// Document gives the document that the plan was made of.
func (p *Plan) Document() *Document { return &Document{p.doc} }
