package drafts

import (
	"strings"
	"time"

	"ramplan/press"
)

// A Ram is the ram section of a plan under a name, with what its controller calls
// the setpoints and where it comes from.
type Ram struct {
	Told
	Entries []press.Entry // such as ram.stroke and controller.words[0].name
	Digest  string        // of the entries; a plan keeps that of the ram that it was given
}

// Told is what is said of a ram beside its entries.
type Told struct {
	Name     string // no two rams have the same
	Source   string // whose figures they are
	Measured string // date, such as 2026-03-02; empty when they were not measured
	Method   string // how they were measured
	Notes    string
}

// Paths of what is said of a ram.
const (
	PathRamName     = "shelf.name"
	PathRamSource   = "shelf.source"
	PathRamMeasured = "shelf.measured"
	PathRamMethod   = "shelf.method"
	PathRamNotes    = "shelf.notes"
)

// RamOf takes a ram out of a document: what is told of it under shelf, then its
// entries.
func RamOf(d *press.Draft) Ram {
	var r Ram
	for path, to := range map[string]*string{PathRamName: &r.Name, PathRamSource: &r.Source, PathRamMeasured: &r.Measured, PathRamMethod: &r.Method, PathRamNotes: &r.Notes} {
		*to, _ = d.Get(path)
	}
	r.Entries = RamEntries(d)
	r.Digest = sectionDigest(r.Entries)
	return r
}

// Document is the ram as it is kept: [RamOf] takes it out again.
func (r Ram) Document() *press.Draft {
	return &press.Draft{Entries: append(r.told(), r.Entries...)}
}

// Tidy gives a ram as it is kept: blanks tidied, nothing but a ram's entries, and the
// digest of those.
func (r Ram) Tidy() Ram {
	r.Name = strings.Join(strings.Fields(r.Name), " ")
	r.Measured = strings.TrimSpace(r.Measured)
	r.Entries = RamEntries(&press.Draft{Entries: r.Entries})
	r.Digest = sectionDigest(r.Entries)
	return r
}

func sectionDigest(entries []press.Entry) string {
	return Digest((&press.Draft{Entries: entries}).Encode())
}

func (t Told) told() []press.Entry {
	return []press.Entry{
		{Path: PathRamName, Text: t.Name}, {Path: PathRamSource, Text: t.Source}, {Path: PathRamMeasured, Text: t.Measured},
		{Path: PathRamMethod, Text: t.Method}, {Path: PathRamNotes, Text: t.Notes},
	}
}

// Problems tells what is wrong with what is said of a ram. Its entries may be
// anything that was typed, as in a draft.
func (t Told) Problems() press.Problems {
	var ps press.Problems
	for _, e := range t.told() {
		most := MostText
		if e.Path == PathRamNotes {
			most = MostNotes
		}
		switch {
		case e.Path == PathRamName && e.Text == "":
			ps = append(ps, press.Problem{Path: e.Path, Code: press.CodeRequired, Message: "a name is needed"})
		case len([]rune(e.Text)) > most:
			ps = append(ps, press.Problem{Path: e.Path, Code: press.CodeLength, Message: AtMost(most)})
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

// Found tells whether every wanted word begins one of the ram's.
func (r Ram) Found(wanted []string) bool {
	name, _ := (&press.Draft{Entries: r.Entries}).Get("ram.name")
	has := Words(strings.Join([]string{r.Name, name, r.Source, r.Measured, r.Method, r.Notes}, " "))
	for _, w := range wanted {
		found := false
		for _, h := range has {
			found = found || strings.HasPrefix(strings.ToLower(h), strings.ToLower(w))
		}
		if !found {
			return false
		}
	}
	return true
}
