package web

import (
	"bytes"
	"context"
	"net/http"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw"
	"ramplan/web/page"
	"ramplan/web/view"
)

// draftSide names the working draft where sides are compared.
const draftSide = "draft"

// compare answers GET /plans/{id}/compared?from=A&to=draft: entry by entry and
// figure by figure, with the two strips under one another.
func (s *site) compare(w http.ResponseWriter, r *http.Request) error {
	id, err := planID(r)
	if err != nil {
		return err
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	issued, err := s.store.Revisions(r.Context(), id)
	if err != nil {
		return err
	}
	q := r.URL.Query()
	from, to := q.Get("from"), q.Get("to")
	if from == "" && len(issued) > 0 {
		from = issued[0].Letter
	}
	if to == "" {
		to = draftSide
	}
	v := view.Compared{Title: titleOf(head), Address: planPath(id, "")}
	for _, rev := range issued {
		v.Sides = append(v.Sides, rev.Letter)
	}
	was, err := s.side(r.Context(), head, from, "before")
	if err != nil {
		return err
	}
	is, err := s.side(r.Context(), head, to, "after")
	if err != nil {
		return err
	}
	v.From, v.To = was.Side, is.Side
	v.Changes = changes(was.draft, is.draft)
	return show(w, r, http.StatusOK, page.ComparedOf(v.Page(assets.shelfPage())))
}

// A side is one of two that are compared.
type side struct {
	view.Side
	draft *press.Draft
}

func (s *site) side(ctx context.Context, head archive.Head, name, id string) (side, error) {
	out := side{Side: view.Side{Name: name}}
	if name == draftSide || name == "" {
		out.Name = draftSide
		out.draft = head.Draft
		out.Plan, _ = head.Draft.Check()
	} else {
		rev, err := s.revision(ctx, head.ID, name)
		if err != nil {
			return out, err
		}
		out.Name, out.At, out.Plan, out.draft = rev.Letter, rev.At, rev.Plan, rev.Plan.Draft()
	}
	if out.Plan == nil {
		return out, nil
	}
	out.Result = press.Evaluate(out.Plan)
	var svg bytes.Buffer
	if err := draw.NewStrip(out.Plan, out.Result, draw.Options{Width: 1100, Brief: true, ID: "strip-" + id}).SVG(&svg); err != nil {
		return out, err
	}
	if err := draw.NewStrip(out.Plan, out.Result, draw.Options{Compact: true, Brief: true, ID: "narrow-" + id}).SVG(&svg); err != nil {
		return out, err
	}
	out.Strip = svg.String()
	return out, nil
}
