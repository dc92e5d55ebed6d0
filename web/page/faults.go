package page

// A FaultsPage is the fault catalogue and the limit samples of one plan.
type FaultsPage struct {
	Assets   Assets
	Title    string // of the document
	Name     string
	Number   string
	Headline string
	Blocked  bool     // the headline says that the plan is not ready
	Address  string   // of the plan's bench
	Trouble  string   // said when the entries are no sound plan
	Wrong    []Fault  // of the entries, without links: their fields are on the bench
	Shown    bool     // there is a plan to show
	Older    bool     // it is not that of the entries
	Unseen   []string // what this logic cannot detect
	Perfect  string   // what was not given and is taken as perfect
	Lacking  []string // what of the page does not exist, and why
	Rows     []FaultCard
	Doubtful []Link // rows that are not judged surely
	Lead     string // what the catalogue tells
	Sure     string // how surely a row must be judged to go without a mark
	Key      string // what the small strips have in common
	Samples  SampleTable
	Rule     string
	Cautions []string
	Trade    []string
	Digest   string
}

// A FaultCard is one row of the catalogue with its small strip.
type FaultCard struct {
	FaultRow
	ID     string
	Strip  string // SVG
	NoPush string // said in its place where no push takes place
	Mark   string // how badly it is judged, in words; empty for surely
}

// Link leads to a place and says something about it.
type Link struct{ Address, Text, Note string }

// SampleTable is the limit samples to make.
type SampleTable struct {
	Asked  string // what the drawing asks for
	Datum  string // link to the word
	Surely string // link to the field that says how surely they must be judged
	Rows   []Sample
	Notes  []string // how they are made and what they prove
}

// A Sample is one limit sample.
type Sample struct {
	Name        string
	Height      string // from where to where it may lie
	Must        string // what the station must do with it
	Probability string
}
