package page

// A DrillHead is what every page of a plan's drill has.
type DrillHead struct {
	Assets  Assets
	Title   string // of the document
	Kind    string // of the page, over the plan's name
	Name    string
	Number  string
	Plan    string // address of the plan
	Letter  string // of the revision; draft for the draft
	State   string // which state of the plan it is, in a sentence
	Proved  Link   // whether the station is proved for it; no address where that is not said
	States  []Option
	Notices []string
	Shout   string // in a bar over everything else: that this is nothing to judge by
	First   bool   // the cautions stand before everything else
	Refused string // why this plan has no drill; then there is nothing else
}

// A DrillHome lists what can be practised.
type DrillHome struct {
	DrillHead
	Levels     []DrillLevel
	When       string // when the lamps are read
	PairsHead  string // heads the pairs
	FirstWords []Term // the words to be read first
	Glossary   string // where the others are
	Pairs      []DrillPair
	Advice     string   // which level to take before an exam
	Impossible []string // kinds that this plan does not allow, and why
	UnderWay   []ExamUnderWay
	Seed       string // for what is begun now
	Form       ExamForm
	Outdated   string // who has to be trained again, in a sentence; empty for nobody
	Card       []Link
}

// An ExamUnderWay is an exam that was begun and not handed in.
type ExamUnderWay struct {
	Who, Exam, Begun, Stamp, Left, Answered, Address string
	Plan                                             string // its name, on a page of several plans; else empty
	Open                                             string // what the link to it says
}

// An ExamChoice is an exam that can be begun.
type ExamChoice struct {
	Value, Name, About string
	Rules              string   // its rules in a sentence
	GraveIntro         string   // before what fails it alone
	Grave              []string // that, a line each
	Chosen             bool
}

// An ExamForm is what begins an exam, as typed, with what is wrong with it.
type ExamForm struct {
	Exam                                                     string       // whose
	Exams                                                    []ExamChoice // that the plan has questions for
	Who, Seed, Items, Pass, Minutes                          string
	WhoFault, SeedFault, ItemsFault, PassFault, MinutesFault string
}

// Wrong tells whether anything is.
func (f ExamForm) Wrong() bool {
	return f.WhoFault != "" || f.Unusual()
}

// Unusual tells whether something is wrong with what the trainer chose.
func (f ExamForm) Unusual() bool {
	return f.SeedFault+f.ItemsFault+f.PassFault+f.MinutesFault != ""
}

// A DrillPair is what two lamps mean in this plan.
type DrillPair struct{ Arrival, Zone, Verdict, Act string }

// A DrillLevel is one level to begin a round of.
type DrillLevel struct{ Number, What, Items string }

// A DrillRound is a round under way.
type DrillRound struct {
	DrillHead
	Seed, Level, Digest, Answers string // carried along
	Next                         string // seed of another round
	Progress                     string
	Question                     DrillQuestion
	Answered                     bool
	Done                         *DrillScore
}

// A DrillQuestion is one exercise as it is asked, or answered.
type DrillQuestion struct {
	Number   string // in an exam; empty in a round
	Alone    string // that the answer given alone fails; empty for most
	Name     string // of its inputs
	Text     string
	Facts    []string
	Lamps    []DrillLamp
	Picture  string // SVG, in both forms; empty without
	Ended    bool   // the picture shows what came of it
	Steps    []string
	Choices  []DrillChoice
	Parts    []DrillPart // where a zone is asked for
	From, To string      // as typed
	Trouble  string      // why what was typed is no answer; then it is asked again
	Verdict  string      // Right or Wrong; empty before the answer
	Right    bool
	Reason   string
	Answers  []string // the right answers, after a wrong one
}

// A DrillLamp is a lamp and its state: on, off.
type DrillLamp struct{ Name, State string }

// A DrillChoice is one answer to choose from.
type DrillChoice struct {
	Value, Text string // its value tells nothing
	Chosen      bool
	Right       bool     // shown after the answer
	Marks       []string // that it is the answer that was given, and that it is right; none before the answer
}

// Given tells whether it is a wrong answer that was given.
func (c DrillChoice) Given() bool { return len(c.Marks) > 0 && !c.Right }

// A DrillPart is a part that a zone must judge; its reading is empty where it is to
// be worked out.
type DrillPart struct{ Height, Reading, Word string }

// A DrillScore is what a round or an exam came to.
type DrillScore struct {
	Score  string // in a sentence
	Passed string // of an exam: Passed or Not passed, and why
	Missed []DrillMiss
}

// A DrillMiss is a question that was missed.
type DrillMiss struct {
	Text   string
	Lamps  []DrillLamp
	Alone  string // that the answer alone failed; empty for most
	Number string // of the question in an exam, and its anchor; empty in a round
}

// A DrillExam is an exam to be filled in, or judged.
type DrillExam struct {
	DrillHead
	Seed, Who  string
	Address    string // of the exam
	Rules      string
	GraveIntro string
	Grave      []string // what fails it alone
	Exam       string   // whose
	Clock      ExamClock
	Kept       string   // what is kept of the answers so far
	Trouble    string   // why it was not handed in
	Open       []string // numbers of the questions without an answer, where it is asked whether that is meant
	Items      []DrillQuestion
	Done       *DrillScore
	Record     string // address; empty when it was not kept
}

// An ExamClock is the time of an exam: where it has a limit, until when, and how much
// of it is left.
type ExamClock struct {
	Until, Left    string
	Seconds, Share string // left; of 100, left of the whole
	Over           string // that it is over; empty before
}

// A StationPage is the station in motion.
type StationPage struct {
	DrillHead
	Rows    []Pick
	Height  string // as typed
	Trouble string
	Hint    string // what the height looks like, if not like one
	Scene   string // what is shown
	Figures []StationFigure
	Strip   string // SVG of both forms
	Cursor  string // JSON
	Apart   string // what of the cycle the picture leaves out
	Steps   []string
	Stills  []StationStill
	Run     *RunPlayed // the whole cycle, where the plan lists steps
}

// RunPlayed is the whole cycle, which a script plays on its drawing.
type RunPlayed struct {
	SVG, Box string
	Ways     string // JSON
	Names    []Pick
}

// A StationFigure is one form of the side view with what moves it.
type StationFigure struct{ Form, SVG, Motion string }

// A StationStill is one picture of the row of stills.
type StationStill struct{ Caption, SVG string }

// A LampsPage tells what two lamps mean at the station.
type LampsPage struct {
	DrillHead
	When          string // when the lamps are read
	Looks         []Pick // at which of two looks the lamps were seen; none where there is one
	Arrival, Zone string // on, off or empty
	Situations    []Pick
	Reading       string
	ReadingFault  string // why it is left out; the lamps are answered all the same
	Trouble       string
	Warned        string // what stands against the station
	Check         Link   // to the shift check
	Advice        *LampsAdvice
}

// A LampsAdvice is what this plan says.
type LampsAdvice struct {
	Lamps   string
	Verdict string
	Fate    string // good, long, short or empty: how the word is drawn
	Meaning string
	Why     string
	Height  string
	Doubt   string
	Edge    string // lamps and reading fit by less than half a step
	Alone   string // that a reading was left out
	Part    string
	Checks  []string
	Note    string
}

// A Pick is one line of a list to choose from.
type Pick struct {
	Value, Text string
	Chosen      bool
}

// To is the address of a page of the same state of the plan.
func (h DrillHead) To(beside string) string {
	return h.Plan + beside + "?revision=" + h.Letter
}

// pages are those of a drill.
func (h DrillHead) pages() []Link {
	return []Link{
		{Address: h.To("/drill"), Text: "Drill"},
		{Address: h.To("/motion"), Text: "Station in motion"},
		{Address: h.To("/station"), Text: "At the station"},
		{Address: h.To("/records"), Text: "Records"},
	}
}

var lampStates = []string{"on", "off"}
