package page

// A RecordsPage lists who was trained on a plan.
type RecordsPage struct {
	DrillHead
	Counts   string // which state people must know, in a sentence
	Due      []DueList
	UnderWay []ExamUnderWay
	All      []TrainingLine
	CSV      []Link
	Code     CodeForm
}

// A DueList is who has to take one exam again.
type DueList struct {
	Exam  string
	Lines []TrainingLine
}

// A CodeForm takes a record code, as typed, with what is wrong with it.
type CodeForm struct{ Text, Fault string }

// A TrainingLine is a record in a list.
type TrainingLine struct {
	Address string
	Who     string
	Person  string // address of the person's records
	Station string // address of the station's
	Plan    string
	Result  string // Passed, Not passed or Not finished
	Passed  bool
	Score   string
	State   string // revision or draft, and digest
	When    string
	Stamp   string
	Took    string
	Repeat  string // that the set had been given before; empty for a fresh one
	Why     string // the exam has to be taken again; empty where that is not the question
	Damaged bool
}

// A PeoplePage lists who has records.
type PeoplePage struct {
	Assets   Assets
	UnderWay []ExamUnderWay
	CSV      []Link
	All      []PersonLine
}

// A PersonLine is one of them.
type PersonLine struct {
	Who, Address, Records string
	Newest                TrainingLine
	Due                   []DueLine
}

// A DueLine is what somebody has to be trained in again, and why.
type DueLine struct{ What, Why string }

// A PersonPage is one person's records.
type PersonPage struct {
	Assets  Assets
	Who     string
	All     []TrainingLine
	CSV     []Link
	Remove  string // what the button says
	Trouble string
}

// A RecordPage is one record.
type RecordPage struct {
	Assets Assets
	Line   TrainingLine
	Facts  []Fact
	Missed []MissLine
	Left   string // that it was begun and left; empty for one that was handed in
	Files  []Link
	Untold string // that it is not known what was missed; empty where it is
}

// A Fact is a name and what it is.
type Fact struct{ Name, Text string }

// A MissLine is an item that was missed; what was given and what is right are
// empty where they were not kept.
type MissLine struct {
	Question, Given, Right string
	Alone                  string // that the answer alone failed; empty for most
}
