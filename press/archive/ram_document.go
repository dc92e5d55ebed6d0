package archive

import (
	"context"
	"database/sql"
	"errors"
	"strings"
	"time"

	"ramplan/press"
)

// A ram is stored as a draft: what is told of it under shelf, then its entries.

func (t *Told) entries() []press.Entry {
	return []press.Entry{
		{Path: PathRamName, Text: t.Name}, {Path: PathRamSource, Text: t.Source}, {Path: PathRamMeasured, Text: t.Measured},
		{Path: PathRamMethod, Text: t.Method}, {Path: PathRamNotes, Text: t.Notes},
	}
}

func (r *Ram) document() []byte {
	return (&press.Draft{Entries: append(r.entries(), r.Entries...)}).Encode()
}

func (r *Ram) sum() string { return digest(r.document()) }

// read takes a ram out of its stored document, after a look at its digest.
func (r *Ram) read(sum string, body []byte) {
	d, faults := press.DecodeDraft(body)
	if r.Damaged = digest(body) != sum || len(faults) > 0; r.Damaged {
		return
	}
	r.take(d)
}

// take takes what a document holds.
func (r *Ram) take(d *press.Draft) {
	for path, to := range map[string]*string{PathRamName: &r.Name, PathRamSource: &r.Source, PathRamMeasured: &r.Measured, PathRamMethod: &r.Method, PathRamNotes: &r.Notes} {
		*to, _ = d.Get(path)
	}
	r.Entries = RamEntries(d)
	r.Digest = sectionDigest(r.Entries)
}

func sectionDigest(entries []press.Entry) string {
	return digest((&press.Draft{Entries: entries}).Encode())
}

// storable gives a ram as it is kept, with its document, or tells what is wrong
// with what is said of it.
func storable(ctx context.Context, tx *sql.Tx, r Ram) (Ram, []byte, error) {
	r.Name = strings.Join(strings.Fields(r.Name), " ")
	r.Measured = strings.TrimSpace(r.Measured)
	r.Entries = RamEntries(&press.Draft{Entries: r.Entries})
	ps := r.problems()
	var other RamID
	err := tx.QueryRowContext(ctx, "select id from ram where name = $1 collate nocase and id <> $2", r.Name, r.ID).Scan(&other)
	if err == nil {
		ps = append(ps, press.Problem{Path: PathRamName, Code: press.CodeConflict, Message: "another ram on the shelf has this name"})
	} else if !errors.Is(err, sql.ErrNoRows) {
		return r, nil, err
	}
	if len(ps) > 0 {
		return r, nil, ps
	}
	body, _, err := encode(&press.Draft{Entries: append(r.entries(), r.Entries...)})
	r.Digest = sectionDigest(r.Entries)
	return r, body, err
}

// problems tells what is wrong with what is said of a ram. Its entries may be
// anything that was typed, as in a draft.
func (t *Told) problems() press.Problems {
	var ps press.Problems
	for _, e := range t.entries() {
		most := mostText
		if e.Path == PathRamNotes {
			most = mostNotes
		}
		switch {
		case e.Path == PathRamName && e.Text == "":
			ps = append(ps, press.Problem{Path: e.Path, Code: press.CodeRequired, Message: "a name is needed"})
		case len([]rune(e.Text)) > most:
			ps = append(ps, press.Problem{Path: e.Path, Code: press.CodeLength, Message: atMost(most)})
		case e.Path == PathRamMeasured && e.Text != "" && !isDate(e.Text):
			ps = append(ps, press.Problem{Path: e.Path, Code: press.CodeType, Message: "found " + e.Text + "; a date such as 2026-03-02 is needed"})
		}
	}
	return ps
}

func isDate(s string) bool {
	_, err := time.Parse(time.DateOnly, s)
	return err == nil
}

// Where a plan says which ram it was given.
const (
	pathShelfName   = "ram.shelf_name"
	pathShelfDigest = "ram.shelf_digest"
)

// RamEntries gives what the shelf keeps of a draft's ram: its section, without
// where it was copied from, and what its controller calls the setpoints. A draft
// without an entry of a ram gives nothing.
func RamEntries(d *press.Draft) []press.Entry {
	var out []press.Entry
	ram := false
	for _, e := range d.Entries {
		switch {
		case e.Path == pathShelfName || e.Path == pathShelfDigest:
		case strings.HasPrefix(e.Path, "ram."):
			ram = true
			out = append(out, e)
		case strings.HasPrefix(e.Path, "controller."):
			out = append(out, e)
		}
	}
	if !ram {
		return nil
	}
	return out
}

func within(section, path string) bool {
	return path == section || strings.HasPrefix(path, section+".")
}

// PutRam gives a copy of a draft in which the shelf's ram stands in place of the
// draft's own, and its controller's words, if it has any, in place of the draft's.
// The copy says where the ram comes from.
func PutRam(d *press.Draft, r Ram) *press.Draft {
	ram := []press.Entry{{Path: pathShelfName, Text: r.Name}, {Path: pathShelfDigest, Text: r.Digest}}
	var controller []press.Entry
	for _, e := range r.Entries {
		if within("controller", e.Path) {
			controller = append(controller, e)
		} else {
			ram = append(ram, e)
		}
	}
	out := d
	if len(controller) > 0 {
		out = replaced(out, "controller", controller)
	}
	return replaced(out, "ram", ram)
}

// replaced gives a copy of a draft with other entries in place of a section's.
func replaced(d *press.Draft, section string, by []press.Entry) *press.Draft {
	out := &press.Draft{Entries: make([]press.Entry, 0, len(d.Entries)+len(by))}
	for _, e := range d.Entries {
		if !within(section, e.Path) {
			out.Entries = append(out.Entries, e)
			continue
		}
		out.Entries = append(out.Entries, by...)
		by = nil
	}
	out.Entries = append(out.Entries, by...)
	return out
}

// RamNews gives the ram on the shelf from which a draft's was copied, if it holds
// other entries by now.
func (a *Archive) RamNews(ctx context.Context, d *press.Draft) (*Ram, bool, error) {
	name, _ := d.Get(pathShelfName)
	copied, _ := d.Get(pathShelfDigest)
	if name == "" || copied == "" {
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
