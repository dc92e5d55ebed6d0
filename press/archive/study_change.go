package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"

	"ramplan/press/proving"
	"ramplan/press/training"
)

// StartStudy begins a study of a plan's station with what was typed so far, which may be
// nothing ([proving.NewTyped]) and need not be readable.
func (a *Archive) StartStudy(ctx context.Context, plan ID, kind string, typed *proving.Typed) (KeptStudy, error) {
	return a.start(ctx, plan, kind, typed, 0)
}

// CorrectStudy begins a study that corrects a signed one, typed as that one was. It takes
// its place when it is signed, and not before.
func (a *Archive) CorrectStudy(ctx context.Context, plan ID, id StudyID) (KeptStudy, error) {
	old, err := a.Study(ctx, plan, id)
	switch {
	case err != nil:
		return old, err
	case old.Damaged:
		return old, &Damaged{Plan: plan, What: studyName(id)}
	case !old.Signed() || old.Shift:
		return old, ErrOtherKind
	case old.ReplacedBy != 0:
		return old, ErrCorrected
	}
	return a.start(ctx, plan, old.Kind, old.Typed, id)
}

func (a *Archive) start(ctx context.Context, plan ID, kind string, typed *proving.Typed, replaces StudyID) (KeptStudy, error) {
	if typed == nil {
		typed = proving.NewTyped(kind)
	}
	row := studyRow{kept: &KeptStudy{Plan: plan, Kind: kind, Replaces: replaces, Typed: typed}}
	if err := row.setTyped(); err != nil {
		return *row.kept, err
	}
	return a.addOne(ctx, &row)
}

// SaveStudy keeps what was typed into a study, as typed, if the version named still stands;
// else it gives [*StaleStudy] and changes nothing. What is typed already changes nothing
// either, from whatever version.
func (a *Archive) SaveStudy(ctx context.Context, plan ID, id StudyID, version int64, typed *proving.Typed) (KeptStudy, error) {
	return a.studyStep(ctx, plan, id, func(ctx context.Context, tx *sql.Tx, k *KeptStudy) error {
		switch {
		case k.Signed():
			return ErrSigned
		case k.Posted:
			return ErrPosted
		case k.Typed != nil && k.Typed.Same(typed):
			return nil
		case k.Version != version:
			return &StaleStudy{version, *k}
		}
		row := studyRow{kept: &KeptStudy{Kind: k.Kind, Typed: typed}}
		if err := row.setTyped(); err != nil {
			return err
		}
		_, err := tx.ExecContext(ctx, "update study set version = version + 1, changed = $1, typed_sum = $2, typed = $3 where id = $4", a.stamp(), row.typedSum, row.typed, id)
		return err
	})
}

// SignStudy reads what was typed into a study, or takes what a program posted, and keeps it
// for good under a name; from then on it counts and never changes. What cannot be read is
// refused with [proving.TypedFaults]; one that was changed meanwhile with [*StaleStudy].
// Asked again by the same name it gives what was signed.
func (a *Archive) SignStudy(ctx context.Context, plan ID, id StudyID, version int64, by string) (KeptStudy, error) {
	name := training.PersonName(by)
	if name == "" {
		return KeptStudy{}, ErrNoSigner
	}
	return a.studyStep(ctx, plan, id, func(ctx context.Context, tx *sql.Tx, k *KeptStudy) error {
		switch {
		case k.Signed() && k.SignedBy == name:
			return nil
		case k.Signed():
			return ErrSigned
		case k.Damaged:
			return &Damaged{Plan: plan, What: studyName(id)}
		case k.Version != version:
			return &StaleStudy{version, *k}
		}
		if k.Study == nil {
			var faults proving.TypedFaults
			if k.Study, faults = k.Typed.Study(); len(faults) > 0 {
				return faults
			}
		}
		k.SignedBy = name
		row := studyRow{kept: k, signed: a.stamp()}
		return row.sign(ctx, tx, id)
	})
}

// PostStudy keeps a whole study that a program sent. It waits there, complete and not to be
// typed over, until a person signs it ([Archive.SignStudy]) or drops it, and counts when it is
// signed: a program cannot vouch for what stood at the station. An event alone counts at once,
// signed by the program: it only ever takes away. The same study posted again gives the one
// that is there.
func (a *Archive) PostStudy(ctx context.Context, plan ID, s *proving.Study, by string) (KeptStudy, error) {
	row := studyRow{kept: &KeptStudy{Plan: plan, Kind: s.Kind, Posted: true, Typed: s.Typed(), Study: s}}
	row.once = postedOnce(plan, s)
	if s.Kind == proving.Event {
		if row.kept.SignedBy = training.PersonName(by); row.kept.SignedBy == "" {
			return *row.kept, ErrNoSigner
		}
	}
	if err := row.setTyped(); err != nil {
		return *row.kept, err
	}
	return a.addOne(ctx, &row)
}

// postedOnce is the same when the same study is posted for the same plan.
func postedOnce(plan ID, s *proving.Study) string {
	return fmt.Sprintf("posted/%d/%s", plan, s.Digest())
}

// DropStudy removes a study that nobody signed, if the version named still stands.
func (a *Archive) DropStudy(ctx context.Context, plan ID, id StudyID, version int64) error {
	return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		k, err := study(ctx, tx, plan, id)
		switch {
		case err != nil:
			return err
		case k.Signed():
			return ErrSigned
		case k.Version != version:
			return &StaleStudy{version, k}
		}
		_, err = tx.ExecContext(ctx, "delete from study where id = $1", id)
		return err
	})
}

// studyStep does one change of a study and gives it as it stands after.
func (a *Archive) studyStep(ctx context.Context, plan ID, id StudyID, do func(context.Context, *sql.Tx, *KeptStudy) error) (KeptStudy, error) {
	var k KeptStudy
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		var err error
		if k, err = study(ctx, tx, plan, id); err != nil {
			return err
		}
		was := k
		if err := do(ctx, tx, &k); err != nil {
			k = was
			return err
		}
		k, err = study(ctx, tx, plan, id)
		return err
	})
	return k, err
}

// addOne adds a study and gives it as it is kept. One whose SignedBy is there is signed.
func (a *Archive) addOne(ctx context.Context, row *studyRow) (KeptStudy, error) {
	var k KeptStudy
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		row.made = a.stamp()
		row.changed = row.made
		if row.kept.SignedBy != "" {
			row.signed = row.made
		}
		if row.once != "" {
			var there StudyID
			err := tx.QueryRowContext(ctx, "select id from study where once = $1", row.once).Scan(&there)
			if !errors.Is(err, sql.ErrNoRows) {
				if err == nil {
					k, err = study(ctx, tx, row.kept.Plan, there)
				}
				return err
			}
		}
		id, err := row.add(ctx, tx)
		if err != nil {
			return err
		}
		k, err = study(ctx, tx, row.kept.Plan, id)
		return err
	})
	return k, err
}
