package page

// A Title names the plan that a page beside its bench is about.
type Title struct{ Address, Name, Number string }

// A Change is one entry that differs.
type Change struct {
	Where, Path, Was, Is string
	Told                 string // the whole of it in words, such as "added", in place of both sides
}

// A HistoryPage lists the states that a draft had, the newest first.
type HistoryPage struct {
	Assets  Assets
	Title   Title
	Address string
	Version string
	States  []PastState
	Older   string // address of the page before; empty on the last
}

// A PastState is one of them.
type PastState struct {
	Number, When, Stamp string
	Did                 string // empty for typing
	Changes             []Change
	Folded              []Change // those more, which only paper has one by one
	Rest                string   // how many more changes there are
	Note                string
	Stands              bool
	Do                  string // brings it back; empty where that cannot be
	Compare             string // address: what bringing it back would change; empty where nothing would
	Issued              []Link // the revisions that it was issued as
}

// A ChoicePage shows both sides of a plan that two windows changed.
type ChoicePage struct {
	Assets  Assets
	Title   Title
	Address string
	Version string
	State   string // of the history, that this side started from
	When    string
	Mine    string
	Groups  []ChoiceGroup
	Known   bool // what both sides started from is
	Trouble string
}

// A ChoiceGroup is the entries that the same windows changed.
type ChoiceGroup struct {
	Label string // empty where that is not known
	Rows  []ChoiceRow
}

// A ChoiceRow is one entry. Was is what stands, Is this side.
type ChoiceRow struct {
	Change
	Before string // what both sides started from
	Mine   bool   // this side is picked
}

// A DamagePage tells that a stored draft is not what was stored.
type DamagePage struct {
	Assets         Assets
	Title          Title
	Address        string
	What           string
	Good, When, Do string // of the newest state that is whole
	Version        string
}

// A RevisionsPage lists what was issued and issues the next.
type RevisionsPage struct {
	Assets           Assets
	Title            Title
	Address          string
	Version          string
	Next             string // letter
	Headline         string
	Blocked          bool // the headline says that the plan is not ready
	Issued           []Revision
	Compare          string    // address
	Cannot           string    // why nothing can be issued
	Physical, Others []Finding // blockers
	Just             string    // what was issued just now
	Remark           string    // on the names in the form
	Trouble          []string
	Fields           []Field
}

// A Revision is one that was issued.
type Revision struct {
	Letter, When, Stamp, Address, Digest string
	Prepared, Checked, Approved          string
	Reason, Despite, Second, Drill       string
	Damaged                              bool
	Remark                               string     // on the names
	Superseded                           string     // that it is, and by which
	NotTaken                             []string   // what today's rules miss in it
	Back                                 *BringBack // of one that they do not take
}

// An IssuedPage is one issued revision.
type IssuedPage struct {
	Assets   Assets
	Title    Title
	Address  string
	Revision Revision
	Headline string
	Blocked  bool // the headline says that the plan is not ready
	Links    []Link
	Back     *BringBack // nil where the draft is this revision
	Last     *Link      // the revision that superseded it
	Result   *Result
}

// A ComparedPage shows two states of a plan.
type ComparedPage struct {
	Assets                 Assets
	Title                  Title
	Address                string
	FromOptions, ToOptions []Option
	From, To               Side
	Changes                []Change
	Differing, Same        []ComparedFigure
	SameCount              string
	New, Gone              []Finding
	Heading                string
	Back                   *BringBack
}

// BringBack makes an earlier state of a plan its draft again.
type BringBack struct{ Action, Version, Do, Label string }

// A Side is one of two states.
type Side struct {
	Label, Headline, Note, Strip string
	Blocked                      bool // the headline says that the plan is not ready
}

// A ComparedFigure is one figure of both sides.
type ComparedFigure struct{ Group, Label, Was, Is string }
