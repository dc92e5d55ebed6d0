package page

// A Ram is one on the shelf of rams, as a list shows it.
type Ram struct {
	ID, Address, Version                          string
	Name, Called, Source, Measured, Method, Notes string
	When, Stamp                                   string
	Curve                                         string // SVG; empty where there is nothing to draw
	Damaged                                       bool
}

// A RamWord is what a ram's controller calls one setpoint.
type RamWord struct{ Setpoint, Called, Unit, Factor string }

// A RamsPage lists the rams on the shelf.
type RamsPage struct {
	Assets  Assets
	Text    string // that is searched for
	Count   string
	Empty   bool   // there is no ram at all
	NoHit   string // said where the search finds nothing
	Rams    []Ram
	Removed string // what was taken off just now
	Back    string // a document that puts it back
}

// A RamFigure is one entry of a ram.
type RamFigure struct {
	Label, Value, Unit string
	Empty              bool // not given: the value is what holds instead
}

// A RamPage is the page of one ram.
type RamPage struct {
	Assets  Assets
	Ram     Ram
	Fields  []Field
	Trouble []string
	Done    string
	Look    string // to what that was done asks to look at; empty for nothing
	Figures []RamFigure
	Points  [][2]string
	Words   []RamWord // what its controller calls the setpoints
	Plans   []Option  // whose figures it may take
}

// A PlanRamPage is where a plan takes a ram from the shelf, or gives its own.
type PlanRamPage struct {
	Assets     Assets
	Title      Title
	Address    string // of the plan
	Version    string
	Text       string // that is searched for
	Count      string
	Empty      bool
	NoHit      string
	From       string // the shelf's ram that the plan's was copied from
	Rams       []Ram
	Nothing    bool // the plan has no entry of a ram
	Fields     []Field
	Trouble    []string
	Put, PutID string // the ram that was put on the shelf just now
}

// RamFrom says from which ram of the shelf a plan's was copied.
type RamFrom struct {
	ID, Name string
	Hidden   []Hidden
	Messages []string
}

// RamNews tells that the shelf's ram has changed since.
type RamNews struct {
	Text    string
	Changes []Change // of this plan, if it takes the ram anew
	Rest    string   // how many more there are
}
