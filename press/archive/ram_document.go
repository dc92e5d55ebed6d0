package archive

import (
	"context"
	"database/sql"
	"errors"

	"ramplan/press"
	"ramplan/press/drafts"
)

// A ram is stored as a draft: what is told of it under shelf, then its entries.

// read takes a ram out of its stored document, after a look at its digest.
func (r *Ram) read(sum string, body []byte) {
	d, faults := press.DecodeDraft(body)
	if r.Damaged = digest(body) != sum || len(faults) > 0; r.Damaged {
		return
	}
	r.Ram = drafts.RamOf(d)
}

// storable gives a ram as it is kept, with its document, or tells what is wrong
// with what is said of it.
func storable(ctx context.Context, tx *sql.Tx, id RamID, r drafts.Ram) (drafts.Ram, []byte, error) {
	r = r.Tidy()
	ps := r.Problems()
	var other RamID
	err := tx.QueryRowContext(ctx, "select id from ram where name = $1 collate nocase and id <> $2", r.Name, id).Scan(&other)
	if err == nil {
		ps = append(ps, press.Problem{Path: drafts.PathRamName, Code: press.CodeConflict, Message: say.RamNameTaken()})
	} else if !errors.Is(err, sql.ErrNoRows) {
		return r, nil, err
	}
	if len(ps) > 0 {
		return r, nil, ps
	}
	body, _, err := encode(r.Document())
	return r, body, err
}

// RamNews gives the ram on the shelf from which a draft's was copied, if it holds
// other entries by now.
func (a *Archive) RamNews(ctx context.Context, d *press.Draft) (*Ram, bool, error) {
	name, copied := drafts.CopiedFrom(d)
	if name == "" {
		return nil, false, nil
	}
	r, err := scanRam(a.reader(ctx).QueryRowContext(ctx, "select "+ramColumns+" from ram where name = $1 collate nocase", name).Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return nil, false, nil
	}
	if err != nil || r.Damaged || r.Digest == copied {
		return nil, false, explain(err)
	}
	return &r, true, nil
}
