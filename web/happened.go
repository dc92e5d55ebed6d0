package web

import (
	"context"
	"errors"
	"net/http"
	"strings"

	"ramplan/press/archive"
	"ramplan/press/proving"
	"ramplan/web/page"
	proofview "ramplan/web/view/proving"
)

// happened takes what happened to the station in two steps, as an event never goes away: event
// reads it and asks whether to keep it, saying what that withdraws; keep keeps it, signed by who
// says so; change goes back to the form.
func (s *site) happened(w http.ResponseWriter, r *http.Request, id archive.ID, f *studyForm, verb string) error {
	said := page.EventForm{When: f.other[page.NameWhen], Who: f.other[page.NameWho], Notes: f.other[page.NameNotes], Picks: []page.Pick{{Value: f.other[page.NameWhat], Chosen: true}}}
	if verb == "change" {
		return s.overview(w, r, id, http.StatusOK, proofview.Overview{Event: said})
	}
	refused := func(faults []string) error {
		said.Faults = faults
		return s.overview(w, r, id, http.StatusUnprocessableEntity, proofview.Overview{Event: said})
	}
	typed, event, faults := eventOf(f)
	switch {
	case len(faults) > 0:
		return refused(faults)
	case verb == "event":
		o := proofview.Overview{Event: said}
		var err error
		if o.Withdraws, err = s.withdrawnBy(r.Context(), id, event); err != nil {
			return err
		}
		o.Happened = event
		return s.overview(w, r, id, http.StatusOK, o)
	}
	k, err := s.store.StartStudy(r.Context(), id, proving.Event, typed)
	if err != nil {
		return studyError(err)
	}
	if _, err := s.store.SignStudy(r.Context(), id, k.ID, k.Version, said.Who); err != nil {
		_ = s.store.DropStudy(r.Context(), id, k.ID, k.Version) // it is no event
		var refusedBy archive.StudyRefused
		if errors.As(err, &refusedBy) {
			return refused([]string{refusedBy.Text()})
		}
		return studyError(err)
	}
	return seeOther(w, r, planPath(id, "proving#events"))
}

// eventOf reads an event from its form, with all that is wrong with it.
func eventOf(f *studyForm) (typed *proving.Typed, event *proving.Study, faults []string) {
	typed = proving.NewTyped(proving.Event)
	typed.SetHead("taken_at", strings.TrimSpace(f.other[page.NameWhen]))
	typed.SetHead("event", f.other[page.NameWhat])
	typed.SetHead("taken_by", strings.TrimSpace(f.other[page.NameWho]))
	typed.SetHead("notes", strings.TrimSpace(f.other[page.NameNotes]))
	if strings.TrimSpace(f.other[page.NameWho]) == "" {
		faults = append(faults, sayProof.EventNeedsWho())
	}
	event, wrong := typed.Study()
	for _, x := range wrong {
		faults = append(faults, sayProof.HeadOf(proving.Event, x.Field).Label+": "+x.Message)
	}
	return typed, event, faults
}

// withdrawnBy are the kinds whose study counts now and would not after an event.
func (s *site) withdrawnBy(ctx context.Context, id archive.ID, event *proving.Study) ([]string, error) {
	a, err := s.against(ctx, id, false)
	if err != nil || a.result == nil || event == nil {
		return nil, err
	}
	studies, err := s.store.CountingStudies(ctx, id)
	if damaged := (*archive.Damaged)(nil); errors.As(err, &damaged) {
		return nil, nil // nothing is proved by the others
	}
	if err != nil {
		return nil, err
	}
	before := proving.Assess(a.result, studies, today()).Proved.Kinds
	after := proving.Assess(a.result, append(studies, event), today()).Proved.Kinds
	var out []string
	for _, kind := range proving.Kinds {
		if after[kind].State == proving.StateWithdrawn && before[kind].State != proving.StateWithdrawn {
			out = append(out, kind)
		}
	}
	return out, nil
}
