package web

import (
	"bytes"
	"context"
	"errors"
	"net/http"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/carry"
	"ramplan/press/draw"
	"ramplan/press/draw/paper"
	"ramplan/press/issue"
	"ramplan/press/words"
	"ramplan/web/page"
	"ramplan/web/view"
)

// sheetRoutes are those of what a plan looks like on paper.
func (s *site) sheetRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/plans/{id}/sheet", answer(s.showSheet))                      // the pages, before they are exported
	r.Method(http.MethodGet, "/plans/{id}/sheet.{format}", answer(s.sendSheet))             // the sheet as a file
	r.Method(http.MethodGet, "/plans/{id}/rows/{name}.csv", answer(s.sendRows))             // a page behind it, as rows
	r.Method(http.MethodGet, "/plans/{id}/drawings/{what}.{format}", answer(s.sendDrawing)) // one drawing alone
}

// A printed plan is a draft or an issued revision as it goes on paper.
type printed struct {
	head  archive.Head
	plan  *press.Plan
	issue *carry.Issue // nil: a draft
	old   string       // by which revision it is superseded, in words; empty where it is the last
	proof *paper.Proof // what is known of the station's proof; nil where nothing is asked of it
}

// printedOf finds what a request wants on paper: the revision that it names, or
// the draft.
func (s *site) printedOf(r *http.Request) (printed, error) {
	id, err := planID(r)
	if err != nil {
		return printed{}, err
	}
	out := printed{}
	if out.head, err = s.store.Get(r.Context(), id); err != nil {
		return out, err
	}
	letter := r.URL.Query().Get("revision")
	if letter == "" || letter == draftSide {
		plan, faults := out.head.Draft.Check()
		if plan == nil {
			return out, faulty{refusal{http.StatusUnprocessableEntity, say.DraftNotForPaper(), lines(faults)}, faults}
		}
		out.plan = plan
		if out.proof, err = s.proofOf(r, id, "", plan, recordAsked(r)); err != nil {
			return out, err
		}
		if letter == draftSide || plan.Digest() != out.head.Issued {
			return out, nil
		}
		last, err := s.store.LastIssued(r.Context(), id) // nothing was changed since: it is what was issued
		if err != nil {
			return out, err
		}
		letter = last.Letter
	}
	rev, err := s.revision(r.Context(), id, letter)
	if err != nil {
		return out, err
	}
	out.plan, out.issue = rev.Plan, rev.Paper()
	if out.old, err = s.supersededBy(r.Context(), id, rev.Letter); err != nil {
		return out, err
	}
	out.proof, err = s.proofOf(r, id, rev.Letter, rev.Plan, out.old == "" || recordAsked(r))
	return out, err
}

// supersededBy says by which revision another one is superseded, as paper says it;
// nothing where it is the last.
func (s *site) supersededBy(ctx context.Context, id archive.ID, letter string) (string, error) {
	last, err := s.store.LastIssued(ctx, id)
	if err != nil || last.Letter == letter {
		return "", err
	}
	return say.SupersededBy(last.Letter, last.At.Local().Format(time.DateOnly)), nil
}

// revision gives an issued revision by its letter.
func (s *site) revision(ctx context.Context, id archive.ID, letter string) (issue.Revision, error) {
	rev, err := s.store.Revision(ctx, id, strings.ToUpper(letter))
	if errors.Is(err, archive.ErrNotFound) {
		return rev, refusal{http.StatusNotFound, say.NoSuchRevision(), nil}
	}
	return rev, err
}

// anyRevision gives an issued revision also where today's rules do not take its plan.
func (s *site) anyRevision(ctx context.Context, id archive.ID, letter string) (issue.Revision, error) {
	rev, err := s.revision(ctx, id, letter)
	if old := (*archive.NotTaken)(nil); errors.As(err, &old) && rev.Document != nil {
		return rev, nil
	}
	return rev, err
}

// paperOf is the size of paper that a request names.
func paperOf(r *http.Request) (string, error) {
	size := r.URL.Query().Get("size")
	if size == "" {
		return paper.Papers[0].Name, nil
	}
	for _, p := range paper.Papers {
		if p.Name == size {
			return size, nil
		}
	}
	return "", refusal{http.StatusBadRequest, say.NoSuchSize(), nil}
}

// widthOf is the width of a drawing that a request names, and as it names it.
func widthOf(r *http.Request) (paper.Width, string, error) {
	text := r.URL.Query().Get("width")
	if text == "" {
		return 0, "", nil
	}
	width, err := paper.ParseWidth(text)
	if err != nil {
		return 0, "", refusal{http.StatusBadRequest, capital(strings.TrimPrefix(err.Error(), "draw: ")) + ".", nil}
	}
	return width, text, nil
}

// untitled tells whether a request wants a drawing without its title.
func untitled(r *http.Request) bool { return r.URL.Query().Get("title") == "no" }

// showSheet answers GET /plans/{id}/sheet.
func (s *site) showSheet(w http.ResponseWriter, r *http.Request) error {
	p, err := s.printedOf(r)
	if err != nil {
		return err
	}
	size, err := paperOf(r)
	if err != nil {
		return err
	}
	issued, err := s.store.Revisions(r.Context(), p.head.ID)
	if err != nil {
		return err
	}
	doc, names := p.sheet(r, size)
	v := view.Sheet{Behind: names, Papers: append(words.PapersOf(p.plan), paper.RecordPage), Title: titleOf(p.head), Address: planPath(p.head.ID, ""), Size: size, Pages: doc.Pages(), Digest: p.plan.Digest()}
	if _, v.Width, err = widthOf(r); err != nil {
		return err
	}
	v.NoTitle = untitled(r)
	result := press.Evaluate(p.plan)
	for _, what := range draw.Names() {
		if draw.Applies(what, result) {
			v.Drawings = append(v.Drawings, what)
		}
	}
	for _, size := range paper.Papers {
		v.Sizes = append(v.Sizes, size.Name)
	}
	for _, rev := range issued {
		v.Revisions = append(v.Revisions, rev.Letter)
	}
	if p.issue != nil {
		v.Revision = p.issue.Revision
	}
	return show(w, r, http.StatusOK, page.SheetOf(v.Page(assets.sheetPage())))
}

// sheet lays out the sheet with the pages behind it that a request names.
func (p printed) sheet(r *http.Request, size string) (*paper.Document, []string) {
	result := press.Evaluate(p.plan)
	o := p.options()
	o.Paper = size
	var names []string
	for _, name := range words.PaperNames() {
		if slices.Contains(r.URL.Query()["behind"], name) {
			table, _ := o.Table(name, p.plan, result)
			o.Pages, names = append(o.Pages, table), append(names, name)
		}
	}
	if recordAsked(r) {
		o.Record, names = true, append(names, paper.RecordPage)
	}
	return paper.NewSheet(p.plan, result, o), names
}

// allRows names the rows of all pages behind the sheet in one file.
const allRows = "all"

// sendRows answers GET /plans/{id}/rows/{name}.csv: a page behind the sheet as rows,
// or all of them.
func (s *site) sendRows(w http.ResponseWriter, r *http.Request) error {
	p, err := s.printedOf(r)
	if err != nil {
		return err
	}
	separation, err := separationOf(r)
	if err != nil {
		return err
	}
	name := chi.URLParam(r, "name")
	names := []string{name}
	if name == allRows {
		names = words.PapersOf(p.plan)
	}
	result := press.Evaluate(p.plan)
	var tables []words.Table
	for _, n := range names {
		table, known := p.options().Table(n, p.plan, result)
		if !known {
			return notFound(w, r)
		}
		tables = append(tables, table)
	}
	sendCSV(w, p.stem()+"-"+name, words.RowsFile(tables, p.identity(result), separation))
	return nil
}

// separationOf is what stands between the cells of a file of rows, as a request names
// it.
func separationOf(r *http.Request) (words.Separation, error) {
	s, known := words.SeparationOf(r.URL.Query().Get("separator"))
	if !known {
		return s, refusal{http.StatusBadRequest, say.NoSuchSeparator(strings.Join(words.SeparationNames(), " and ")), nil}
	}
	return s, nil
}

// sendCSV answers with a file of rows.
func sendCSV(w http.ResponseWriter, name string, file []byte) {
	h := w.Header()
	h.Set("Content-Type", "text/csv; charset=utf-8")
	h.Set("Cache-Control", "private, no-cache")
	h.Set("Content-Disposition", `attachment; filename="`+name+`.csv"`)
	_, _ = w.Write(file)
}

// options say of which state it is, on paper and in rows.
func (p printed) options() paper.SheetOptions {
	return paper.SheetOptions{Issue: p.issue, Superseded: p.old, Day: say.Today(), Proof: p.proof}
}

// identity tells which plan it is where its rows lie alone.
func (p printed) identity(r *press.Result) words.Identity {
	return p.options().Identity(p.plan, r)
}

// stem starts the name of a file of what is printed.
func (p printed) stem() string {
	name, state := p.plan.Title.Number, draftSide
	if name == "" {
		name = p.plan.Title.Name
	}
	if p.issue != nil {
		state = p.issue.Revision
	}
	return fileStem(name) + "-" + state
}

// sendSheet answers GET /plans/{id}/sheet.{format}.
func (s *site) sendSheet(w http.ResponseWriter, r *http.Request) error {
	p, err := s.printedOf(r)
	if err != nil {
		return err
	}
	size, err := paperOf(r)
	if err != nil {
		return err
	}
	return send(w, r, p, "sheet", func() (*paper.Document, error) {
		doc, _ := p.sheet(r, size)
		return doc, nil
	})
}

// sendDrawing answers GET /plans/{id}/drawings/{what}.{format}.
func (s *site) sendDrawing(w http.ResponseWriter, r *http.Request) error {
	p, err := s.printedOf(r)
	if err != nil {
		return err
	}
	what := chi.URLParam(r, "what")
	if !slices.Contains(draw.Names(), what) {
		return notFound(w, r)
	}
	width, _, err := widthOf(r)
	if err != nil {
		return err
	}
	return send(w, r, p, what, func() (*paper.Document, error) {
		return paper.NewSingle(what, p.plan, press.Evaluate(p.plan), width, untitled(r), p.options())
	})
}

// fileTypes are the formats in which paper is sent.
var fileTypes = map[string]string{"svg": "image/svg+xml", "png": "image/png", "pdf": "application/pdf"}

// aloneSVG is the policy of a drawing that is sent alone.
const aloneSVG = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; frame-ancestors 'none'"

// send answers with a document in the format that the request names. It is laid out
// and drawn in turn, and sent when the turn is over.
func send(w http.ResponseWriter, r *http.Request, p printed, what string, lay func() (*paper.Document, error)) error {
	format := chi.URLParam(r, "format")
	kind, known := fileTypes[format]
	number := 1
	if text := r.URL.Query().Get("page"); text != "" {
		var err error
		if number, err = strconv.Atoi(text); err != nil {
			known = false
		}
	}
	if !known {
		return notFound(w, r)
	}
	var b bytes.Buffer
	err := board.take(r.Context(), func() error {
		doc, err := lay()
		if err != nil {
			return err
		}
		if number < 1 || number > doc.Pages() {
			return notFound(w, r)
		}
		return doc.WriteUntil(r.Context(), &b, format, number-1)
	})
	if err != nil {
		return err
	}
	name := p.stem() + "-" + what
	if number > 1 {
		name += "-" + strconv.Itoa(number)
	}
	h := w.Header()
	h.Set("Content-Type", kind)
	h.Set("Cache-Control", "private, no-cache")
	disposition := "inline"
	if r.URL.Query().Has("download") {
		disposition = "attachment"
	}
	h.Set("Content-Disposition", disposition+`; filename="`+name+"."+format+`"`)
	if format == "svg" {
		// It stands alone: its own face and style are inside.
		h.Set("Content-Security-Policy", aloneSVG)
	}
	_, _ = w.Write(b.Bytes())
	return nil
}
