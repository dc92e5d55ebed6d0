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
		return "Push each once, in this order, as on the page of the shift check: tap which lamps came, type the reading. It is kept when it is signed."
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
	if x.Arrival != nil && !*x.Arrival {
		return "the ram ends at " + pos.At(*x.PredictedReading)
	}
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
		out = append(out, otherLamps)
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
		return "One wrong answer is enough: stop, set no part free, quarantine back to the last good check, and find out why. Fill in what is left, and sign it as it is."
	case left > 0:
		return "A wrong lamp is told at once. A push is done when both its lamps are tapped and what is asked of it is typed."
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

// A ShiftPushed is one push of a kept shift check: what the plan predicts, and what came.
type ShiftPushed struct {
	Sample               string
	First                bool // with the probe in use: the lamps are those of the first look
	Height, Reading      *float64
	Remark               string
	Arrival, Zone        *bool
	WantArrival          *bool
	WantZone             *bool
	WantReading, Allowed *float64
	How                  proving.Answer // open: the plan does not tell
}

// ShiftLead says in a line how a shift check went: which pushes failed.
func (say Words) ShiftLead(pushes []ShiftPushed) string {
	var failed []string
	for _, x := range pushes {
		if x.How == proving.Fail {
			failed = append(failed, say.SampleName(x.Sample))
		}
	}
	s := counted(len(pushes), "push", "pushes")
	if failed != nil {
		s += ", failed: " + strings.Join(failed, ", ")
	}
	return s
}

// ShiftTable is a shift check as rows: what was pushed, what was predicted and what came.
func (say Words) ShiftTable(pushes []ShiftPushed) Figures {
	t := Figures{Name: "pushes", Head: "Pushes", Heads: []string{"Sample", "Result", "Lamps predicted", "Lamps that came", "Reading predicted, mm", "Reading, mm", "Height, mm", "Remark"}}
	remarks := false
	for _, x := range pushes {
		name := say.SampleName(x.Sample)
		if x.First {
			name = say.AtFirstLook(x.Sample)
		}
		t.Rows = append(t.Rows, FigureRow{name, []string{
			say.failing(say.PushedWord(x.How), x.How), say.LampsPredicted(x.WantArrival, x.WantZone), say.LampsPredicted(x.Arrival, x.Zone), say.readingWanted(x), given(x.Reading, words.Full), given(x.Height, words.Full), x.Remark,
		}})
		remarks = remarks || x.Remark != ""
	}
	if !remarks {
		t.Heads = t.Heads[:len(t.Heads)-1]
		for i := range t.Rows {
			t.Rows[i].Cells = t.Rows[i].Cells[:len(t.Rows[i].Cells)-1]
		}
	}
	return t
}

// failing writes what failed so that it is seen.
func (say Words) failing(word string, how proving.Answer) string {
	if how == proving.Fail {
		return strings.ToUpper(word)
	}
	return word
}

// readingWanted is which reading was predicted; nothing where the ram comes to rest on nothing.
func (say Words) readingWanted(x ShiftPushed) string {
	if x.WantReading == nil || x.WantArrival == nil || !*x.WantArrival {
		return ""
	}
	s := plainly(3)(*x.WantReading)
	if x.Allowed != nil {
		s += " ± " + plainly(3)(*x.Allowed)
	}
	return s
}

// AtFirstLook names a push with the probe in use.
func (say Words) AtFirstLook(sample string) string { return say.SampleName(sample) + ", first look" }

// PushedWord is how a kept push went, in a word.
func (say Words) PushedWord(a proving.Answer) string {
	if a == proving.Open {
		return "not to be told"
	}
	return say.PushWord(a, true)
}

// ProbeLeftOut says at the top of a check with a probe which pushes are made without it.
func (say Words) ProbeLeftOut(shift bool) string {
	if !shift {
		return "Push all of these with the probe left out: a finished part gives it nothing to stall in. These rows do not prove the probe; the shift check does, with the first look."
	}
	return "This plan has a probe. Push the master and the limit samples with the probe left out, which a qualified person sets and writes down. Push the others with the probe in use: the first look must refuse them, and the press must not follow."
}

// WithProbe says of a push of such a check whether the probe is in use.
func (say Words) WithProbe(in bool) string {
	if in {
		return "with the probe in use"
	}
	return "with the probe left out"
}

// FirstLookPredicted says what the first look must show.
func (say Words) FirstLookPredicted(x words.ShiftPush) string {
	if x.Lamps == nil {
		return "not to be told: the nest itself stops the ram in the probe"
	}
	return "refused at the first look, " + x.Lamps.String() + ", no press"
}

// FirstLookWhy says why such a push went as it did.
func (say Words) FirstLookWhy(x words.ShiftPush, how proving.Answer) string {
	switch {
	case how == proving.Fail:
		return otherLamps
	case how == proving.Pass && x.Lamps == nil:
		return "Not judged: the plan does not tell."
	}
	return ""
}

const otherLamps = "Other lamps than predicted: stop, set no part free, find out why."

// OtherLamps is said of a push as soon as one of its lamps is wrong.
func (say Words) OtherLamps() string { return otherLamps }

// HeightLacking and ReadingLacking say what a push still waits for.
func (say Words) HeightLacking() string {
	return "The lamps are those of such a sample. Type its measured height: it is judged with it."
}

// ReadingLacking is said where the page of the shift check asks for a reading.
func (say Words) ReadingLacking() string {
	return "The lamps are right. Type the reading: it is judged too."
}

// StationWarned says what stands against the station at its head: a failed check, or a crash
// since the last check that passed. Times are zero where there was none.
func (say Words) StationWarned(failed, crash time.Time) string {
	var out []string
	if !failed.IsZero() {
		out = append(out, "The last shift check failed, "+say.When(failed)+": set no part free until one passes.")
	}
	if !crash.IsZero() {
		out = append(out, "A crash was written down, "+say.When(crash)+", and no shift check passed since: set no part free until one does.")
	}
	return strings.Join(out, " ")
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
