package page

// A GlossaryPage is every word of the product and every label of its fields.
type GlossaryPage struct {
	Assets   Assets
	Words    []Entries // words, signals, verdicts
	Sections []FieldEntries
}

// Entries is a list of words under a heading.
type Entries struct {
	ID, Label, Help string
	Terms           []Term
}

// A Term is one word, what it means, and the place that links lead to.
type Term struct{ ID, Word, Meaning string }

// FieldEntries are the fields of one section.
type FieldEntries struct {
	ID, Label, Help string
	Fields          []FieldEntry
}

// A FieldEntry is one field of the plan.
type FieldEntry struct {
	ID, Label string
	Path      string // in the plan file
	Help      string
	For       string // the kinds of joint that have it; empty for all
	Unit      string
	Takes     string // its range, or the words of a choice
	Empty     string // what holds when nothing is typed
}
