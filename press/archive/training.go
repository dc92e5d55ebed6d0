package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"time"

	"github.com/go-json-experiment/json"

	"ramplan/press/training"
)

// trainingFormat is the name of the format of a stored record.
const trainingFormat = "ramplan.training/1"

// trainingDocument is a record as it is stored. Its number in the archive is no part of it.
type trainingDocument struct {
	Format     string          `json:"format"`
	Plan       ID              `json:"plan"`
	Sitting    string          `json:"sitting"`
	Who        string          `json:"who"`
	At         string          `json:"at"`
	Name       string          `json:"name"`
	Number     string          `json:"number"`
	Revision   string          `json:"revision"`
	Digest     string          `json:"plan_digest"`
	Seed       uint64          `json:"seed,string"`
	Items      int             `json:"items"`
	Right      int             `json:"right"`
	Needed     int             `json:"needed"`
	Pass       float64         `json:"pass"`
	LimitMS    int64           `json:"limit_ms"`
	TookMS     int64           `json:"took_ms"`
	OverTime   bool            `json:"over_time"`
	Passed     bool            `json:"passed"`
	Missed     []string        `json:"missed"`
	Repeat     bool            `json:"repeat,omitzero"`
	Known      bool            `json:"known,omitzero"`
	Misses     []training.Miss `json:"misses,omitempty"`
	Grave      []string        `json:"grave,omitempty"`
	Exam       string          `json:"exam,omitzero"`
	Unfinished bool            `json:"unfinished,omitzero"`
	Answered   int             `json:"answered,omitzero"`
}

// KeepTraining keeps a record with the time of now, and finds out whether it is of
// a set that the person has seen, or another one. The same sitting is kept once: asked again, as
// after a lost answer, it gives what was kept.
func (a *Archive) KeepTraining(ctx context.Context, t training.Record) (training.Record, error) {
	if t.Who = training.PersonName(t.Who); t.Who == "" {
		return t, training.ErrNobody
	}
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		t.At = readStamp(a.stamp())
		return keepTraining(ctx, tx, &t)
	})
	return t, err
}

// keepTraining keeps a record with its time, and ends its sitting.
func keepTraining(ctx context.Context, tx *sql.Tx, t *training.Record) error {
	kept, err := scanTraining(tx.QueryRowContext(ctx, "select "+trainingColumns+" from training where sitting = $1", t.Sitting).Scan)
	if !errors.Is(err, sql.ErrNoRows) {
		*t = kept
		return err
	}
	if err := seenBefore(ctx, tx, t); err != nil {
		return err
	}
	body, err := trainingBody(t)
	if err != nil {
		return err
	}
	row, err := tx.ExecContext(ctx, "insert into training (plan, sitting, who, at, revision, sum, body) values ($1, $2, $3, $4, $5, $6, $7)",
		t.Plan, t.Sitting, t.Who, t.At.UTC().Format(stampLayout), t.Revision, digest(body), body)
	if err != nil {
		return err
	}
	if _, err := tx.ExecContext(ctx, "delete from sitting where id = $1", t.Sitting); err != nil {
		return err
	}
	id, err := row.LastInsertId()
	t.ID = training.ID(id)
	return err
}

// seenBefore finds out whether the seed of a record was given before: to its person, or
// to another one.
func seenBefore(ctx context.Context, q querier, t *training.Record) error {
	kept, err := trainings(ctx, q, "where plan = $1", t.Plan)
	if err != nil {
		return err
	}
	var others []uint64
	begun := "where plan = $1 and who <> $2 collate nocase and started < (select started from sitting where id = $3)"
	err = each(ctx, q, "select body from sitting "+begun, []any{t.Plan, t.Who, t.Sitting}, func(scan scanner) error {
		var body []byte
		if err := scan(&body); err != nil {
			return err
		}
		var s sittingDocument
		if json.Unmarshal(body, &s) == nil {
			others = append(others, s.Seed)
		}
		return nil
	})
	t.Seen(kept, others)
	return err
}

// TrainingOf gives one record.
func (a *Archive) TrainingOf(ctx context.Context, id training.ID) (training.Record, error) {
	t, err := scanTraining(a.reader(ctx).QueryRowContext(ctx, "select "+trainingColumns+" from training where id = $1", id).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return t, ErrNotFound
	}
	return t, explain(err)
}

// TrainingOfSitting gives the record of a sitting.
func (a *Archive) TrainingOfSitting(ctx context.Context, sitting string) (training.Record, error) {
	t, err := scanTraining(a.reader(ctx).QueryRowContext(ctx, "select "+trainingColumns+" from training where sitting = $1", sitting).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return t, ErrNotFound
	}
	return t, explain(err)
}

// Trainings lists the records of a plan, the newest first.
func (a *Archive) Trainings(ctx context.Context, plan ID) ([]training.Record, error) {
	return a.trainings(ctx, "where plan = $1", plan)
}

// TrainingsOf lists the records of a person, the newest first.
func (a *Archive) TrainingsOf(ctx context.Context, who string) ([]training.Record, error) {
	return a.trainings(ctx, "where who = $1 collate nocase", training.PersonName(who))
}

// AllTrainings lists the records of everybody, the newest first.
func (a *Archive) AllTrainings(ctx context.Context) ([]training.Record, error) {
	return a.trainings(ctx, "")
}

func (a *Archive) trainings(ctx context.Context, where string, args ...any) ([]training.Record, error) {
	out, err := trainings(ctx, a.reader(ctx), where, args...)
	return out, explain(err)
}

func trainings(ctx context.Context, q querier, where string, args ...any) ([]training.Record, error) {
	var out []training.Record
	err := each(ctx, q, "select "+trainingColumns+" from training "+where+" order by at desc, id desc", args, func(scan scanner) error {
		t, err := scanTraining(scan)
		out = append(out, t)
		return err
	})
	return out, err
}

// A Person is somebody who has records.
type Person struct {
	Who     string
	Records int
	Last    time.Time
}

// People lists who has records, by name.
func (a *Archive) People(ctx context.Context) ([]Person, error) {
	var out []Person
	err := each(ctx, a.reader(ctx), "select max(who), count(*), max(at) from training group by who collate nocase order by who collate nocase", nil, func(scan scanner) error {
		var p Person
		var at string
		err := scan(&p.Who, &p.Records, &at)
		p.Last = readStamp(at)
		out = append(out, p)
		return err
	})
	return out, explain(err)
}

// RemovePerson removes every record of a person for good, and the exams that the
// person has begun, and tells how many records there were. Backups that were made before still hold them.
func (a *Archive) RemovePerson(ctx context.Context, who string) (int, error) {
	var n int64
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		r, err := tx.ExecContext(ctx, "delete from training where who = $1 collate nocase", training.PersonName(who))
		if err != nil {
			return err
		}
		if n, err = r.RowsAffected(); err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "delete from sitting where who = $1 collate nocase", training.PersonName(who))
		return err
	})
	return int(n), err
}

const trainingColumns = "id, plan, sitting, who, at, revision, sum, body"

func trainingBody(t *training.Record) ([]byte, error) {
	return json.Marshal(trainingDocument{
		trainingFormat, t.Plan, t.Sitting, t.Who, t.At.UTC().Format(stampLayout), t.Name, t.Number, t.Revision, t.Digest, t.Seed, t.Items, t.Right, t.Needed, t.Pass,
		t.Limit.Milliseconds(), t.Took.Milliseconds(), t.OverTime, t.Passed, t.Missed,
		t.Repeat, t.Known, t.Misses, t.Grave, t.Exam, t.Unfinished, t.Answered,
	})
}

// scanTraining reads a record. What its document says must be what its columns
// say.
func scanTraining(scan scanner) (training.Record, error) {
	var t training.Record
	var at, sum string
	var body []byte
	if err := scan(&t.ID, &t.Plan, &t.Sitting, &t.Who, &at, &t.Revision, &sum, &body); err != nil {
		return t, err
	}
	t.At = readStamp(at)
	var s trainingDocument
	err := json.Unmarshal(body, &s)
	if digest(body) != sum || err != nil || s.Format != trainingFormat || s.Plan != t.Plan || s.Sitting != t.Sitting || s.Who != t.Who || s.At != at || s.Revision != t.Revision {
		t.Damaged = true
		return t, nil
	}
	t.Name, t.Number, t.Digest, t.Seed = s.Name, s.Number, s.Digest, s.Seed
	t.Items, t.Right, t.Needed, t.Pass = s.Items, s.Right, s.Needed, s.Pass
	t.Limit, t.Took = time.Duration(s.LimitMS)*time.Millisecond, time.Duration(s.TookMS)*time.Millisecond
	t.OverTime, t.Passed, t.Missed = s.OverTime, s.Passed, s.Missed
	t.Repeat, t.Known, t.Misses, t.Grave = s.Repeat, s.Known, s.Misses, s.Grave
	t.Exam, t.Unfinished, t.Answered = s.Exam, s.Unfinished, s.Answered
	return t, nil
}

func trainingName(id training.ID) string { return fmt.Sprintf("training record %d", id) }
