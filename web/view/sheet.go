package view

import (
	"net/url"
	"slices"
	"strconv"
	"strings"

	"ramplan/press/draw"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Sheet is a plan on paper, to be looked at before it is exported.
type Sheet struct {
	Title     Title
	Address   string   // of the plan
	Revision  string   // letter; empty for the draft
	Revisions []string // letters of those that were issued, the newest first
	Size      string
	Sizes     []string
	Pages     int
	Behind    []string // names of the pages behind the first
	Digest    string
}

// drawingLabels name the drawings that can be had alone.
var drawingLabels = map[string]string{"strip": "Decision strip", "force": "Force window", "press": "Press-in force", "cycle": "Cycle"}

// Page gives the page of the sheet.
func (s Sheet) Page(assets page.Assets) page.SheetPage {
	out := page.SheetPage{Assets: assets, Title: s.Title.page(), Address: s.Address, Size: s.Size, Digest: words.ShortDigest(s.Digest), State: "Draft"}
	if s.Revision != "" {
		out.State = "Revision " + s.Revision
	}
	out.Revisions = append(out.Revisions, page.Option{Value: "draft", Label: "The draft", Chosen: s.Revision == ""})
	for _, letter := range s.Revisions {
		out.Revisions = append(out.Revisions, page.Option{Value: letter, Label: "Revision " + letter, Chosen: letter == s.Revision})
	}
	for _, size := range s.Sizes {
		out.Sizes = append(out.Sizes, page.Option{Value: size, Label: strings.ToUpper(size[:1]) + size[1:], Chosen: size == s.Size})
	}
	for i := range s.Pages {
		number := strconv.Itoa(i + 1)
		out.Pages = append(out.Pages, page.PaperPage{
			Image: s.file("sheet.svg", "page", number), Alt: "Page " + number + " of " + strconv.Itoa(s.Pages) + "; its text is on the bench and in the PDF.",
			PNG: s.file("sheet.png", "page", number, "download", ""), SVG: s.file("sheet.svg", "page", number, "download", ""), Number: number,
		})
	}
	for _, name := range words.PaperNames() {
		out.Behind = append(out.Behind, page.BehindPage{
			Name: name, Label: words.PaperTitle(name), Chosen: slices.Contains(s.Behind, name), CSV: s.file("rows/" + name + ".csv"),
		})
	}
	out.PDF = s.file("sheet.pdf", "download", "")
	for _, what := range draw.Names() {
		label, known := drawingLabels[what]
		if !known {
			continue
		}
		d := page.DrawingFiles{Label: label}
		for _, format := range draw.Formats() {
			d.Files = append(d.Files, page.Link{Address: s.file("drawings/"+what+"."+format, "download", ""), Text: strings.ToUpper(format)})
		}
		out.Drawings = append(out.Drawings, d)
	}
	return out
}

// file is the address of a file of the sheet, with what else is asked of it.
func (s Sheet) file(name string, pairs ...string) string {
	v := url.Values{}
	if s.Revision != "" {
		v.Set("revision", s.Revision)
	}
	if strings.HasPrefix(name, "sheet") {
		v.Set("size", s.Size)
		v["behind"] = s.Behind
	}
	for i := 0; i+1 < len(pairs); i += 2 {
		v.Set(pairs[i], pairs[i+1])
	}
	return s.Address + "/" + name + "?" + v.Encode()
}
