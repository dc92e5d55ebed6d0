package web

import (
	"context"
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"net/http"
	"strings"
	"sync"
	"time"

	"github.com/go-chi/chi/v5"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drill"
	"ramplan/press/training"
)

// A sitting is one person's exam: what is asked, since when, and what was handed
// in. It is kept by the server, so that a page can change neither the questions
// nor the clock. Its start is in the archive too, so that it outlives the server.
type sitting struct {
	drilling
	id      string
	who     string
	exam    *drill.Exam
	started time.Time

	mu     sync.Mutex                // holds what follows
	given  map[string]training.Given // what has an answer, as it was given; kept in the archive too
	score  *drill.Score
	record training.ID // 0: not kept yet
}

// A desk holds the sittings under way, and the last that were handed in.
type desk struct {
	mu    sync.Mutex
	order []*sitting // the oldest first
	now   func() time.Time
}

// mostSittings is how many are held: the oldest goes first.
const mostSittings = 200

func newDesk() *desk { return &desk{now: time.Now} }

// put takes a sitting in, and gives the one that lies there by its number already.
func (d *desk) put(s *sitting) *sitting {
	d.mu.Lock()
	defer d.mu.Unlock()
	for _, x := range d.order {
		if x.id == s.id {
			return x
		}
	}
	if d.order = append(d.order, s); len(d.order) > mostSittings {
		d.order = d.order[1:]
	}
	return s
}

func (d *desk) find(id string) *sitting {
	d.mu.Lock()
	defer d.mu.Unlock()
	for _, x := range d.order {
		if x.id == id {
			return x
		}
	}
	return nil
}

// begin starts the clock of an exam, here and in the archive.
func (d drilling) begin(ctx context.Context, who string, x *drill.Exam) (*sitting, error) {
	s := &sitting{drilling: d, who: who, exam: x, id: strings.ToLower(rand.Text()), started: d.site.desk.now()}
	err := d.site.store.KeepSitting(ctx, training.Sitting{
		ID: s.id, Plan: d.id, Who: who, Started: s.started, Revision: d.Letter, Document: d.P.Canonical(),
		Exam: string(x.Rules.Role), Seed: x.Rules.Seed, Items: x.Rules.Items, Asks: len(x.Keys), Needed: x.Needed(), Pass: x.Rules.Pass, Limit: x.Rules.Limit, Asked: askedDigest(x),
	})
	if err != nil {
		return nil, err
	}
	return d.site.desk.put(s), nil
}

// askedDigest tells whether an exam that is made again asks what it asked.
func askedDigest(x *drill.Exam) string {
	sum := sha256.New()
	for i, key := range x.Keys {
		e := x.Exercise(i)
		_, _ = sum.Write([]byte(key + "\n" + e.InWords() + "\n" + e.RightInWords() + "\n"))
	}
	return "sha256:" + hex.EncodeToString(sum.Sum(nil))
}

// sittingOf finds the exam that a request is about.
func (s *site) sittingOf(r *http.Request) (*sitting, error) {
	id, err := planID(r)
	if err != nil {
		return nil, err
	}
	number := chi.URLParam(r, "sitting")
	x := s.desk.find(number)
	if x == nil {
		if x, err = s.begunBefore(r.Context(), id, number); err != nil {
			return nil, err
		}
	}
	if x == nil || x.drilling.id != id {
		return nil, errNotUnderWay
	}
	return x, nil
}

var errNotUnderWay = refusal{http.StatusNotFound, say.ExamNotUnderWay(), []string{
	say.HandedInIsARecord(),
}}

// begunBefore makes an exam again that was begun before the program was started
// anew; nil where there is none. One that would ask something else now cannot go on: its
// record says that it is not finished.
func (s *site) begunBefore(ctx context.Context, id archive.ID, number string) (*sitting, error) {
	kept, err := s.store.SittingOf(ctx, number)
	if errors.Is(err, archive.ErrNotFound) || err == nil && kept.Plan != id {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	x, err := s.madeAgain(ctx, kept)
	if x == nil && err == nil {
		_, err = s.store.EndSitting(ctx, number, s.desk.now())
	}
	return x, err
}

// madeAgain asks what an exam asked; nil where this program would ask something else.
func (s *site) madeAgain(ctx context.Context, kept training.Sitting) (*sitting, error) {
	plan, faults := press.Decode(kept.Document)
	if len(faults) > 0 {
		return nil, nil
	}
	issued, err := s.store.Revisions(ctx, kept.Plan)
	if err != nil && !errors.Is(err, archive.ErrNotFound) {
		return nil, err
	}
	d := s.newDrilling(kept.Plan, plan, kept.Revision, issued)
	if d.D == nil {
		return nil, nil
	}
	rules := drill.UsualRules(kept.Seed)
	rules.Role, rules.Items, rules.Pass, rules.Limit = drill.Role(kept.Exam), kept.Items, kept.Pass, kept.Limit
	x, err := d.D.NewExam(rules)
	if err != nil || askedDigest(x) != kept.Asked {
		return nil, nil
	}
	return s.desk.put(&sitting{drilling: d, id: kept.ID, who: kept.Who, exam: x, started: kept.Started, given: kept.Given}), nil
}
