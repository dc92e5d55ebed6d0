package words

import (
	"strings"

	"ramplan/press"
)

// DraftMark is what stands in place of a revision where nothing was issued.
const DraftMark = "DRAFT"

// An Identity says of which state of which plan a drawing, a card or a file of rows
// is, so that it can be told from every other where it lies alone.
type Identity struct {
	Number, Name string
	Revision     string // empty: a draft
	Date         string // of issue; of a draft, the day on which it was drawn; may be empty
	Digest       string // of the plan
	NotReady     string // why the plan must not be used; empty without a blocker
	Superseded   string // by which revision, as [SupersededBy] says it; empty where it is the last
	Proved       string // of the last: whether its station is proved; empty where that is not known
	Standing     string // the same in the few words of the card
}

// IdentityOf tells which plan it is: the revision with the date of its issue, or a
// draft with the day of today.
func (say Printer) IdentityOf(p *press.Plan, r *press.Result, revision, date string) Identity {
	id := Identity{Number: p.Title.Number, Name: p.Title.Name, Revision: revision, Date: date, Digest: r.PlanDigest()}
	if r.Blocked() {
		id.NotReady = say.NotReady(r)
	}
	return id
}

// Draft tells whether nothing was issued.
func (id Identity) Draft() bool { return id.Revision == "" }

// Parts are what is said in a line, the plan first.
func (id Identity) Parts() []string {
	called := id.Number
	if called == "" {
		called = id.Name
	}
	state, date := "revision "+id.Revision, "issued "+id.Date
	if id.Draft() {
		state, date = DraftMark+", not issued", "drawn "+id.Date
	}
	out := []string{called, state}
	if id.Date != "" && id.Superseded != "" { // two dates: each stands with its own letter
		out[1] += " of " + id.Date
	} else if id.Date != "" {
		out = append(out, date)
	}
	if id.Superseded != "" {
		out = append(out, strings.Replace(id.Superseded, ", issued ", " of ", 1))
	}
	if id.Proved != "" {
		out = append(out, id.Proved)
	}
	return append(out, "plan "+ShortDigest(id.Digest))
}

// Foot is what stands at the foot of each page that a browser prints. Where the
// entries are no sound plan, the figures beside them are those of an earlier state.
func (id Identity) Foot(unsound bool) string {
	parts := id.Parts()
	if unsound {
		parts[len(parts)-1] = "with faults: no plan yet"
		if id.Digest != "" {
			parts[len(parts)-1] = "with faults; the figures are of the earlier plan " + ShortDigest(id.Digest)
		}
	}
	if id.NotReady != "" {
		parts = append(parts, "NOT READY FOR USE: "+id.NotReady)
	}
	return strings.Join(parts, " · ")
}

// String puts the parts into a line.
func (id Identity) String() string { return strings.Join(id.Parts(), " · ") }

// identityHeads are the first columns of every file of rows.
var identityHeads = []string{"Table", "Plan number", "Plan", "Revision", "Date", "Plan digest", "Not ready for use"}

// cells are those of these columns. The digest has its own name in front: of digits
// alone, or with an e among them, a spreadsheet would make another number.
func (id Identity) cells(table string) []string {
	revision := id.Revision
	if id.Draft() {
		revision = DraftMark
	}
	notReady := id.Superseded
	if id.NotReady != "" {
		notReady = strings.TrimPrefix(notReady+"; "+id.NotReady, "; ")
	}
	return []string{table, id.Number, id.Name, revision, id.Date, "sha256:" + ShortDigest(id.Digest), notReady}
}
