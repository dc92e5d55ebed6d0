package archive

import (
	"context"
	"database/sql"
	"errors"
	"time"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// A Sitting is an exam that was begun and not handed in: what is needed to ask its
// questions again after the program was started anew. It goes when its record is
// kept, when its person's records are removed, and after a day.
type Sitting struct {
	ID       string
	Plan     ID
	Who      string // name or number, as records keep it
	Started  time.Time
	Revision string // letter; empty for a draft
	Document []byte // the plan in canonical form
	Seed     uint64
	Items    int
	Pass     float64
	Limit    time.Duration
	Asked    string // digest of the questions
}

// sittingFormat is the name of the format of a stored sitting.
const sittingFormat = "ramplan.sitting/1"

type sittingDocument struct {
	Format   string         `json:"format"`
	Plan     ID             `json:"plan"`
	ID       string         `json:"id"`
	Who      string         `json:"who"`
	Started  string         `json:"started"`
	Revision string         `json:"revision"`
	Document jsontext.Value `json:"document"`
	Seed     uint64         `json:"seed,string"`
	Items    int            `json:"items"`
	Pass     float64        `json:"pass"`
	LimitMS  int64          `json:"limit_ms"`
	Asked    string         `json:"asked"`
}

// sittingsLast is how long a sitting is kept that nobody hands in.
const sittingsLast = 24 * time.Hour

// KeepSitting keeps an exam that begins, and forgets those of more than a day ago.
func (a *Archive) KeepSitting(ctx context.Context, s Sitting) error {
	if s.Who = PersonName(s.Who); s.Who == "" {
		return ErrNobody
	}
	started := s.Started.UTC().Format(stampLayout)
	body, err := json.Marshal(sittingDocument{
		sittingFormat, s.Plan, s.ID, s.Who, started, s.Revision, s.Document, s.Seed, s.Items, s.Pass, s.Limit.Milliseconds(), s.Asked,
	})
	if err != nil {
		return err
	}
	return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		old := s.Started.Add(-sittingsLast).UTC().Format(stampLayout)
		if _, err := tx.ExecContext(ctx, "delete from sitting where started < $1", old); err != nil {
			return err
		}
		_, err := tx.ExecContext(ctx, "insert into sitting (id, plan, who, started, sum, body) values ($1, $2, $3, $4, $5, $6)", s.ID, s.Plan, s.Who, started, digest(body), body)
		return err
	})
}

// SittingOf gives an exam that was begun. One that does not match its digest is
// not found.
func (a *Archive) SittingOf(ctx context.Context, id string) (Sitting, error) {
	var s Sitting
	var sum string
	var body []byte
	err := a.reader(ctx).QueryRowContext(ctx, "select sum, body from sitting where id = $1", id).Scan(&sum, &body)
	if errors.Is(err, sql.ErrNoRows) {
		return s, ErrNotFound
	}
	if err != nil {
		return s, explain(err)
	}
	var d sittingDocument
	if digest(body) != sum || json.Unmarshal(body, &d) != nil || d.Format != sittingFormat || d.ID != id {
		return s, ErrNotFound
	}
	return Sitting{
		ID: d.ID, Plan: d.Plan, Who: d.Who, Started: readStamp(d.Started), Revision: d.Revision, Document: d.Document,
		Seed: d.Seed, Items: d.Items, Pass: d.Pass, Limit: time.Duration(d.LimitMS) * time.Millisecond, Asked: d.Asked,
	}, nil
}
