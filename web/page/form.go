package page

import (
	"slices"

	"github.com/a-h/templ"
)

// Names of the inputs that are no fields of the plan. A colon stands first, so
// that none of them is ever the path of a field.
const (
	NameDo     = ":do"     // what the pressed button wants
	NameFile   = ":file"   // the file to open
	NameExact  = ":exact"  // an entry, as [path, text], that its input shows but cannot hold to the letter
	NameParked = ":parked" // an entry of another kind of joint
	NameOther  = ":other"  // an entry for which the form has no place
	NamePaste  = ":paste"  // two columns to be read into the curve

	NameGrowthLength    = ":growth length"    // the aid beside the reference uncertainty
	NameGrowthChange    = ":growth change"    //
	NameGrowthExpansion = ":growth expansion" //

	NameVersion = ":version" // of the draft that the form started from
	NameState   = ":state"   // of the draft that the form started from, as the history numbers it
	NameWindow  = ":window"  // that sends it
	NameMine    = ":mine"    // the entries of this side, as a draft file
	NamePick    = ":pick "   // starts the name of what picks a side; the path follows
	NameSigned  = ":signed " // starts the name of what is signed; its path follows
)

// A Form is every entry of the draft.
type Form struct {
	Sections []Section
	Hidden   []Hidden
	Parked   string  // what is said about the entries of another kind of joint
	Others   []Entry // entries for which the form has no place
}

// Hidden is an input that is carried along.
type Hidden struct{ Name, Value string }

// An Entry is a path and its text, printed as they are, with the input that
// carries it.
type Entry struct {
	ID, Path, Text, Fault string
	Carrier               Hidden
	Remove                string
}

// A Section is one question of the engineer.
type Section struct {
	ID, Label, Help string
	Kept            bool   // the window shows it as it is: nothing of it is sent
	Faults          string // such as "2 faults, 3 needed"; empty without
	Wrong           bool   // more than missing
	Word            string // address of its fields in the glossary
	Groups          []Group
	From            *RamFrom // of the ram: the one of the shelf that it was copied from
}

// A Group is a few fields that belong together.
type Group struct {
	ID     string
	Label  string // empty for the first fields of a section
	Fields []Field
	Rows   *Rows
	Growth *Growth // the aid beside the reference uncertainty
	Folded bool    // inside a part of the page that opens on demand
	Open   bool
	Note   string // beside the label of a folded group
}

// A Field is one input.
type Field struct {
	ID, Name, Label string
	Kind            string // number, text, area, choice or flag
	Unit            string
	Help            string
	Range           string
	Value           string
	OwnUnit         bool   // the unit was typed behind the figure
	ReadAs          string // said of a figure that can be read in two ways
	StandIn         string // what holds while nothing is typed
	Checked         bool
	Options         []Option
	Required        bool
	Limit           string // of characters
	Messages        []string
	Missing         bool   // its only fault is that nothing was typed
	Why             string // it is needed, where it is not always
	Idle            bool   // of no use beside what is chosen next to it
	Wide            bool
	Spoken          string // unit as it is read out; in a row the whole name, such as "Nominal, row 3"
	InRow           bool
	Word            string // address of its entry in the glossary; empty in a row
}

// Wrong tells whether the field has a fault.
func (f Field) Wrong() bool { return len(f.Messages) > 0 }

// An Option is one word of a choice.
type Option struct {
	Value, Label string
	Chosen       bool
}

// A Start fills an empty list.
type Start struct{ Do, Label string }

// Rows is a list of rows: parts, curve points, own faults.
type Rows struct {
	ID, Path, Label, Help string
	Messages              []string
	Need                  string // what is needed where nothing was given at all
	Columns               []Column
	Rows                  []Row
	AddLabel, Add         string
	Starts                []Start // what an empty list can be filled with, or a full one lacks
	StartsSay             string
	Paste                 *Paste
	Curve                 *CurveEditor
	Doubts                []Doubt
	Title                 bool // the label is not said by the section already
	Compact               bool // rows of a few short entries
	Explain               bool // the columns are explained once, above the rows
}

// A Doubt is a question about what was read, and the command that mends it.
type Doubt struct{ Text, Do, Button string }

// A Column is the head of one column of rows.
type Column struct{ Label, Unit, Help, Word string }

// A Row is one row. Empty commands are not offered.
type Row struct {
	ID, Number             string
	Carrier                Hidden // holds the row even when nothing is typed in it
	Fields                 []Field
	Messages               []string
	Doubts                 []Doubt
	Remove, Up, Down       string
	RemoveAs, UpAs, DownAs string // spoken names of the buttons
	Repeat, RepeatAs       string // copies the row, where that makes sense
	ActsAs                 string // and of all of them
}

// HasFlags tells whether the row has boxes to tick; they stand together.
func (r Row) HasFlags() bool {
	return slices.ContainsFunc(r.Fields, func(f Field) bool { return f.Kind == "flag" })
}

// Paste is the place for two columns of text.
type Paste struct {
	Text  string
	Do    string
	Lines []string // faults of the text
	Open  bool
}

// Growth is an aid that makes a length from a warm-up.
type Growth struct {
	Length, Change, Expansion string
	Way                       string // from home to the nest, mm; empty while it is not known
	Steel                     string // what stands in for the expansion
	Faults                    []string
	Open                      bool
	Do                        string
}

// attributes are what every control says about itself.
func attributes(f Field) templ.Attributes {
	a := templ.Attributes{"aria-describedby": f.ID + "-n"}
	if f.Wrong() {
		a["aria-invalid"] = "true"
	}
	if f.Required {
		a["aria-required"] = "true"
	}
	if f.InRow {
		a["aria-label"] = f.Spoken
	}
	return a
}

// wayHint tells the way from home to the nest, where it is known.
func wayHint(way string) string {
	if way == "" {
		return "."
	}
	return ", such as the " + way + " mm from home to the nest."
}
