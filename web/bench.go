package web

import (
	"net/http"

	"ramplan/press"
	"ramplan/static"
	"ramplan/web/page"
	"ramplan/web/view"
)

// openExample answers GET /: the bench with the example plan.
func openExample(w http.ResponseWriter, r *http.Request) error {
	b, err := exampleBench()
	if err != nil {
		return err
	}
	return b.show(w, r)
}

// recompute answers POST /: it does what the pressed button wants of the entries
// and shows them again with what they lead to.
func recompute(w http.ResponseWriter, r *http.Request) error {
	p, err := readForm(r)
	if err != nil {
		return err
	}
	b, err := p.obey()
	if err != nil {
		return err
	}
	return b.show(w, r)
}

// A bench is the entries, and the last plan that they made.
type bench struct {
	typed   view.Typed
	last    *press.Plan
	before  string
	notices []page.Notice
	paste   *page.Paste
	fresh   bool // nothing was asked of these entries yet
	refused bool // what was asked for was not done
}

// partHeader is the request header by which a script asks for the body of the
// page alone.
const partHeader = "Ramplan-Part"

func exampleBench() (*bench, error) {
	plan, faults := press.Decode(static.Example())
	if len(faults) > 0 {
		return nil, faults
	}
	return &bench{typed: view.Take(plan.Draft().Entries, nil), last: plan}, nil
}

// show computes the plan, or the last valid one, and answers with the page.
func (b *bench) show(w http.ResponseWriter, r *http.Request) error {
	plan, faults := b.typed.Draft.Check()
	status := http.StatusOK
	if plan != nil {
		b.last = plan
	}
	if b.refused || plan == nil && !b.fresh {
		status = http.StatusUnprocessableEntity
	}
	v := view.Bench{Typed: b.typed, Faults: faults, Plan: b.last, Fresh: b.fresh, Notices: b.notices, Before: b.before, Paste: b.paste}
	if b.last != nil {
		v.Result = press.Evaluate(b.last)
		drawings, err := drawn(b.last, v.Result)
		if err != nil {
			return err
		}
		v.Drawings = drawings
	}
	w.Header().Add("Vary", partHeader)
	if r.Header.Get(partHeader) == "bench" {
		return show(w, r, status, page.BenchBody(v.Page(assets.page())))
	}
	return show(w, r, status, page.BenchPage(v.Page(assets.page())))
}
