package web

import (
	"bytes"
	"net/http"
	"strconv"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/web/page"
	"ramplan/web/view"
)

// showFaults answers GET /plans/{id}/faults: the catalogue of the draft, or of
// the last sound plan that it was.
func (s *site) showFaults(w http.ResponseWriter, r *http.Request) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	id := head.ID
	plan, faults := head.Draft.Check()
	status := http.StatusOK
	if plan == nil {
		status = http.StatusUnprocessableEntity
		if plan, err = s.store.LastPlan(r.Context(), id, head.State); err != nil {
			return err
		}
	}
	v := view.FaultsPage{Typed: view.Take(head.Draft.Entries, nil), Faults: faults, Plan: plan, Address: planPath(id, "")}
	if plan != nil {
		v.Result = press.Evaluate(plan)
		if v.Strips, err = minis(plan, v.Result); err != nil {
			return err
		}
	}
	foot, err := s.standingFoot(r.Context(), head, plan, v.Result, len(faults) > 0)
	if err != nil {
		return err
	}
	return show(w, r, status, page.FaultsOf(v.Page(assets.plainPage().With(foot))))
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
