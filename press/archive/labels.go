package archive

import (
	"context"
	"database/sql"
	"strings"

	"ramplan/press"
)

// labels are the texts by which a plan is found.
type labels struct{ name, number, notes, parts string }

func labelsOf(d *press.Draft) labels {
	var l labels
	var parts []string
	for _, e := range d.Entries {
		switch {
		case e.Path == "title.name":
			l.name = strings.TrimSpace(e.Text)
		case e.Path == "title.number":
			l.number = strings.TrimSpace(e.Text)
		case e.Path == "title.notes":
			l.notes = e.Text
		case strings.HasPrefix(e.Path, "parts[") && strings.HasSuffix(e.Path, "].name"):
			parts = append(parts, e.Text)
		}
	}
	l.parts = strings.Join(parts, "\n")
	return l
}

// find makes the plan found by these texts.
func (l labels) find(ctx context.Context, tx *sql.Tx, id ID) error {
	_, err := tx.ExecContext(ctx, "insert or replace into find (rowid, name, number, notes, parts) values ($1, $2, $3, $4, $5)", id, l.name, l.number, l.notes, l.parts)
	return err
}
