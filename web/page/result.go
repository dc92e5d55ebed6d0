package page

// A Result is what a plan leads to, in ready words and figures.
type Result struct {
	Older     string // said while the entries have faults: this is the last valid state
	NotReady  string // said over the setpoints while there is a blocker
	Digest    string
	Strip     string // SVG
	Setpoints []Figure
	Copy      string // the setpoints as text
	Rules     *Rules
	Table     []Lamps
	TableHead string // heads the table of the lamps
	Unclear   string // said when the table is ambiguous
	Shares    BenchShares
	Findings  []Finding
	Count     string
	Groups    []Figures
	Faults    []FaultRow
	Lead      string // what the fault catalogue tells
	Samples   []Figure
	Rule      string   // when the two signals may be read
	Unseen    []string // what this logic cannot detect
	Perfect   string   // what was not given and is taken as perfect
	Cautions  []string
	Trade     []string // cautions of the trade
}

// KeptDrawing stands for a drawing that the window shows already. A drawing ends its line,
// and so does this: what stands around it is then the same too.
const KeptDrawing = "<svg data-kept></svg>\n"

// Drawings are the places of all drawings, in order.
func (r *Result) Drawings() []*string {
	out := []*string{&r.Strip}
	for i := range r.Groups {
		out = append(out, &r.Groups[i].Drawing)
	}
	return out
}

// A Figure is one named figure.
type Figure struct {
	Label, Value, Unit, Note string
	Link                     string // of the field that sets it
	Word                     string // address of what it means in the glossary
	Exact                    string // to the last digit
	Own                      string // as the user's own controller has it
	Marks                    string // of what must be known beside it
}

// Figures is a group of figures.
type Figures struct {
	ID, Label string
	Drawing   string // SVG
	Run       *OnRun // over the drawing of the run
	Rows      []Figure
	Says      []string // what must be known beside them, each behind its mark
	More      Link     // where they are gone into
}

// Lamps is one signal pair and what it means.
type Lamps struct {
	Arrival, Zone bool
	Words         []Word
	Means, Do     string
}

// A Word is a verdict with the name of its colour and hatch.
type Word struct{ Kind, Text string }

// A Finding is one thing that the evaluation has to say.
type Finding struct {
	Severity, Text, Link, Where string
}

// A FaultRow is one row of the fault catalogue.
type FaultRow struct {
	Name, Means   string
	Arrival, Zone string
	Verdict       []Word
	Reading, Time string
	Detection     string
}
