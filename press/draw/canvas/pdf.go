package canvas

import (
	"bytes"
	"encoding/binary"
	"io"
	"regexp"
	"time"
	"unicode/utf16"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"codeberg.org/go-pdf/fpdf"
)

// PDF writes the drawing as PDF: one page of its size, with real text in
// embedded fonts. The same drawing gives the same bytes.
func (d *Picture) PDF(w io.Writer) error {
	f := NewFile(d.Layout.Title, d.Desc)
	f.Add(d)
	return f.Write(w)
}

// A file is a PDF of several pages.
type file struct{ doc *fpdf.Fpdf }

// NewFile begins a PDF that holds a title and, in words, what it shows.
func NewFile(title, subject string) *file {
	return &file{newDocument(title, subject)}
}

// Add puts a picture on a page of its own size.
func (f *file) Add(d *Picture) {
	width, height := d.Size()
	d.On(addPage(f.doc, width, height))
}

// By names the author, and what the file is found by.
func (f *file) By(author, keywords string) {
	f.doc.SetAuthor(textString(author), false)
	f.doc.SetKeywords(textString(keywords), false)
}

// Dated gives the file a date; without one it says none.
func (f *file) Dated(at time.Time) {
	f.doc.SetCreationDate(at)
	f.doc.SetModificationDate(at)
}

// Bookmark names the page that was added last, at a level from 0 on.
func (f *file) Bookmark(name string, level int) { f.doc.Bookmark(basicPlane(name), level, 0) }

// An Attachment is a file that a PDF carries inside.
type Attachment struct {
	Name, Desc string
	Content    []byte
}

// Attach puts files inside.
func (f *file) Attach(list []Attachment) {
	var inside []fpdf.Attachment
	for _, a := range list {
		inside = append(inside, fpdf.Attachment{Content: a.Content, Filename: a.Name, Description: a.Desc})
	}
	f.doc.SetAttachments(inside)
}

// Write writes the file.
func (f *file) Write(w io.Writer) error { return output(f.doc, w) }

// output writes a document whose fonts say that they are cut down, as parts of a
// font must: six letters and a plus before the name (ISO 32000-2, 9.9.2). The
// library gives a name of its own, which is as long. A file without a date says none.
func output(doc *fpdf.Fpdf, w io.Writer) error {
	var b bytes.Buffer
	if err := doc.Output(&b); err != nil {
		return err
	}
	out := bytes.ReplaceAll(b.Bytes(), []byte("/utf8"+pdfFamily), []byte("/RMPLAN+Sheet"))
	if doc.GetCreationDate().Equal(bornAt) {
		out = undated.ReplaceAllFunc(out, func(date []byte) []byte { return bytes.Repeat([]byte(" "), len(date)) })
	}
	_, err := w.Write(out)
	return err
}

// points is the size of a px in the unit of PDF.
const points = 72.0 / pxPerInch

// bornAt is the date of a file that has none, so that bytes repeat. The library wants one;
// [output] puts spaces in its place, which moves nothing: both dates may be left out of a
// file (ISO 32000-2, 14.3.3).
var bornAt = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

var undated = regexp.MustCompile(`/(CreationDate|ModDate) \(D:20000101000000\)`)

// pdfFamily is the name of the fonts while a document is made; see [output].
const pdfFamily = "xx+sheet"

func newDocument(title, subject string) *fpdf.Fpdf {
	doc := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt"})
	doc.SetMargins(0, 0, 0)
	doc.SetAutoPageBreak(false, 0)
	doc.SetCatalogSort(true)
	doc.SetCreationDate(bornAt)
	doc.SetModificationDate(bornAt)
	doc.SetTitle(textString(title), false)
	doc.SetSubject(textString(subject), false)
	doc.SetCreator("ramplan", false)
	doc.SetProducer("ramplan", false)
	doc.SetLang("en")
	doc.AddUTF8FontFromBytes(pdfFamily, "", liberationsansregular.TTF)
	doc.AddUTF8FontFromBytes(pdfFamily, "B", liberationsansbold.TTF)
	return doc
}

// addPage adds a page of a size in px and gives a canvas for it.
func addPage(doc *fpdf.Fpdf, w, h float64) *pdf {
	doc.AddPageFormat("P", fpdf.SizeType{Wd: w * points, Ht: h * points})
	doc.SetLineJoinStyle("miter")
	doc.RawWriteStr("4 M\n") // the miter limit of SVG
	return &pdf{newSurface(w, h), doc}
}

// textString is a text as a PDF document keeps it: UTF-16, of any script
// (ISO 32000-2, 7.9.2.2). The library's own conversion ends at the basic plane.
func textString(s string) string {
	b := []byte{0xFE, 0xFF}
	for _, unit := range utf16.Encode([]rune(s)) {
		b = binary.BigEndian.AppendUint16(b, unit)
	}
	return string(b)
}
