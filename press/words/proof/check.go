package proof

import (
	"fmt"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// A SampleToShow is a push that a check of the lamps asks for.
type SampleToShow struct {
	Name   string   // as it is written into the table
	Bounds string   // between which heights it is made; empty for what has none
	Middle *float64 // mm, between them
}

// SamplesToShow are the limit samples of a plan, the bare nest, and the nest without an insert.
func (say Words) SamplesToShow(r *press.Result) []SampleToShow {
	var out []SampleToShow
	for _, x := range say.LimitSamples(r.Plan, r) {
		if x.Pressed() {
			out = append(out, SampleToShow{x.Name, x.Heights(r.Plan), new((x.From + x.To) / 2)})
		}
	}
	if r.Plan.MarksInsert() {
		out = append(out, SampleToShow{Name: proving.NoInsert})
	}
	return append(out, SampleToShow{Name: proving.BareNest})
}

// SampleName names a sample for people.
func (say Words) SampleName(name string) string {
	switch name {
	case proving.NoInsert:
		return "Without an insert"
	case proving.BareNest:
		return "Empty nest"
	}
	return name
}

// ShiftCheck and LimitSampleCheck head the page on which samples are shown.
func (say Words) ShiftCheck() string { return "Shift check" }

// LimitSampleCheck heads the page of a study of limit samples.
func (say Words) LimitSampleCheck() string { return "Limit samples" }

// CheckLead says what is done on the page.
func (say Words) CheckLead(shift bool) string {
	if shift {
		return "Push each once, tap which lamps came, type the reading. It is kept when it is signed."
	}
	return "Push each, tap which lamps came, type the reading. What is filled in is kept at once, and counts when it is signed."
}

// CheckAgainst names the window that is checked.
func (say Words) CheckAgainst(letter, digest string) string {
	if letter == "" {
		return "Against the draft"
	}
	return "Against revision " + letter + ", " + fmt.Sprintf("%.*s", len("sha256:")+12, digest)
}

// NothingToCheck says that no window is at work.
func (say Words) NothingToCheck() string {
	return "Nothing is issued yet: a shift check is made against the window of an issued revision. Issue one, or show limit samples as a study."
}

// NoSamples says that the plan has no limit samples.
func (say Words) NoSamples() string {
	return "This plan predicts no lamps, so there is nothing to check them by."
}

// PredictedLamps says which lamps a push shall give.
func (say Words) PredictedLamps(r proving.SampleRow) string {
	return say.LampsPredicted(r.Arrival, r.Zone)
}

// PredictedReading says which reading a push shall give.
func (say Words) PredictedReading(r *press.Result, x proving.SampleRow) string {
	if x.PredictedReading == nil {
		return ""
	}
	pos := say.Positions(r.Plan).Fine()
	if x.Allowed != nil {
		return "at " + pos.Bare(*x.PredictedReading) + " ± " + pos.At(*x.Allowed)
	}
	return "at " + pos.At(*x.PredictedReading)
}

// PushWord is how one push went, in a word.
func (say Words) PushWord(a proving.Answer, filled bool) string {
	switch {
	case !filled:
		return "to push"
	case a == proving.Pass:
		return "pass"
	case a == proving.Fail:
		return "fail"
	}
	return "undecided"
}

// PushWhy says why a push went as it did.
func (say Words) PushWhy(r *press.Result, x proving.SampleRow) string {
	var out []string
	if x.Lamps == proving.Fail {
		out = append(out, "Other lamps than predicted: stop, set no part free, find out why.")
	}
	if x.Reading != nil && x.Difference != nil && x.Allowed != nil {
		pos := say.Positions(r.Plan).Fine()
		text := "The reading is off by " + pos.At(*x.Difference)
		if *x.Reading == proving.Fail {
			text += ", more than the " + pos.At(*x.Allowed) + " allowed."
		} else {
			text += "; " + pos.At(*x.Allowed) + " are allowed."
		}
		out = append(out, text)
	}
	if x.Role == nil && x.Lamps == proving.Open {
		out = append(out, "This height is so near to a limit that it proves nothing either way.")
	}
	return strings.Join(out, " ")
}

// OverallWord is how a check stands.
func (say Words) OverallWord(a proving.Answer, left int) string {
	switch {
	case a == proving.Fail:
		return "Failed"
	case left > 0:
		return counted(left, "push", "pushes") + " to go"
	case a == proving.Pass:
		return "Passed"
	}
	return "Undecided"
}

// OverallWhy says what follows.
func (say Words) OverallWhy(a proving.Answer, left int) string {
	switch {
	case a == proving.Fail:
		return "One wrong answer is enough: stop, set no part free, quarantine back to the last good check, and find out why. Sign it as it is."
	case left > 0:
		return "Each push is judged when both its lamps are tapped."
	case a == proving.Pass:
		return "Every push gave the lamps that the plan predicts."
	}
	return "A push proves nothing either way: type the measured heights."
}

// SignCheck is said on the button that keeps a check.
func (say Words) SignCheck(shift bool) string {
	if shift {
		return "Sign this shift check"
	}
	return "Sign this study"
}

// CheckNotWhole says that not every push was filled in.
func (say Words) CheckNotWhole(left int) string {
	return "Not signed: " + counted(left, "push is", "pushes are") + " not filled in, or cannot be read."
}

// CheckUndecided says that a check neither passed nor failed.
func (say Words) CheckUndecided() string {
	return "Not signed: it neither passed nor failed. Type the measured heights of the samples."
}

// LastChecked says when the last shift check was, and how it went.
func (say Words) LastChecked(at time.Time, passed proving.Answer, who string) string {
	return "The last shift check " + map[bool]string{true: "passed", false: "failed"}[passed == proving.Pass] + ", " + say.When(at) + ", by " + who + "."
}

// CheckFailedAlarm says beside the state of a station that its last shift check failed.
func (say Words) CheckFailedAlarm() string {
	return "But the last shift check failed: set no part free until the cause is found and a check passes."
}

// NeverChecked says that there was no shift check.
func (say Words) NeverChecked(letter string) string {
	if letter == "" {
		return "No shift check yet: there is one once a revision is issued."
	}
	return "No shift check was kept yet for revision " + letter + "."
}

// HowOftenChecked says how often the plan asks for a shift check.
func (say Words) HowOftenChecked(p *press.Plan) string {
	if often := strings.TrimSpace(p.Quality.LimitCheck); often != "" {
		return " The plan asks for one: " + often + "."
	}
	return ""
}

// ShiftLead says in a line how a shift check went.
func (say Words) ShiftLead(s *proving.Study) string { return counted(len(s.Rows), "push", "pushes") }

// ShiftTable is a shift check as rows: what was pushed and what came.
func (say Words) ShiftTable(s *proving.Study) Figures {
	t := Figures{Name: "pushes", Head: "Pushes", Heads: []string{"Sample", "Height, mm", "Arrival", "Zone", "Reading, mm", "Remark"}}
	for _, r := range s.Rows {
		t.Rows = append(t.Rows, FigureRow{say.SampleName(r.Sample), []string{given(r.Height, words.Full), lampWord(r.Arrival), lampWord(r.Zone), given(r.Reading, words.Full), r.Remark}})
	}
	return t
}

func lampWord(on *bool) string {
	switch {
	case on == nil:
		return ""
	case *on:
		return "on"
	}
	return "off"
}

// ShiftVerdict is how a shift check went, in a word.
func (say Words) ShiftVerdict(a proving.Answer) string {
	if a == proving.Pass {
		return "passed"
	}
	return "failed"
}

// Names of what stands over a shift check.
func (say Words) CheckedLabel() string { return "Checked" }

// CheckedByLabel stands over who checked.
func (say Words) CheckedByLabel() string { return "By" }

// RevisionLabel stands over the revision whose window was checked.
func (say Words) RevisionLabel() string { return "Revision" }

// RevisionNamed names a revision.
func (say Words) RevisionNamed(letter string) string { return "revision " + letter }

// AsATable leads to the same study as a table.
func (say Words) AsATable() string { return "As a table" }

// AllChecks leads to the shift checks that were kept.
func (say Words) AllChecks() string { return "All shift checks" }

// CheckAgain says that the last shift check was long ago.
func (say Words) CheckAgain() string { return " That was more than a day ago: check again." }
