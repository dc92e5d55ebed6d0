package web

import (
	"context"
	"errors"
	"strconv"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/web/view"
)

// statesAsked finds the states of drafts whose digest a search of the shelf is for, by
// plan, and has their plans found. The bin is searched for what was issued alone.
func (s *site) statesAsked(ctx context.Context, q *archive.Query) (map[archive.ID]*archive.FoundState, error) {
	digits, typed := drafts.TypedDigest(q.Text)
	if !typed || q.Binned {
		return nil, nil
	}
	found, _, err := s.store.DraftsAs(ctx, digits)
	if err != nil {
		return nil, err
	}
	out := map[archive.ID]*archive.FoundState{}
	for i, f := range found {
		out[f.Plan] = &found[i]
		q.Also = append(q.Also, f.Plan)
	}
	return out, nil
}

// showAsked shows on a card the state whose digest was searched for: a revision, or else a
// state of the draft. Without such a search it leaves the card as it is.
func (s *site) showAsked(ctx context.Context, it *archive.Item, card *view.Item, st *archive.FoundState) error {
	var plan *press.Plan
	switch {
	case it.Asked != "":
		rev, err := s.store.Revision(ctx, it.ID, it.Asked)
		if old := (*archive.NotTaken)(nil); err != nil && !errors.As(err, &old) {
			return err
		}
		plan = rev.Plan
	case st != nil:
		state, err := s.store.State(ctx, it.ID, st.N)
		if err != nil {
			return err
		}
		plan, _ = state.Draft.Check()
		card.AskedState = say.DraftState(st.At, st.Stands)
		card.AskedAt = planPath(it.ID, "history") + "?before=" + strconv.FormatInt(st.N+1, 10)
	}
	if plan == nil { // what today's rules do not take is told, and not drawn
		return nil
	}
	r := press.Evaluate(plan)
	drawn, err := cardOf(plan, r, it.ID)
	if err != nil {
		return err
	}
	card.Strip, card.Faults, card.Damaged, card.AskedShown = drawn.Strip, 0, false, true
	card.Blockers, card.Cautions, card.Notes = drawn.Blockers, drawn.Cautions, drawn.Notes
	card.NotReady = ""
	if r.Blocked() {
		card.NotReady = say.Blocked(r)
	}
	return nil
}
