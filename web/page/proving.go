package page

import "slices"

// Names of the inputs of the pages on which a station is proved.
const (
	NameFrom    = ":from"    // row of the study that the table begins with, from 0
	NameCount   = ":count"   // how many rows the table was sent with
	NameColumns = ":columns" // those of the table, apart by bars
	NameText    = ":text"    // a table as text, to be read in
	NameCell    = ":cell"    // where a pasted block begins: row and column, from 0
	NameTake    = ":take"    // an entry that a study offers, to be taken; its path is the value
	NameWho     = "who"      // who signs
	NameWhen    = "when"     // when something happened
	NameWhat    = "what"     // what happened
	NameNotes   = "notes"
)

// A ProvingPage is the page of a plan's proving: what is needed, what is there, what it says,
// what is still open.
type ProvingPage struct {
	Assets  Assets
	Title   Title
	Address string // of the plan
	State   ProvingState
	Notices []Notice
	Needs   []Need
	Studies []StudyCard
	Open    []OpenPoint // what is still open
	Nothing string      // said in place of open points
	Event   EventForm
	Station StationChecks
	Upload  Upload
	Unsound string // why nothing can be assessed; empty where something can
	Caution PushCaution
	Files   []Link
}

// A PushCaution stands where pushes are taken.
type PushCaution struct {
	Says  []string
	SetUp *Link // the printed page of set-up; nil where there is no plan to set up by
}

// A ProvingState is whether the station is proved for the newest revision.
type ProvingState struct {
	Kind  string // proved, not_proved, withdrawn, expired or none
	Text  string
	Found string // how the station keeps the promise, as it was found
	Alarm string // what speaks against it today
}

// A Need is one kind of study that a station is proved by.
type Need struct {
	Kind, Name, Asks string
	Optional         bool
	State, StateText string
	Next             string // what to do
	Study            *Link  // that counts
	Typing           []Link // begun, not signed
	Do, DoLabel      string // begins a study
	First            bool   // the next thing to do
}

// A StudyCard is a study in the list of those that are there.
type StudyCard struct {
	ID, Address, Name, When, By string
	Typing                      bool // not signed yet
	Verdict, VerdictText        string
	Lead                        string // what it says, in a sentence
	Counts                      string // that it counts, or why it does not
	Says                        *Says
	Folded                      bool
}

// An OpenPoint is something that stands between the station and proved.
type OpenPoint struct{ Kind, Name, Text string }

// Says is what a study says of a plan.
type Says struct {
	Verdict, VerdictText string
	Empty                string // in place of everything else
	Checks               []CheckLine
	Findings             []Finding
	Drawings             []string // SVG with their text equivalents
	Files                []Link   // of the drawings
	Tables               []SaysTable
}

// A CheckLine is one check in words.
type CheckLine struct{ Name, Outcome, OutcomeText, Text string }

// A SaysTable is figures of a study.
type SaysTable struct {
	ID, Head string
	Heads    []string
	Rows     []SaysRow
}

// A SaysRow is one row of figures.
type SaysRow struct {
	Label string
	Cells []string
}

// An EventForm takes what happened to the station.
type EventForm struct {
	Picks     []Pick
	When, Who string
	Notes     string
	Faults    []string
	Events    []EventLine
	Confirm   *EventConfirm // asked before it is kept
}

// An EventConfirm says what keeping an event does, before it is kept for good.
type EventConfirm struct {
	Lead   string
	Facts  []Fact
	Hidden []Hidden
	Does   []string // what it withdraws, and that it never goes away
	Keep   string   // on the button
	Change string   // on the button that goes back to the form
}

// An EventLine is something that happened.
type EventLine struct{ What, When, By, Notes, Effect string }

// StationChecks leads to the checks made at the station.
type StationChecks struct {
	Warned  string // what stands against the station
	Address string // of the page to fill in
	History string
	Text    string // when the last one was, and whether one is due
	Due     bool
	Failed  bool // the last one did
}

// An Upload takes a table of text as a new study.
type Upload struct {
	Text   string
	Faults []string
	Open   bool
}

// A StudyPage is one study: the table in which it is typed, or as it was signed, and beside it
// what it says.
type StudyPage struct {
	Assets  Assets
	Title   Title
	Address string // of the plan
	Here    string // of the study
	Name    string // of its kind
	Asks    string // the question that it answers
	How     string // how it is taken; empty where it has rows enough
	Caution PushCaution
	Against string // which state of the plan it is held against
	Links   []Link // the study that it corrects, or that corrects it; its files
	Notices []Notice
	State   State
	Saved   bool
	Stale   bool
	Version string
	Window  string
	Signed  []Fact // who signed when; nil while it is typed
	Again   string // makes a corrected study of a signed one
	Heads   []Field
	Folded  []Field // heads that are seldom given
	Given   string  // which of them are
	Table   *StudyTable
	Faults  []string // of what has no field
	Sign    *SignForm
	Says    Says
	Adopt   *Adoption
	Upload  *Upload
	Removes bool // it can be thrown away
}

// A StudyTable is the rows of a study.
type StudyTable struct {
	Columns  []StudyColumn
	Rows     []StudyRow
	From     string // of the first row shown, from 0
	Count    string // of the rows shown that are there
	Names    string // of the columns, apart by bars
	More     []Start
	Shown    string // which rows of how many are shown; empty where all are
	Before   string // address of the rows before
	After    string
	Typed    bool   // it is typed into
	Empty    string // how many rows are to be filled in
	Faulty   string
	FaultyAt string // address of the first row with a fault on another leaf
}

// A StudyColumn is one column.
type StudyColumn struct {
	Name, Label, Unit, Help string
	Kind                    string // number, lamp, condition or text
	Required                bool
}

// A StudyRow is one row.
type StudyRow struct {
	ID, Number string
	Flag       string // said of a row that stands out
	Cells      []StudyCell
	Faults     []string
	Remove     string
	Blank      bool // nothing is typed in it
}

// A StudyCell is one cell.
type StudyCell struct {
	ID, Name, Text, Spoken string
	Kind                   string
	Wrong                  bool
}

// A SignForm keeps a study for good.
type SignForm struct {
	Who   string
	Fault string
	Note  string // what stands in the way, or what signing does
	Ready bool
}

// Adoption is what a study offers as new entries, and what taking them does.
type Adoption struct {
	Lead    string
	Offers  []Offer
	Effects []Effect // what would change with what is picked
	Trouble string
	Taken   string // the draft has all of it
	New     []Finding
	Gone    []Finding
	Correct *NestCorrection
	Version string // of the draft
}

// An Offer is one value.
type Offer struct {
	Path, Label, Was, Is, Does string
	Picked                     bool
}

// An Effect is one figure before and after.
type Effect struct{ Group, Label, Was, Is string }

// A NestCorrection is a nest moved by whole steps, and what it does.
type NestCorrection struct {
	Text string
	Rows []Effect
}

// Span is how many columns a row of the table has behind its number.
func (t StudyTable) Span() string {
	n := len(t.Columns)
	if t.Typed {
		n++
	}
	return spans[min(n, len(spans)-1)]
}

// spans are the numbers of columns in words of a page; no study has more.
var spans = []string{"1", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15"}

// someWrong tells whether any of the fields has a fault.
func someWrong(fs []Field) bool { return slices.ContainsFunc(fs, Field.Wrong) }

// NameAs says, in a form, in which form its study is shown again.
const NameAs = ":as"

// NameOnce is made once for a form, so that what is sent twice is kept once.
const NameOnce = ":once"

// A CheckPage is limit samples shown to the station, push by push.
type CheckPage struct {
	Assets  Assets
	Title   Title
	Address string // of the plan
	Here    string // where the form goes
	Kind    string // Shift check, or Limit samples
	Lead    string
	State   State // of what was typed
	Against string
	Warned  string // what stands against the station
	Probe   string // which pushes are made with the probe left out
	Back    Link
	Hidden  []Hidden
	Notices []Notice
	Cards   []CheckCard
	Fields  []Field // the head of the study
	Overall Overall
	Who     string
	NoWho   string
	Sign    string // what the button says
	Refused string // why there is nothing to fill in
	Shift   bool
	Saved   bool
}

// An Overall is how a check stands as a whole.
type Overall struct{ Kind, Text, Why string }

// A CheckCard is one push.
type CheckCard struct {
	ID, Number, Name, Bounds    string
	Sample, With                string // as it is kept; with the probe or without it
	HeightName, Height          string // no name: it has none
	Predicted, PredictedReading string
	ArrivalName, Arrival        string
	ZoneName, Zone              string
	ReadingName, Reading        string // no name: none is asked
	Hidden                      []Hidden
	Outcome, OutcomeText, Why   string
	Faults                      []string
}

// A ChecksPage lists the shift checks of a plan.
type ChecksPage struct {
	Assets  Assets
	Title   Title
	Address string
	Due     string
	IsDue   bool
	Warned  string // what stands against the station
	Lines   []ShiftLine
	CSV     []Link // one for each way to separate cells
	Paper   string // to be signed
}

// A ShiftLine is one shift check.
type ShiftLine struct {
	Address, When, Stamp, Who, Revision, Outcome, OutcomeText, Lead string
}

// A ShiftPage is one shift check as it was signed.
type ShiftPage struct {
	Assets  Assets
	Title   Title
	Address string
	Outcome string
	Verdict string
	Facts   []Fact
	Table   SaysTable
	Damaged string
}
