package web

import (
	"context"
	"errors"
	"net/http"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/press/proving"
	"ramplan/web/page"
	"ramplan/web/view"
	proofview "ramplan/web/view/proving"
)

// offers is what a signed study offers to the draft, and what taking it would do.
func (s *site) offers(ctx context.Context, d *studyDesk, a against) (*page.Adoption, error) {
	v := &d.v
	if v.Judged == nil || v.Judged.Adopt == nil {
		return nil, nil
	}
	o := proofview.Offers{Against: a.result, Study: v.Study, Judged: v.Judged, Version: a.head.Version, Picked: d.take, Chosen: d.picked}
	plan, faults := a.head.Draft.Check()
	if plan == nil {
		o.Unsound, plan = len(faults), a.plan
	} else if len(faults) > 0 {
		o.Unsound = len(faults)
	}
	o.Plan = plan
	var err error
	if o.Changes, err = s.untaken(ctx, d, a.head, v.Judged.Adopt.Changes(plan)); err != nil {
		return nil, err
	}
	if o.Unsound == 0 && len(o.Picks()) > 0 {
		was := press.Evaluate(plan)
		after, wrong := proving.Put(a.head.Draft, o.Picks()...).Check()
		if after == nil || len(wrong) > 0 {
			o.Trouble = lines(wrong)
		} else {
			is := press.Evaluate(after)
			o.Effect = view.EffectOf(view.Side{Plan: plan, Result: was}, view.Side{Plan: after, Result: is})
		}
	}
	return o.Page(), nil
}

// adopt answers what the form of offers wants: to see what the picked ones would do, or to take
// them into the draft.
func (s *site) adopt(w http.ResponseWriter, r *http.Request, d *studyDesk, f *studyForm, rest string) error {
	d.take, d.picked = f.take, true
	if f.do == "try" {
		return s.studyPage(w, r, d)
	}
	if !d.kept.Counts() {
		return refusal{http.StatusUnprocessableEntity, sayProof.OnlySignedAreTaken(), nil}
	}
	a, err := s.against(r.Context(), d.id, d.draft)
	if err != nil {
		return err
	}
	if a.result == nil {
		return refusal{http.StatusUnprocessableEntity, sayProof.CannotTell(), nil}
	}
	plan, _ := a.head.Draft.Check()
	if plan == nil {
		plan = a.plan
	}
	judged := proving.Assess(a.result, []*proving.Study{d.kept.Study}, today()).Studies[0]
	picked, err := s.untaken(r.Context(), d, a.head, judged.Adopt.Changes(plan))
	if err != nil {
		return err
	}
	if rest != "all" {
		picked = slices.DeleteFunc(picked, func(c proving.Change) bool { return !slices.Contains(f.take, c.Path) })
	}
	if len(picked) == 0 {
		d.say("refused", sayProof.NothingTicked())
		d.status = http.StatusUnprocessableEntity
		return s.studyPage(w, r, d)
	}
	_, err = s.store.Save(r.Context(), d.id, archive.At(f.version), proving.Put(a.head.Draft, picked...), sayProof.TookValues(d.kept.Study, d.kept.Digest))
	var stale *archive.Stale
	if errors.As(err, &stale) {
		d.say("refused", sayProof.DraftMoved())
		d.status = http.StatusConflict
		return s.studyPage(w, r, d)
	}
	if err != nil {
		return err
	}
	to := studyPath(d.id, d.kept.ID)
	if d.draft {
		to += "?against=" + againstDraft
	}
	return seeOther(w, r, to+"#adopt")
}

// lookedBack is how many states of a draft are looked through for values that were taken.
const lookedBack = 200

// untaken leaves out of what a study offers what the draft has of it: held against a plan with
// its own values, a study would offer hardly others again, and again.
func (s *site) untaken(ctx context.Context, d *studyDesk, head archive.Head, offered []proving.Change) ([]proving.Change, error) {
	states, err := s.store.History(ctx, d.id, 0, lookedBack)
	if err != nil || d.kept.Study == nil {
		return offered, err
	}
	did := sayProof.TookValues(d.kept.Study, d.kept.Digest)
	taken := map[string]bool{}
	for i, st := range states {
		if st.Did != did || st.Draft == nil || i+1 == len(states) || states[i+1].Draft == nil {
			continue
		}
		since := map[string]bool{} // paths that were changed again
		for _, c := range drafts.Changes(st.Draft, head.Draft) {
			since[entryOf(c.Path)] = true
		}
		for _, c := range drafts.Changes(states[i+1].Draft, st.Draft) {
			if path := entryOf(c.Path); !since[path] {
				taken[path] = true
			}
		}
	}
	return slices.DeleteFunc(offered, func(c proving.Change) bool { return taken[c.Path] }), nil
}

// entryOf is the entry that a study offers as a whole, of a path that may lie in it.
func entryOf(path string) string {
	path, _, _ = strings.Cut(path, "[")
	return path
}
