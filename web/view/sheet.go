package view

import (
	"net/url"
	"slices"
	"strconv"
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/paper"
	"ramplan/press/words"
	"ramplan/press/words/screen"
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
	Papers    []string // names of all that there are
	Drawings  []string // names of the drawings that the plan has
	Digest    string
	Width     string // of a drawing alone, as it was asked for; empty: as it is drawn
	NoTitle   bool   // without its title
}

// drawingLabels name the drawings that can be had alone, where the plan has them.
var drawingLabels = map[string]func(screen.Words) string{"strip": screen.Words.DecisionStrip, "force": screen.Words.ForceWindow, "press": screen.Words.PressInForce, "cycle": screen.Words.Cycle, "run": screen.Words.Run, "probe": screen.Words.Probe,
	"shift": screen.Words.Shift, "spread": screen.Words.Spread, "wear": screen.Words.Wear}

// Page gives the page of the sheet.
func (s Sheet) Page(assets page.Assets) page.SheetPage {
	out := page.SheetPage{Assets: assets, Title: s.Title.page(), Address: s.Address, Size: s.Size, Digest: words.ShortDigest(s.Digest), State: "Draft"}
	if s.Revision != "" {
		out.State = "Revision " + s.Revision
	}
	if len(s.Revisions) > 0 && s.Revision != "" && s.Revision != s.Revisions[0] {
		last := s.Revisions[0]
		out.Superseded = say.SaysSuperseded(last)
		out.Last = page.Link{Text: say.SheetOfRevision(last), Address: s.Address + "/sheet?revision=" + last}
	}
	out.Revisions = append(out.Revisions, page.Option{Value: "draft", Label: say.ThatDraft(), Chosen: s.Revision == ""})
	for _, letter := range s.Revisions {
		out.Revisions = append(out.Revisions, page.Option{Value: letter, Label: "Revision " + letter, Chosen: letter == s.Revision})
	}
	for _, size := range s.Sizes {
		out.Sizes = append(out.Sizes, page.Option{Value: size, Label: strings.ToUpper(size[:1]) + size[1:], Chosen: size == s.Size})
	}
	for i := range s.Pages {
		number := strconv.Itoa(i + 1)
		out.Pages = append(out.Pages, page.PaperPage{
			Image: s.file("sheet.svg", "page", number), Alt: say.PageOfSheet(number, s.Pages),
			PNG: s.file("sheet.png", "page", number, "download", ""), SVG: s.file("sheet.svg", "page", number, "download", ""), Number: number,
		})
	}
	for _, name := range s.Papers {
		out.Behind = append(out.Behind, page.BehindPage{
			Name: name, Label: paperTitle(name), Chosen: slices.Contains(s.Behind, name),
		})
		if name == paper.RecordPage { // which is drawn, and no rows of the plan
			continue
		}
		out.Rows = append(out.Rows, page.RowsFiles{Label: words.PaperTitle(name), Files: s.rows(name)})
	}
	var ways []string
	for _, way := range words.Separations {
		ways = append(ways, "with "+way.Label)
	}
	out.Separated = strings.Join(ways, say.Or())
	out.Rows = append(out.Rows, page.RowsFiles{Label: say.AllInOneFile(), Files: s.rows("all")})
	out.PDF = s.Address + "/sheet.pdf" // with what is ticked in its form
	for _, what := range draw.Names() {
		label, known := drawingLabels[what]
		if !known || !slices.Contains(s.Drawings, what) {
			continue
		}
		d := page.DrawingFiles{Label: label(say), Image: s.drawing(what + ".svg")}
		for _, format := range canvas.Formats() {
			d.Files = append(d.Files, page.Link{Address: s.Address + "/drawings/" + what + "." + format, Text: strings.ToUpper(format)})
		}
		out.Drawings = append(out.Drawings, d)
	}
	out.Widths, out.NoTitle, out.Kept = s.widths(), s.NoTitle, s.kept()
	return out
}

// paperTitle names a page behind the sheet.
func paperTitle(name string) string {
	if name == paper.RecordPage {
		return sayProof.RecordName()
	}
	return words.PaperTitle(name)
}

// rows are the files of a page's rows, one for each way to separate them.
func (s Sheet) rows(name string) []page.Link {
	var out []page.Link
	for i, way := range words.Separations {
		l := page.Link{Address: s.file("rows/" + name + ".csv"), Text: "with " + way.Name + "s"}
		if i > 0 {
			l.Address = s.file("rows/"+name+".csv", "separator", way.Name)
		}
		out = append(out, l)
	}
	return out
}

// widths are what a drawing alone can be as wide as.
func (s Sheet) widths() []page.Option {
	out := []page.Option{{Label: say.AsItIsDrawn(), Chosen: s.Width == ""}}
	for _, w := range paper.Widths {
		out = append(out, page.Option{Value: w.Name, Label: w.Name + ", " + words.Unit(words.Trimmed(float64(w.MM), 0), "mm"), Chosen: s.Width == w.Name})
	}
	return out
}

// kept is what is asked of the pages while drawings are asked for.
func (s Sheet) kept() []page.Hidden {
	out := []page.Hidden{{Name: "size", Value: s.Size}}
	if s.Revision != "" {
		out = append(out, page.Hidden{Name: "revision", Value: s.Revision})
	}
	for _, name := range s.Behind {
		out = append(out, page.Hidden{Name: "behind", Value: name})
	}
	return out
}

// drawing is the address of a drawing alone.
func (s Sheet) drawing(file string) string {
	var pairs []string
	if s.Width != "" {
		pairs = append(pairs, "width", s.Width)
	}
	if s.NoTitle {
		pairs = append(pairs, "title", "no")
	}
	return s.file("drawings/"+file, pairs...)
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
