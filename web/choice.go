package web

import (
	"net/http"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/web/page"
	"ramplan/web/view"
)

// ours is the side of a window whose entries were not saved, with the state that
// they started from; 0 where that is not known.
type ours struct {
	draft *press.Draft
	from  int64
}

// showChoice shows both sides of a plan that two windows changed, entry by entry,
// and which window changed what.
func (s *site) showChoice(w http.ResponseWriter, r *http.Request, id archive.ID, mine ours, trouble string) error {
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	v := view.Choice{
		Title: titleOf(head), Address: planPath(id, ""), Version: head.Version, At: head.At, State: mine.from,
		Mine: string(mine.draft.Encode()), Changes: changes(head.Draft, mine.draft), Trouble: trouble,
	}
	// Without what both started from each side is shown as it is.
	if before, err := s.store.State(r.Context(), id, mine.from); err == nil {
		v.Before, v.Theirs, v.Ours = before.Draft, changes(before.Draft, head.Draft), changes(before.Draft, mine.draft)
	}
	return show(w, r, http.StatusOK, page.ChoiceOf(v.Page(assets.shelfPage())))
}

// choose answers POST /plans/{id}/choice: what stands, with the entries of this
// side where they were picked.
func (s *site) choose(w http.ResponseWriter, r *http.Request) error {
	id, p, err := planForm(r)
	if err != nil {
		return err
	}
	mine, faults := press.DecodeDraft([]byte(p.mine))
	if len(faults) > 0 {
		return refusal{http.StatusBadRequest, say.SideUnreadable(), nil}
	}
	head, err := s.store.Get(r.Context(), id)
	if err != nil {
		return err
	}
	if head.Version != p.version {
		return s.showChoice(w, r, id, ours{mine, p.state}, say.ChangedOnceMore())
	}
	out := merged(head.Draft, mine, p)
	if _, err := s.store.Save(r.Context(), id, archive.At(head.Version), out, drafts.DidChoose); err != nil {
		return err
	}
	return seeOther(w, r, planPath(id, ""))
}

// merged takes what stands and puts the picked entries of this side into it.
func merged(theirs, mine *press.Draft, p *posted) *press.Draft {
	out := &press.Draft{Entries: append([]press.Entry(nil), theirs.Entries...)}
	for _, c := range drafts.Changes(theirs, mine) {
		side := p.picks[c.Path]
		switch {
		case p.do == "theirs" || p.do != "mine" && side != "mine":
		case c.Has:
			out.Set(c.Path, c.Is)
		default:
			out.Entries = without(out.Entries, c.Path)
		}
	}
	return out
}

func without(entries []press.Entry, path string) []press.Entry {
	var out []press.Entry
	for _, e := range entries {
		if e.Path != path {
			out = append(out, e)
		}
	}
	return out
}

// pick tells which entry an input picks a side of.
func pick(name string) (path string, ok bool) { return strings.CutPrefix(name, page.NamePick) }
