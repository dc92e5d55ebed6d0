package web

import (
	"context"

	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/issue"
	"ramplan/press/training"
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

// counting gives the digests of the states of a plan that people must have passed on,
// and the letters that they have, the newest first: of the last revision that was
// issued, and of those before it whose drill is the same; or of the draft, which has no
// letter. There are none while the draft is no plan.
func (s *site) counting(ctx context.Context, head archive.Head) (digests, letters []string, err error) {
	issued, err := s.store.Revisions(ctx, head.ID)
	if err != nil {
		return nil, nil, err
	}
	if digests = issue.Counting(issued); len(digests) > 0 {
		for _, r := range issued[:len(digests)] {
			letters = append(letters, r.Letter)
		}
		return digests, letters, nil
	}
	if plan, _ := head.Draft.Check(); plan != nil {
		return []string{plan.Digest()}, nil, nil
	}
	return nil, nil, nil
}

// endLeft records the exams that are left by now. What cannot be written now is written
// the next time.
func (s *site) endLeft(ctx context.Context) { _ = s.store.EndLeft(ctx, s.desk.now()) }
