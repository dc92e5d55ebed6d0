package archive

import (
	"context"
	"database/sql"
	"strconv"
)

func count(n int) string { return strconv.Itoa(max(n, 0)) }

// Bin moves a plan to the bin; nothing of it is lost.
func (a *Archive) Bin(ctx context.Context, id ID, from Start) (Head, error) {
	return a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		return setBinned(ctx, tx, id, a.stamp())
	})
}

// Unbin brings a plan back to the shelf.
func (a *Archive) Unbin(ctx context.Context, id ID, from Start) (Head, error) {
	return a.step(ctx, id, from, func(ctx context.Context, tx *sql.Tx, h *Head) error {
		return setBinned(ctx, tx, id, nil)
	})
}

func setBinned(ctx context.Context, tx *sql.Tx, id ID, at any) error {
	_, err := tx.ExecContext(ctx, "update plan set binned = $1, version = version + 1 where id = $2 and (binned is null) <> ($1 is null)", at, id)
	return err
}

// EmptyBin removes every plan in the bin for good, with its history and its
// issued revisions, and tells how many there were.
func (a *Archive) EmptyBin(ctx context.Context) (int, error) {
	var n int64
	err := a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		for _, query := range []string{
			"delete from find where rowid in (select id from plan where binned is not null)",
			"delete from revision where plan in (select id from plan where binned is not null)",
			"delete from plan where binned is not null",
		} {
			r, err := tx.ExecContext(ctx, query)
			if err != nil {
				return err
			}
			if n, err = r.RowsAffected(); err != nil {
				return err
			}
		}
		return nil
	})
	return int(n), err
}
