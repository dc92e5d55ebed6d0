package web

import (
	"bytes"
	"net/http"
	"strconv"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/web/page"
	"ramplan/web/view"
)

// faultRoutes are those of the fault catalogue.
func faultRoutes(r chi.Router) {
	r.Method(http.MethodGet, "/faults", answer(exampleFaults)) // of the example plan
	r.Method(http.MethodPost, "/faults", answer(showFaults))   // of the plan in the form
}

// exampleFaults answers GET /faults.
func exampleFaults(w http.ResponseWriter, r *http.Request) error {
	b, err := exampleBench()
	if err != nil {
		return err
	}
	return b.faults(w, r, "")
}

// showFaults answers POST /faults: the catalogue of the plan in the form, or of
// the last valid one, with every entry carried along.
func showFaults(w http.ResponseWriter, r *http.Request) error {
	p, err := readForm(r)
	if err != nil {
		return err
	}
	b := &bench{typed: p.typed, before: p.before}
	if p.last != "" {
		b.last, _ = press.Decode([]byte(p.last)) // carried by the page; a broken one is no plan
	}
	return b.faults(w, r, p.paste)
}

// faults answers with the fault catalogue of a bench.
func (b *bench) faults(w http.ResponseWriter, r *http.Request, paste string) error {
	plan, faults := b.typed.Draft.Check()
	status := http.StatusOK
	if plan != nil {
		b.last = plan
	} else {
		status = http.StatusUnprocessableEntity
	}
	v := view.FaultsPage{Typed: b.typed, Faults: faults, Plan: b.last, Before: b.before, Paste: paste}
	if b.last != nil {
		v.Result = press.Evaluate(b.last)
		strips, err := minis(b.last, v.Result)
		if err != nil {
			return err
		}
		v.Strips = strips
	}
	return show(w, r, status, page.FaultsOf(v.Page(assets.plainPage())))
}

// minis draws the small strip of every row of the catalogue.
func minis(p *press.Plan, r *press.Result) ([]string, error) {
	all := draw.NewMinis(p, r)
	out := make([]string, len(r.Faults))
	for i, row := range r.Faults {
		var svg bytes.Buffer
		if err := all.Row(row, draw.Options{ID: "strip-" + strconv.Itoa(i+1)}).SVG(&svg); err != nil {
			return nil, err
		}
		out[i] = svg.String()
	}
	return out, nil
}

// plainPage gives the addresses of what the pages beside the bench load: they
// work without a script.
func (l library) plainPage() page.Assets {
	a := l.page()
	a.Scripts = nil
	a.Styles = append(a.Styles, l.address("css/glossary.css"), l.address("css/faults.css"))
	return a
}
