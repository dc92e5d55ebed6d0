package page

// A Title names the plan that a page beside its bench is about.
type Title struct{ Address, Name, Number string }

// A Change is one entry that differs.
type Change struct{ Where, Path, Was, Is string }

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
	Rest                string // how many more changes there are
	Note                string
	Stands              bool
	Do                  string // brings it back; empty where that cannot be
}

// A ChoicePage shows both sides of a plan that two windows changed.
type ChoicePage struct {
	Assets  Assets
	Title   Title
	Address string
	Version string
	When    string
	Mine    string
	Changes []Change // Was: what stands; Is: this side
	Trouble string
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
	Issued           []Revision
	Compare          string   // address
	Cannot           string   // why nothing can be issued
	Physical, Others []string // blockers, in sentences
	Trouble          []string
	Fields           []Field
}

// A Revision is one that was issued.
type Revision struct {
	Letter, When, Stamp, Address, Digest string
	Prepared, Checked, Approved          string
	Reason, Despite, Second              string
	Damaged                              bool
}

// An IssuedPage is one issued revision.
type IssuedPage struct {
	Assets   Assets
	Title    Title
	Address  string
	Revision Revision
	Headline string
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
	Figures                []ComparedFigure
	Differing              int
	New, Gone              []Finding
}

// A Side is one of two states.
type Side struct{ Label, Headline, Note, Strip string }

// A ComparedFigure is one figure of both sides.
type ComparedFigure struct {
	Group, Label, Was, Is string
	Differs               bool
}
