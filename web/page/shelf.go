package page

// A Shelf is one page of the plans, or of those in the bin.
type Shelf struct {
	Assets Assets
	Title  string
	Path   string // of the shelf or the bin
	Bin    bool
	Text   string // that is searched for
	Orders []Option
	Count  string
	Binned string // how many plans are in the bin; empty for none
	Empty  bool   // there is no plan at all
	NoHit  string // said where the search finds nothing; empty elsewhere
	Cards  []Card
	Pages  Pages
	Undo   *Undo
}

// A Card is one plan on the shelf.
type Card struct {
	Address, Name, Number, Revision string
	Nameless                        bool
	When, Stamp                     string
	Strip                           string // SVG
	Older                           bool   // the strip is that of the last sound plan
	State                           State
	Proof                           State  // of the newest issued revision at its station; empty where there is none
	Due                             Link   // what is due at the station, and where it is seen to; no text where nothing is
	Checked                         string // when the last shift check passed, and when the next one is due
	Asked, AskedAddress, AskedSays  string // of the revision whose digest was searched for
}

// Pages leads to the pages beside this one; empty where there is none.
type Pages struct{ Before, After, Text string }

// Undo takes a plan out of the bin again.
type Undo struct{ Address, Text string }
