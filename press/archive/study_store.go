package archive

import (
	"context"
	"database/sql"
	"errors"
	"slices"

	"ramplan/press/proving"
)

// setTyped makes the stored form of what was typed.
func (r *studyRow) setTyped() error {
	k := r.kept
	if !slices.Contains(proving.Kinds, k.Kind) || k.Typed.Kind != k.Kind {
		return ErrKind
	}
	r.typed = k.Typed.Encode()
	r.typedSum = digest(r.typed)
	if len(r.typed) > 2*proving.MostTypedBytes || len(k.Typed.Rows) > proving.MostTypedRows {
		return ErrTooLarge
	}
	return nil
}

// setStudy makes the stored form of what it was read as.
func (r *studyRow) setStudy() {
	r.document = r.kept.Study.JSON()
	r.kept.Digest = r.kept.Study.Digest()
}

// readStudy reads a study that comes in; false where it is not the one of this digest.
func readStudy(body []byte, sum string) (*proving.Study, bool) {
	s, faults := proving.Decode(body)
	return s, len(faults) == 0 && s.Digest() == sum
}

// add adds a row, signed or not.
func (r *studyRow) add(ctx context.Context, tx *sql.Tx) (StudyID, error) {
	k := r.kept
	var binned bool
	err := tx.QueryRowContext(ctx, "select binned is not null from plan where id = $1", k.Plan).Scan(&binned)
	if errors.Is(err, sql.ErrNoRows) {
		return 0, ErrNotFound
	} else if err != nil {
		return 0, err
	}
	if k.Study != nil {
		r.setStudy()
	}
	if err := r.corrects(ctx, tx); err != nil && (r.signed != "" || err != ErrCorrected) { // two may begin to correct one
		return 0, err
	}
	if r.document != nil {
		r.seal = r.sealed()
	}
	row, err := tx.ExecContext(ctx, `
insert into study (plan, once, kind, purpose, posted, made, changed, replaces, signed, signer, outcome, letter, revision, typed_sum, typed, sum, document, seal)
values ($1, nullif($2, ''), $3, $4, $5, $6, $7, nullif($8, 0), nullif($9, ''), $10, $11, $12, $13, $14, $15, $16, $17, $18)`,
		k.Plan, r.once, k.Kind, r.purpose, k.Posted, r.made, r.changed, k.Replaces, r.signed, k.SignedBy, k.Check.Passed, k.Check.Letter, k.Check.Digest, r.typedSum, r.typed, k.Digest, r.document, r.seal)
	if err != nil {
		return 0, err
	}
	id, err := row.LastInsertId()
	return StudyID(id), err
}

// sign signs the row of a study that was not.
func (r *studyRow) sign(ctx context.Context, tx *sql.Tx, id StudyID) error {
	if err := r.corrects(ctx, tx); err != nil {
		return err
	}
	k := r.kept
	if !k.Posted { // what was posted is there already
		r.setStudy()
	}
	// The seal holds what the row says, to the letter.
	var posted []byte
	if err := tx.QueryRowContext(ctx, "select purpose, made, typed_sum, document from study where id = $1", id).Scan(&r.purpose, &r.made, &r.typedSum, &posted); err != nil {
		return err
	}
	if k.Posted {
		r.document = posted
	}
	r.seal = r.sealed()
	_, err := tx.ExecContext(ctx, "update study set version = version + 1, changed = $1, signed = $1, signer = $2, sum = $3, document = $4, seal = $5 where id = $6",
		r.signed, k.SignedBy, k.Digest, r.document, r.seal, id)
	return err
}

// corrects looks whether what a study names may be corrected by it.
func (r *studyRow) corrects(ctx context.Context, tx *sql.Tx) error {
	if r.kept.Replaces == 0 {
		return nil
	}
	old, err := study(ctx, tx, r.kept.Plan, r.kept.Replaces)
	switch {
	case errors.Is(err, ErrNotFound):
		return ErrOtherKind
	case err != nil:
		return err
	case !old.Signed() || old.Kind != r.kept.Kind || old.Shift != (r.purpose == Shift):
		return ErrOtherKind
	case old.ReplacedBy != 0:
		return ErrCorrected
	}
	return nil
}
