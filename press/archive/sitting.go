package archive

import (
	"context"
	"database/sql"
	"errors"
	"time"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"ramplan/press/training"
)

// sittingFormat is the name of the format of a stored sitting.
const sittingFormat = "ramplan.sitting/1"

type sittingDocument struct {
	Format   string                    `json:"format"`
	Plan     ID                        `json:"plan"`
	ID       string                    `json:"id"`
	Who      string                    `json:"who"`
	Started  string                    `json:"started"`
	Revision string                    `json:"revision"`
	Document jsontext.Value            `json:"document"`
	Seed     uint64                    `json:"seed,string"`
	Items    int                       `json:"items"`
	Pass     float64                   `json:"pass"`
	LimitMS  int64                     `json:"limit_ms"`
	Asked    string                    `json:"asked"`
	Exam     string                    `json:"exam,omitzero"`
	Asks     int                       `json:"asks,omitzero"`
	Needed   int                       `json:"needed,omitzero"`
	Given    map[string]training.Given `json:"given,omitempty"`
	Heard    string                    `json:"heard,omitzero"`
}

func sittingBody(s *training.Sitting) ([]byte, error) {
	d := sittingDocument{
		sittingFormat, s.Plan, s.ID, s.Who, s.Started.UTC().Format(stampLayout), s.Revision, s.Document, s.Seed, s.Items, s.Pass, s.Limit.Milliseconds(), s.Asked,
		s.Exam, s.Asks, s.Needed, s.Given, "",
	}
	if !s.Heard.IsZero() {
		d.Heard = s.Heard.UTC().Format(stampLayout)
	}
	return json.Marshal(d)
}

// scanSitting reads a sitting. One that does not match its digest is not found.
func scanSitting(scan scanner) (training.Sitting, error) {
	var id, sum string
	var body []byte
	if err := scan(&id, &sum, &body); err != nil {
		return training.Sitting{}, err
	}
	var d sittingDocument
	if digest(body) != sum || json.Unmarshal(body, &d) != nil || d.Format != sittingFormat || d.ID != id {
		return training.Sitting{}, ErrNotFound
	}
	return training.Sitting{
		ID: d.ID, Plan: d.Plan, Who: d.Who, Started: readStamp(d.Started), Revision: d.Revision, Document: d.Document, Exam: d.Exam, Seed: d.Seed, Items: d.Items, Asks: d.Asks,
		Needed: d.Needed, Pass: d.Pass, Limit: time.Duration(d.LimitMS) * time.Millisecond, Asked: d.Asked, Given: d.Given, Heard: readStamp(d.Heard),
	}, nil
}

const sittingColumns = "id, sum, body"

// KeepSitting keeps an exam that begins, and records those that are left by then.
func (a *Archive) KeepSitting(ctx context.Context, s training.Sitting) error {
	if s.Who = training.PersonName(s.Who); s.Who == "" {
		return training.ErrNobody
	}
	body, err := sittingBody(&s)
	if err != nil {
		return err
	}
	return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		if err := endLeft(ctx, tx, s.Started); err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "insert into sitting (id, plan, who, started, sum, body) values ($1, $2, $3, $4, $5, $6)",
			s.ID, s.Plan, s.Who, s.Started.UTC().Format(stampLayout), digest(body), body)
		return err
	})
}

// KeepAnswers keeps what was answered so far in an exam under way, at a time.
func (a *Archive) KeepAnswers(ctx context.Context, id string, given map[string]training.Given, at time.Time) error {
	return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		s, err := sittingOf(ctx, tx, id)
		if err != nil {
			return err
		}
		s.Given, s.Heard = given, at
		body, err := sittingBody(&s)
		if err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "update sitting set sum = $1, body = $2 where id = $3", digest(body), body, id)
		return err
	})
}

// SittingOf gives an exam under way.
func (a *Archive) SittingOf(ctx context.Context, id string) (training.Sitting, error) {
	s, err := sittingOf(ctx, a.reader(ctx), id)
	return s, explain(err)
}

func sittingOf(ctx context.Context, q querier, id string) (training.Sitting, error) {
	s, err := scanSitting(q.QueryRowContext(ctx, "select "+sittingColumns+" from sitting where id = $1", id).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		err = ErrNotFound
	}
	return s, err
}

// Sittings lists the exams of a plan that are under way, the oldest first.
func (a *Archive) Sittings(ctx context.Context, plan ID) ([]training.Sitting, error) {
	out, err := sittings(ctx, a.reader(ctx), "where plan = $1", plan)
	return out, explain(err)
}

// AllSittings lists the exams of every plan that are under way, the oldest first.
func (a *Archive) AllSittings(ctx context.Context) ([]training.Sitting, error) {
	out, err := sittings(ctx, a.reader(ctx), "")
	return out, explain(err)
}

func sittings(ctx context.Context, q querier, where string, args ...any) ([]training.Sitting, error) {
	var out []training.Sitting
	err := each(ctx, q, "select "+sittingColumns+" from sitting "+where+" order by started, id", args, func(scan scanner) error {
		s, err := scanSitting(scan)
		if errors.Is(err, ErrNotFound) {
			return nil
		}
		out = append(out, s)
		return err
	})
	return out, err
}

// EndSitting records an exam under way as not finished at a time.
func (a *Archive) EndSitting(ctx context.Context, id string, at time.Time) (training.Record, error) {
	var t training.Record
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		s, err := sittingOf(ctx, tx, id)
		if err != nil {
			return err
		}
		t, err = endSitting(ctx, tx, s, at)
		return err
	})
	return t, err
}

// EndLeft records every exam that is left at a time as not finished.
func (a *Archive) EndLeft(ctx context.Context, now time.Time) error {
	all, err := sittings(ctx, a.reader(ctx), "")
	if err != nil {
		return explain(err)
	}
	for _, s := range all {
		if s.Left(now) {
			return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error { return endLeft(ctx, tx, now) })
		}
	}
	return nil
}

// endLeft ends what is left at a time, and forgets after a day what cannot be read.
func endLeft(ctx context.Context, tx *sql.Tx, now time.Time) error {
	all, err := sittings(ctx, tx, "")
	if err != nil {
		return err
	}
	for _, s := range all {
		if !s.Left(now) {
			continue
		}
		if _, err := endSitting(ctx, tx, s, s.LastHeard()); err != nil {
			return err
		}
	}
	_, err = tx.ExecContext(ctx, "delete from sitting where started < $1", now.Add(-training.LeftUnlimited).UTC().Format(stampLayout))
	return err
}

// endSitting records a sitting as not finished.
func endSitting(ctx context.Context, tx *sql.Tx, s training.Sitting, at time.Time) (training.Record, error) {
	t := s.LeftAt(at.UTC().Truncate(time.Millisecond))
	err := keepTraining(ctx, tx, &t)
	return t, err
}
