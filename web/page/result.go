package page

// A Result is what a plan leads to, in ready words and figures.
type Result struct {
	Older     string // said while the entries have faults: this is the last valid state
	Digest    string
	Strip     string // SVG
	Setpoints []Figure
	Table     []Lamps
	Unclear   string // said when the table is ambiguous
	Findings  []Finding
	Count     string
	Groups    []Figures
	Faults    []FaultRow
	Samples   []Figure
	Cautions  []string
}

// A Figure is one named figure.
type Figure struct {
	Label, Value, Unit, Note string
	Link                     string // of the field that sets it
	Exact                    string // to the last digit
}

// Figures is a group of figures.
type Figures struct {
	ID, Label string
	Rows      []Figure
}

// Lamps is one signal pair and what it means.
type Lamps struct {
	Arrival, Zone bool
	Words         []Word
	Do            string
}

// A Word is a verdict with the name of its colour and hatch.
type Word struct{ Kind, Text string }

// A Finding is one thing that the evaluation has to say.
type Finding struct {
	Severity, Text, Link, Where string
}

// A FaultRow is one row of the fault catalogue.
type FaultRow struct {
	Name, Arrival, Zone, Reading, Time, Detection string
	Verdict                                       []Word
}
