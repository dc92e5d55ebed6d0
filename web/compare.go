package web

import (
	"bytes"
	"context"
	"errors"
	"net/http"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw"
	"ramplan/web/page"
	"ramplan/web/view"
)

// draftSide names the working draft where sides are compared.
const draftSide = "draft"

// compare answers GET /plans/{id}/compared?from=A&to=draft, and state-7 for a
// state of the draft: entry by entry and figure by figure, with the two strips under one another.
func (s *site) compare(w http.ResponseWriter, r *http.Request) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	id := head.ID
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
	v := view.Compared{Title: titleOf(head), Address: planPath(id, ""), Version: head.Version}
	for _, rev := range issued {
		v.Sides = append(v.Sides, rev.Letter)
	}
	was, err := s.side(r.Context(), head, from)
	if err != nil {
		return err
	}
	is, err := s.side(r.Context(), head, to)
	if err != nil {
		return err
	}
	if err := drawSides(&was, &is); err != nil {
		return err
	}
	v.From, v.To = was.Side, is.Side
	v.Changes = changes(was.draft, is.draft)
	return show(w, r, http.StatusOK, page.ComparedOf(v.Page(assets.shelfPage().With(plainFoot(head.Draft, was.footed()+" against "+is.footed())))))
}

// footed names a side where it is printed: its letter or state, and its digest.
func (s side) footed() string {
	if s.Result == nil {
		return say.WithFaults(s.Called())
	}
	return say.PlanOf(s.Called(), s.Result.PlanDigest())
}

// A side is one of two that are compared.
type side struct {
	view.Side
	draft *press.Draft
}

func (s *site) side(ctx context.Context, head archive.Head, name string) (side, error) {
	out := side{Side: view.Side{Name: name}}
	if n, isState := view.StateOf(name); isState {
		st, err := s.store.State(ctx, head.ID, n)
		if errors.Is(err, archive.ErrNotFound) {
			return out, refusal{http.StatusNotFound, say.NoSuchState(), nil}
		}
		if err != nil {
			return out, err
		}
		out.At, out.draft = st.At, st.Draft
		out.Plan, _ = st.Draft.Check()
	} else if name == draftSide || name == "" {
		out.Name = draftSide
		out.draft = head.Draft
		out.Plan, _ = head.Draft.Check()
	} else {
		rev, err := s.anyRevision(ctx, head.ID, name)
		if err != nil {
			return out, err
		}
		out.Name, out.At, out.Plan, out.draft = rev.Letter, rev.At, rev.Plan, rev.Document.Draft()
	}
	if out.Plan != nil {
		out.Result = press.Evaluate(out.Plan)
	}
	return out, nil
}

// drawSides draws the strips of two sides alike, each in both its forms.
func drawSides(a, b *side) error {
	if a.Plan == nil || b.Plan == nil {
		return nil
	}
	plans, results := [2]*press.Plan{a.Plan, b.Plan}, [2]*press.Result{a.Result, b.Result}
	for _, narrow := range []bool{false, true} {
		o := draw.Options{Width: 1100, Brief: true}
		form := "strip-"
		if narrow {
			o, form = draw.Options{Compact: true, Brief: true}, "narrow-"
		}
		before, after := o, o
		before.ID, after.ID = form+"before", form+"after"
		for i, picture := range draw.NewStrips(plans, results, [2]draw.Options{before, after}) {
			var svg bytes.Buffer
			if err := picture.SVG(&svg); err != nil {
				return err
			}
			to := &a.Strip
			if i == 1 {
				to = &b.Strip
			}
			*to += svg.String()
		}
	}
	return nil
}
