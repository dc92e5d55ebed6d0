package paper

import (
	"context"
	"fmt"
	"io"
	"time"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	drawings "ramplan/press/draw/proof"
	"ramplan/press/words"
)

// A Document is one plan on paper, laid out: pages that can be written in any
// format, each with the plan inside.
type Document struct {
	pages   []*canvas.Picture
	names   []string // of the pages, as bookmarks
	title   string
	subject string
	author  string
	date    string // of issue; empty for a draft
	carried carry.Carried
}

// Pages tells how many pages there are.
func (d *Document) Pages() int { return len(d.pages) }

// Page gives a page, counted from 0, as a picture.
func (d *Document) Page(i int) *canvas.Picture { return d.pages[i] }

// Title names the document.
func (d *Document) Title() string { return d.title }

// NewSingle puts one drawing alone into a document.
func NewSingle(what string, p *press.Plan, r *press.Result, width Width, noTitle bool, o SheetOptions) (*Document, error) {
	picture, err := single(what, p, r, float64(width)*canvas.PerMM, noTitle, o)
	if err != nil {
		return nil, err
	}
	return alone(picture, p, r, o), nil
}

// NewStudy puts one drawing of a study alone into a document, with the plan that it is held
// against.
func NewStudy(d drawings.Drawing, s drawings.Subject, width Width, noTitle bool, o SheetOptions) (*Document, error) {
	px := float64(width) * canvas.PerMM
	picture, err := standing(func(form draw.Options) (*canvas.Picture, error) { return d.New(s, form), nil }, px, compactUnder(d.Name), noTitle, o.Identity(s.Plan.Plan, s.Plan))
	if err != nil {
		return nil, err
	}
	return alone(picture, s.Plan.Plan, s.Plan, o), nil
}

// alone is the document of one drawing.
func alone(picture *canvas.Picture, p *press.Plan, r *press.Result, o SheetOptions) *Document {
	source := o.Source
	if source == nil {
		source = p.JSON()
	}
	d := &Document{
		pages: []*canvas.Picture{picture}, names: []string{picture.Title()},
		title: p.Title.Name, subject: picture.Title() + ". " + picture.Description(), author: p.Title.PreparedBy,
		carried: carry.Carried{Plan: source, Digest: r.PlanDigest(), Issue: o.Issue},
	}
	if p.Title.Number != "" {
		d.title = p.Title.Number + " " + d.title
	}
	if o.Issue != nil {
		d.date, d.author = o.Issue.Date, o.Issue.Prepared
	}
	return d
}

// Kinds among the drawings: the card has its own line of what it is, and the strip shows
// readings as they are simulated.
const (
	cardKind  = "card"
	stripKind = "strip"
)

// single makes one drawing that is to stand alone, px wide; 0: as wide as it is drawn.
func single(what string, p *press.Plan, r *press.Result, px float64, noTitle bool, o SheetOptions) (*canvas.Picture, error) {
	if what == cardKind { // which has its own line of what it is
		return wide(draw.NewCardOf(p, r, o.Identity(p, r), draw.Options{}), px), nil
	}
	return standing(func(form draw.Options) (*canvas.Picture, error) {
		if what == stripKind {
			form.Spread = r.PaperSpread()
		}
		return draw.New(what, p, r, form)
	}, px, compactUnder(what), noTitle, o.Identity(p, r))
}

// standing makes a drawing in the form that fits a page, px wide, with the line that says of
// which plan it is; it is narrow under some px.
func standing(of func(draw.Options) (*canvas.Picture, error), px, narrow float64, noTitle bool, id words.Identity) (*canvas.Picture, error) {
	made := func(form draw.Options) (*canvas.Picture, error) {
		d, err := of(form)
		if err != nil {
			return nil, err
		}
		return stamped(wide(d, px), id, enlarged(d, px)), nil
	}
	form := draw.Options{Width: px, Compact: px > 0 && px < narrow}
	d, err := made(form)
	for _, try := range lower(form) {
		if err != nil || px == 0 {
			break
		}
		if _, high := d.Size(); high <= pageHigh(px) {
			break
		}
		form = try
		d, err = made(form)
	}
	if err == nil && noTitle { // in the form that it has with its title
		form.NoTitle = true
		d, err = made(form)
	}
	return d, err
}

// pageHigh is how high a drawing may be at most that is px wide: as a portrait page
// between its margins; on half a landscape page, as that.
func pageHigh(px float64) float64 {
	if mm := px / canvas.PerMM; mm > 100 && mm < 150 {
		return 180 * canvas.PerMM
	}
	return 240 * canvas.PerMM
}

// lower are forms that are less high than the usual one, the best to read first:
// flat, and then with letters down to 1.8 mm, and down to 1.4 mm at last.
func lower(usual draw.Options) []draw.Options {
	var out []draw.Options
	usual.Flat = true
	for _, mm := range []float64{0, 2, 1.8, 1.6, 1.5, 1.4} {
		try := usual
		if mm > 0 {
			try.Width = usual.Width * canvas.Small / canvas.Lettered(mm)
		}
		if try.Width >= usual.Width {
			out = append(out, try)
		}
	}
	return out
}

// enlarged is the scale at which the drawing is px wide.
func enlarged(d *canvas.Picture, px float64) float64 {
	if px == 0 {
		return 1
	}
	return px / d.Width
}

// wide is the drawing px wide; 0: as it is.
func wide(d *canvas.Picture, px float64) *canvas.Picture {
	if px == 0 {
		return d
	}
	return scaled(d, enlarged(d, px))
}

// compactUnder is the width, px, under which a drawing takes its narrow form.
func compactUnder(what string) float64 {
	if what == "strip" {
		return draw.StripLeast * sheetScale
	}
	return draw.ChartLeast * sheetScale
}

// scaled is the same drawing, k times as large.
func scaled(d *canvas.Picture, k float64) *canvas.Picture {
	large := d.Layout
	large.Width, large.Height = k*d.Width, k*d.Height
	large.Paint = func(p *canvas.Pen) { p.Within(0, 0, k, d.Paint) }
	return canvas.NewPicture(large)
}

// Write writes the document in one of [Formats]: the whole of it as PDF, one
// page, counted from 0, as SVG or PNG.
func (d *Document) Write(w io.Writer, format string, page int) error {
	return d.WriteUntil(context.Background(), w, format, page)
}

// WriteUntil writes the document as [Document.Write] does, and gives up when the
// context ends, as nobody waits for it any more.
func (d *Document) WriteUntil(ctx context.Context, w io.Writer, format string, page int) error {
	switch format {
	case "pdf":
		return writePDF(ctx, w, d)
	case "png":
		return d.pages[page].PNGCarrying(ctx, w, carry.Keyword, string(d.carried.Encode()))
	case "svg":
		return d.pages[page].SVGCarrying(w, d.carried.Element())
	}
	return canvas.CheckFormat(format)
}

// WritePDF writes documents one behind the other into one file, with a bookmark
// for each page and an attachment for each plan. The same documents give the same
// bytes.
func WritePDF(w io.Writer, docs ...*Document) error {
	return writePDF(context.Background(), w, docs...)
}

func writePDF(ctx context.Context, w io.Writer, docs ...*Document) error {
	if len(docs) == 0 {
		return fmt.Errorf("draw: a PDF needs a page")
	}
	file := canvas.NewFile(docs[0].title, docs[0].subject)
	if len(docs) > 1 {
		file = canvas.NewFile(say.Plans(len(docs)), "")
	}
	file.By(docs[0].author, docs[0].carried.Digest)
	if at, err := time.Parse(time.DateOnly, docs[0].date); err == nil {
		file.Dated(at)
	}
	var inside []canvas.Attachment
	for i, d := range docs {
		for k, page := range d.pages {
			if err := ctx.Err(); err != nil {
				return err
			}
			file.Add(page)
			if len(docs) > 1 && k == 0 {
				file.Bookmark(d.title, 0)
			}
			level := 0
			if len(docs) > 1 {
				level = 1
			}
			file.Bookmark(d.names[k], level)
		}
		name := carry.FileName
		if len(docs) > 1 {
			name = fmt.Sprintf("%03d-%s", i+1, name)
		}
		inside = append(inside, canvas.Attachment{Name: name, Desc: say.ThePlan(d.carried.Digest), Content: d.carried.Encode()})
	}
	file.Attach(inside)
	return file.Write(w)
}
