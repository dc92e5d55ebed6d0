package page

// Shares is what the station lets through and refuses, of all parts that are made.
type Shares struct {
	Intro   string
	Rows    []ShareRow
	Seen    []string // heads of the matrix's columns
	Matrix  []MatrixRow
	Rests   []string // what the figures rest on
	Says    []string // what must be known beside small shares
	Nothing string   // said in place of the shares
	Days    *Days    // nil: not yet, or not known
	Counted bool     // the rows have a column of counted parts
	Lot     bool     // and one of a bad lot
}

// A ShareRow is one of the shares.
type ShareRow struct {
	Label, Means string
	Closed       string
	ClosedMarks  string
	Share        string
	Marks        string // of what must be known beside it
	Limits       string
	Counted      string
	Lot          string
	LotMarks     string
	Strong       bool // one of the two that the targets are about
	Apart        bool // begins another group
}

// A MatrixRow is what the station says of parts of one kind.
type MatrixRow struct {
	Truth string
	Cells []string
}

// SharesPage is the page of the shares of one plan.
type SharesPage struct {
	Assets   Assets
	Title    string // of the document
	Name     string
	Number   string
	Headline string
	Blocked  bool
	Address  string // of the plan's bench
	Trouble  string // said when the entries are no sound plan
	Older    bool   // what is shown is not that of the entries
	Shown    bool
	Stream   string // where the shares come from bit by bit
	Parts    string // of the form
	Seed     string
	Faults   []string // of what was asked for
	NoParts  string   // said beside the field when nothing stands in it
	Asks     bool     // that is to be said now
	Shares   *Shares  // what is known already
	Cautions []string
	Trade    []string
	Digest   string
}
