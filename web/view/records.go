package view

import (
	"maps"
	"net/url"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/drill"
	"ramplan/press/training"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Training is a record of an exam with what stands around it.
type Training struct {
	training.Record
	Address, Station string // of the record, and of the records of its station
	Became           string // letter of the revision that is what was a draft then
	Again            string // why an exam has to be taken again; empty where that is not asked
}

func personPath(who string) string { return "/people?who=" + url.QueryEscape(who) }

func (t Training) line() page.TrainingLine {
	out := page.TrainingLine{
		Address: t.Address, Station: t.Station, Who: t.Who, Person: personPath(t.Who), Plan: t.plan(), Result: t.result(), Passed: t.Passed,
		Score: t.score(), State: t.state(), When: say.When(t.At), Stamp: words.Stamp(t.At), Took: Lasting(t.Took), Damaged: t.Damaged,
		Repeat: say.SetOf(t.Repeat, t.Known), Why: t.Again,
	}
	if t.TypedIn() != "" {
		out.Repeat, out.Passed = strings.TrimSuffix(words.TypedIn+"; "+out.Repeat, "; "), false
	}
	if t.Damaged {
		out.Plan = say.PlanUnreadable()
	}
	return out
}

func (t Training) plan() string {
	return strings.TrimSpace(t.Number + " " + Title{Name: t.Name}.page().Name)
}

func (t Training) result() string {
	o := words.Outcome{Passed: t.Passed, Draft: t.Revision == "" && t.Became == "", Below: t.Right < t.Needed, OverTime: t.OverTime, Unfinished: t.Unfinished, Grave: t.Grave}
	if t.TypedIn() != "" {
		return say.TypedOutcome(t.Exam, o)
	}
	return o.String()
}

func (t Training) score() string {
	if t.Unfinished {
		return say.NotFinished(strconv.Itoa(t.Answered), strconv.Itoa(t.Items))
	}
	return strconv.Itoa(t.Right) + " of " + strconv.Itoa(t.Items) + " right"
}

func (t Training) state() string {
	return say.Plan(t.Exam, t.revision("Revision "), t.Digest)
}

// revision says which state of its plan an exam was about.
func (t Training) revision(before string) string {
	switch {
	case t.Revision != "":
		return before + t.Revision
	case t.Became != "":
		return say.DraftThatBecameRevision(t.Became)
	}
	return "Draft"
}

func lineList(all []Training) []page.TrainingLine {
	var out []page.TrainingLine
	for _, t := range all {
		out = append(out, t.line())
	}
	return out
}

// Records are those of one station.
type Records struct {
	Title  Title
	Plan   string // its address
	Letter string // of the last revision that was issued; empty without
	All    []Training
	Due    []Due
	Same   []string // letters of the revisions before it on which a pass counts as well
}

// Due is who has to take one exam again: the records by which that is known.
type Due struct {
	Exam string
	All  []Training
}

// Page gives the page of a station's records.
func (v Records) Page(assets page.Assets) page.RecordsPage {
	t := v.Title.page()
	out := page.RecordsPage{
		DrillHead: page.DrillHead{Assets: assets, Title: say.RecordsOfTitle(t.Name), Kind: "Records", Name: t.Name, Number: t.Number, Plan: v.Plan, Letter: v.Letter, Notices: words.CardCautions},
		Counts:    say.RevisionCounts(v.Letter),
		All:       lineList(v.All), CSV: tables(v.Plan+"/records.csv", nil),
	}
	for _, d := range v.Due {
		if len(d.All) > 0 {
			out.Due = append(out.Due, page.DueList{Exam: say.ExamOf(d.Exam), Lines: lineList(d.All)})
		}
	}
	if len(v.Same) > 0 {
		out.Counts += say.PassCountsAsWell(strings.Join(v.Same, " or "))
	}
	if v.Letter == "" {
		out.Letter = "draft"
		out.Counts = say.DraftCounts()
	}
	return out
}

// tables are the files of a table, one for each way to separate its cells.
func tables(address string, query url.Values) []page.Link {
	var out []page.Link
	for i, way := range words.Separations {
		v := maps.Clone(query)
		if v == nil {
			v = url.Values{}
		}
		if i > 0 {
			v.Set("separator", way.Name)
		}
		l := page.Link{Address: address, Text: say.AllAsCSV(way.Name)}
		if len(v) > 0 {
			l.Address += "?" + v.Encode()
		}
		out = append(out, l)
	}
	return out
}

// People is everybody who has records.
type People struct{ All []Person }

// A PersonDue is a plan on which somebody has to be trained, with the exam, and why.
type PersonDue struct {
	What, Why string
	Again     bool // it was passed before
}

// A Person is one of them.
type Person struct {
	Who     string
	Records int
	Newest  Training
	Due     []PersonDue
}

// Page gives the page of everybody.
func (v People) Page(assets page.Assets) page.PeoplePage {
	out := page.PeoplePage{Assets: assets, CSV: tables("/people.csv", nil)}
	for _, p := range v.All {
		line := page.PersonLine{Who: p.Who, Address: personPath(p.Who), Records: counted(p.Records, "record", "records"), Newest: p.Newest.line()}
		for _, d := range p.Due {
			what := say.ToBeTrained()
			if d.Again {
				what = say.ToBeTrainedAgain()
			}
			line.Due = append(line.Due, page.DueLine{What: what + d.What + ".", Why: d.Why})
		}
		out.All = append(out.All, line)
	}
	return out
}

// Personal is one person's records.
type Personal struct {
	Who     string
	All     []Training
	Trouble string
}

// Page gives the page of one person.
func (v Personal) Page(assets page.Assets) page.PersonPage {
	return page.PersonPage{
		Assets: assets, Who: v.Who, All: lineList(v.All), CSV: tables("/people.csv", url.Values{"who": {v.Who}}), Remove: say.RemoveRecords(counted(len(v.All), "record", "records")), Trouble: v.Trouble,
	}
}

// A Record is one record, with what was missed in words.
type Record struct{ Training }

// Page gives the page of one record.
func (v Record) Page(assets page.Assets) page.RecordPage {
	out := page.RecordPage{Assets: assets, Line: v.line()}
	for _, m := range v.Misses {
		line := page.MissLine{Question: numbered(m) + m.Question, Given: m.Given, Right: m.Right}
		if m.Alone {
			line.Alone = words.AloneFails
		}
		out.Missed = append(out.Missed, line)
	}
	took := Lasting(v.Took)
	if v.Limit > 0 {
		took += " of " + Lasting(v.Limit)
	}
	if v.Unfinished {
		out.Left = say.LeftUnjudged()
	}
	score := v.score()
	if !v.Unfinished && v.Needed > 0 {
		score += say.Needed(v.Needed, v.Pass)
	}
	out.Facts = []page.Fact{
		{Name: "Exam", Text: say.ExamOf(v.Exam)}, {Name: "When", Text: say.When(v.At)}, {Name: "Plan", Text: v.plan()}, {Name: "Revision", Text: v.revision("")}, {Name: say.PlanDigest(), Text: words.ShortDigest(v.Digest)},
		{Name: "Score", Text: score},
		{Name: "Time", Text: took}, {Name: say.SeedOfTheExam(), Text: strconv.FormatUint(v.Seed, 10)},
	}
	if code := v.TypedIn(); code != "" {
		out.Untold = words.NoMissesInCode
		if c, err := drill.ParseCode(code); err == nil {
			out.Facts = append(out.Facts, page.Fact{Name: say.TakenOnDevice(), Text: c.Day})
		}
		out.Facts = append(out.Facts, page.Fact{Name: "Code", Text: code})
	}
	for _, format := range []string{"pdf", "png", "svg"} {
		out.Files = append(out.Files, page.Link{Address: v.Address + "/sheet." + format, Text: strings.ToUpper(format)})
	}
	return out
}

// ItemTitles says what items of a plan's drill ask, by the plan of that time; where
// it is not at hand, by their kind.
func ItemTitles(p *press.Plan, keys []string, seed uint64) []training.Miss {
	var d *drill.Drill
	if p != nil {
		r := press.Evaluate(p)
		d, _ = drill.New(say.Printer, p, r, say.Reactions(p, r))
	}
	var out []training.Miss
	for _, key := range keys {
		m := training.Miss{}
		if d != nil {
			m.Question = d.Title(key, seed)
		}
		if m.Question == "" {
			if m.Question = saidOf(kindNames, drill.KindOfKey(key)); m.Question == "" {
				m.Question = say.QuestionNoLongerAsked()
			}
			m.Question += say.AskedNotAtHand()
		}
		out = append(out, m)
	}
	return out
}

// numbered is what stands before a question that was missed: its number in the exam.
func numbered(m training.Miss) string {
	if m.Number == 0 {
		return ""
	}
	return strconv.Itoa(m.Number) + ". "
}

// MissesInWords puts what was missed into one text.
func MissesInWords(all []training.Miss) string {
	var out []string
	for _, m := range all {
		s := numbered(m) + m.Question
		if m.Right != "" {
			s += " Answered: " + strings.TrimSuffix(m.Given, ".")
			if m.Alone {
				s += " (" + words.AloneFails + ")"
			}
			s += say.Right(strings.TrimSuffix(m.Right, "."))
		}
		out = append(out, s)
	}
	return strings.Join(out, " ")
}
