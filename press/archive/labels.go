package archive

import (
	"context"
	"database/sql"

	"ramplan/press/drafts"
)

// findBy makes the plan found by these texts.
func findBy(ctx context.Context, tx *sql.Tx, id ID, l drafts.Labels) error {
	_, err := tx.ExecContext(ctx, "insert or replace into find (rowid, name, number, notes, parts) values ($1, $2, $3, $4, $5)", id, l.Name, l.Number, l.Notes, l.Parts)
	return err
}
