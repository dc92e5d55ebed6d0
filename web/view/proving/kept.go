package proving

import (
	"slices"
	"time"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/web/page"
)

// A Kept study as the pages show it.
type Kept struct {
	ID      string
	Address string
	Kind    string
	Posted  bool // a program sent it
	Changed time.Time
	Version string

	Typed *proving.Typed
	Study *proving.Study // as it was signed or posted

	Replaces, ReplacedBy string // addresses of the study that it corrects, and of what corrects it

	SignedAt time.Time
	SignedBy string
	Digest   string

	Judged  *proving.Judged // what it says; nil where it was not asked, or cannot be
	Damaged bool
}

// Signed tells whether somebody signed it.
func (k Kept) Signed() bool { return !k.SignedAt.IsZero() }

// Rows is how many pushes were typed.
func (k Kept) Rows() int { return RowsOf(k.Typed) }

// RowsOf is how many rows of a typed study hold anything.
func RowsOf(t *proving.Typed) int {
	n := 0
	for i := range t.Rows {
		if !t.Blank(i) {
			n++
		}
	}
	return n
}

// taken is when the study was taken, as it was given.
func (k Kept) taken() string {
	if k.Study != nil {
		return k.Study.TakenAt
	}
	if k.Typed != nil {
		return k.Typed.Head("taken_at")
	}
	return ""
}

// Day is the day on which it was taken, as it was given; empty where none is readable.
func (k Kept) Day() string {
	if at := k.taken(); len(at) >= len(time.DateOnly) {
		return at[:len(time.DateOnly)]
	}
	return ""
}

// by says who took it and who signed it.
func (k Kept) by() string {
	switch {
	case k.Signed():
		return say.SignedAsOf(k.SignedBy, k.SignedAt)
	case k.Posted:
		return say.PostedAsOf(k.Changed)
	}
	return say.TypedAsOf(k.Changed)
}

// needed are the kinds in the order in which the page asks for them.
var needed = []string{proving.LoadCell, proving.Stiffness, proving.Master, proving.Samples, proving.Restart, proving.Trial}

// optional tells whether a station is proved without a kind.
func optional(kind string) bool { return kind == proving.Restart || kind == proving.Trial }

// checksOf are the checks of a judged study in words.
func checksOf(r *press.Result, s *proving.Study, j *proving.Judged) []page.CheckLine {
	var out []page.CheckLine
	for _, c := range j.Checks {
		out = append(out, page.CheckLine{Name: say.CheckName(j.Kind, c.Name), Outcome: string(c.Outcome), OutcomeText: say.CheckWord(c.Outcome), Text: say.CheckSaid(r, s, j, c)})
	}
	// What refutes stands first, then what is open.
	slices.SortStableFunc(out, func(a, b page.CheckLine) int { return rank(a.Outcome) - rank(b.Outcome) })
	return out
}

func rank(outcome string) int {
	return slices.Index([]string{string(proving.Fail), string(proving.Open), string(proving.Pass)}, outcome)
}

// enough are the rows with which a study of a kind can pass; until then its page says how it is
// taken.
var enough = map[string]int{proving.LoadCell: 9, proving.Stiffness: 6, proving.Master: 25, proving.Restart: 10, proving.Trial: 30, proving.Samples: 9}
