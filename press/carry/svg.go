package carry

import (
	"bytes"
	"encoding/base64"
	"encoding/xml"
	"fmt"
	"io"
	"strings"
)

// Namespace and the name of the element that holds a document inside an SVG.
const (
	Namespace = "urn:ramplan:sheet:1"
	element   = "sheet"
)

// Element is the metadata of an SVG that carries the document. Base64 keeps every
// byte, whatever an editor does to line ends and blanks.
func (c Carried) Element() string {
	return fmt.Sprintf("<metadata><%s xmlns=%q>%s</%s></metadata>", element, Namespace, base64.StdEncoding.EncodeToString(c.Encode()), element)
}

func isSVG(data []byte) bool {
	return bytes.HasPrefix(trimmed(data[:min(len(data), 1024)]), []byte("<"))
}

// readSVG looks for the element wherever it stands and whatever prefix it has.
func readSVG(data []byte) ([]Carried, error) {
	d := xml.NewDecoder(bytes.NewReader(trimmed(data)))
	d.Strict = true
	d.CharsetReader = func(string, io.Reader) (io.Reader, error) { return nil, ErrKind }
	var all []Carried
	var fault error
	first := true
	for len(all) < maxPlans {
		token, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			if first {
				return nil, ErrKind
			}
			return all, graver(fault, ErrDamaged)
		}
		start, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		if first && start.Name.Local != "svg" {
			return nil, ErrKind
		}
		first = false
		if start.Name.Local != element || !strings.EqualFold(start.Name.Space, Namespace) {
			continue
		}
		c, err := inElement(d)
		if err != nil {
			fault = graver(fault, err)
			continue
		}
		all = append(all, c)
	}
	if first {
		return nil, ErrKind
	}
	return all, fault
}

// inElement reads the text of the element that was just opened.
func inElement(d *xml.Decoder) (Carried, error) {
	var text []byte
	for {
		token, err := d.Token()
		if err != nil {
			return Carried{}, ErrDamaged
		}
		switch t := token.(type) {
		case xml.CharData:
			if len(text)+len(t) > 2*maxDocument {
				return Carried{}, ErrBomb
			}
			text = append(text, t...)
		case xml.StartElement:
			return Carried{}, ErrDamaged
		case xml.EndElement:
			packed := bytes.Join(bytes.Fields(text), nil)
			plain, err := base64.StdEncoding.DecodeString(string(packed))
			if err != nil {
				return Carried{}, ErrDamaged
			}
			return decode(bytes.NewReader(plain))
		}
	}
}
