package page

// A HandheldPage is the drill and the station page of one plan in a file of its own:
// it loads nothing, and nothing answers it.
type HandheldPage struct {
	DrillHead
	PairsHead  string   // heads the pairs
	Second     string   // which of two looks is tapped in; empty where there is one
	Policy     string   // what the file may do
	Icon       string   // as a data address
	Style      string   // a whole element
	Script     string   // a whole element
	Data       string   // a whole element: what is right, and why
	Facts      []Fact   // which plan, which state of it, of when
	Honest     []string // what the file is
	Source     string   // that its answers can be read
	When       string   // when the lamps are read
	Pairs      []DrillPair
	Situations []Pick
	Advice     []HandheldAdvice
	Levels     []DrillLevel
	Impossible []string
	Exams      []HandheldExam
	Brief      []string // cautions that answer no question
	Items      []DrillQuestion
	Scenes     []HandheldScene
	CodeNote   []string
}

// A HandheldAdvice is what the plan says of two lamps after something happened.
type HandheldAdvice struct {
	Lamps, Situation string // values, by which they are chosen
	Title            string // of the situation
	LampsAdvice
}

// A HandheldExam is the exam of a role.
type HandheldExam struct {
	Value, Title, Rules, GraveIntro string
	Grave                           []string
}

// A HandheldScene is a drawing that questions show.
type HandheldScene struct{ ID, SVG string }
