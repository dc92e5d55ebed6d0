// Package page holds the components of the pages and the structs of ready
// strings that they print. Nothing is computed here.
package page

// A Bench is the page of one plan: the entries on one side, what they lead to
// on the other.
type Bench struct {
	Assets   Assets
	Title    string // of the document
	Name     string // of the plan
	Headline string // empty before there was any valid plan
	Glance   string // the headline in a few words
	Perfect  string // what was not given and is taken as perfect
	Address  string // of the plan
	Alarm    string // why nothing is saved, in a few words; empty when it is
	Issued   string // what the entries are to the last revision
	Differs  bool   // they are not that revision
	Proved   Link   // whether the station is proved for it; no address before there is one
	CanUndo  bool
	CanRedo  bool
	Binned   bool
	News     *RamNews // the shelf's ram has changed; nil when it has not
	Stale    bool     // another window changed the plan: nothing was saved
	Unsaved  bool     // the archive took nothing
	State    State
	Standing State // of the findings: their number, by the gravest
	Notices  []Notice
	Faults   []Fault // of the entries, each leading to its field
	Form     Form
	Result   *Result // nil before there was any valid plan
	Answer   string  // number of this page among the answers to its window
}

// State says how the entries stand, in a word and a sentence.
type State struct {
	Kind string // valid, incomplete or wrong
	Text string
}

// Assets are the addresses of what the page loads.
type Assets struct {
	Styles  []string
	Print   string // the style for paper, after all others
	Scripts []string
	Icon    string
	Foot    string // stands at the foot of every printed page: of which state of which plan it is
}

// With are the same addresses for a page that has this at its foot on paper.
func (a Assets) With(foot string) Assets {
	a.Foot = foot
	return a
}

// A Notice is something that just happened.
type Notice struct {
	Kind  string // done or refused
	Text  string
	Links []Link // where to look
	Back  bool   // it can be taken back here
}

// A Fault is one fault of the entries.
type Fault struct {
	Link  string // of the field, such as #f-station.nest; empty where there is none
	Where string
	Text  string
}

// saved tells a script how the entries stand in the archive.
func saved(b Bench) string {
	switch {
	case b.Unsaved:
		return "no"
	case b.Stale:
		return "stale"
	}
	return "yes"
}

// glanceAt is where the glance leads: to the result, or to what is wrong.
func glanceAt(b Bench) string {
	if b.Alarm != "" {
		return "#lead"
	}
	return "#result"
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}
