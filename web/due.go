package web

import (
	"context"
	"slices"

	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/issue"
	"ramplan/press/training"
	"ramplan/press/words"
)

// dueByExam gives who has to take which exam again, of the records of one plan. The one
// exam of older programs was taken by who works at the station: a pass of it is one of
// both, but it makes nobody a setter.
func dueByExam(all []training.Record, counts []string) map[drill.Role][]training.Record {
	out := map[drill.Role][]training.Record{}
	for _, role := range drill.Roles {
		out[role] = training.Due(all, training.Demand{Exam: string(role), Elder: role == drill.Technician, Counts: counts})
	}
	return out
}

// states are those of a plan that people must have passed on.
type states struct {
	counts  []string // their digests
	letters []string // and letters, the newest first; the draft has none
	issued  []issue.Revision
	since   *issue.Revision // the last that was issued with a change that concerns the drill; nil for the draft
}

// counting gives the states of a plan that people must have passed on: the last revision
// that was issued, and those before it whose drill is the same; or the draft. There are
// none while the draft is no plan.
func (s *site) counting(ctx context.Context, head archive.Head) (states, error) {
	issued, err := s.store.Revisions(ctx, head.ID)
	if err != nil {
		return states{}, err
	}
	if counts := issue.Counting(issued); len(counts) > 0 {
		return states{counts, lettersOf(issued[:len(counts)]), issued, &issued[len(counts)-1]}, nil
	}
	if plan, _ := head.Draft.Check(); plan != nil {
		return states{counts: []string{plan.Digest()}}, nil
	}
	return states{}, nil
}

// why says why somebody has to take an exam, by the record that says so.
func (x states) why(t training.Record) string {
	a := words.Again{TypedIn: t.TypedIn() != "", Failed: !t.Passed && !t.Unfinished && slices.Contains(x.counts, t.Digest), Passed: t.Passed, On: t.Revision, Became: becameOf(t, x.issued)}
	if x.since != nil {
		a.Since, a.Told, a.Reason = x.since.Letter, x.since.Drill == issue.DrillAgain, x.since.Reason
	}
	return a.String()
}

// endLeft records the exams that are left by now. What cannot be written now is written
// the next time.
func (s *site) endLeft(ctx context.Context) { _ = s.store.EndLeft(ctx, s.desk.now()) }
