package proving

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/web/page"
)

// A Cards is limit samples that are shown to the station, push by push: a study of them, or a
// shift check.
type Cards struct {
	Title   page.Title
	Plan    string // address of the plan
	Here    string // where the form goes
	Back    page.Link
	Letter  string // of the revision that is checked; empty: the draft
	Result  *press.Result
	Typed   *proving.Typed
	Faults  proving.TypedFaults
	Judged  *proving.Judged // of the pushes that can be read
	Expects *proving.Judged // of the same pushes, whatever came: what the plan predicts of them
	Shift   bool
	State   page.State
	Hidden  []page.Hidden
	Who     string
	NoWho   string
	Notices []page.Notice
	Refused string
	Saved   bool
}

// sampleColumns are those that the cards fill in.
var sampleColumns = []string{"sample", "height", "arrival", "zone", "reading"}

// WithSampleColumns gives a study of limit samples every column that the cards fill in.
func WithSampleColumns(t *proving.Typed) *proving.Typed {
	out := t
	for _, n := range sampleColumns {
		if wide := WithColumn(out, n); wide != nil {
			out = wide
		}
	}
	return out
}

// ShiftBegun is an empty shift check: each sample once.
func ShiftBegun(r *press.Result) *proving.Typed {
	t := proving.NewTyped(proving.Samples)
	for _, x := range say.SamplesToShow(r) {
		row := make([]string, len(t.Columns))
		row[slices.Index(t.Columns, "sample")] = x.Name
		t.Rows = append(t.Rows, row)
	}
	return t
}

// Remember fills in the heights that the samples had the last time.
func Remember(t *proving.Typed, last *proving.Study) {
	at := slices.Index(t.Columns, "height")
	if last == nil || at < 0 {
		return
	}
	known := map[string]string{}
	for _, r := range last.Rows {
		if r.Height != nil {
			known[r.Sample] = strconv.FormatFloat(*r.Height, 'f', -1, 64)
		}
	}
	for i := range t.Rows {
		if h := known[t.Cell(i, "sample")]; h != "" && t.Cell(i, "height") == "" {
			t.Rows[i][at] = h
		}
	}
	if last.HeightUncertainty != nil && t.Head("height_uncertainty") == "" {
		t.SetHead("height_uncertainty", strconv.FormatFloat(*last.HeightUncertainty, 'f', -1, 64))
	}
}

// Expected is a study of the samples as they stand in a table, whatever lamps came of them: what
// a plan predicts is asked with it. A sample whose height is not typed yet lies in the middle of
// its bounds. Each row of the table that names a sample is one of it; at gives its place there.
func Expected(t *proving.Typed, r *press.Result) (study *proving.Study, at []int) {
	study = &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: "2000-01-01"}
	middles := map[string]*float64{}
	for _, x := range say.SamplesToShow(r) {
		middles[x.Name] = x.Middle
	}
	read, _ := t.Study()
	study.HeightUncertainty = read.HeightUncertainty
	for i := range t.Rows {
		name := strings.TrimSpace(t.Cell(i, "sample"))
		if name == "" {
			continue
		}
		row := proving.Row{Sample: name, Height: middles[name], Arrival: new(false), Zone: new(false)}
		if name == proving.NoInsert || name == proving.BareNest {
			row.Height = nil
		} else if h, ok := heightOf(t, i); ok {
			row.Height = &h
		}
		if row.Height == nil && name != proving.NoInsert && name != proving.BareNest {
			continue
		}
		study.Rows, at = append(study.Rows, row), append(at, i)
	}
	return study, at
}

// heightOf reads the height in a row, whatever else stands there.
func heightOf(t *proving.Typed, i int) (float64, bool) {
	at := slices.IndexFunc(t.Columns, func(c string) bool { return bare(c) == "height" })
	one := &proving.Typed{Kind: proving.Samples, Columns: []string{"sample", t.Columns[at], "arrival", "zone"}, Rows: [][]string{{"x", t.Cell(i, "height"), "off", "off"}}}
	read, _ := one.Study()
	if len(read.Rows) != 1 || read.Rows[0].Height == nil {
		return 0, false
	}
	return *read.Rows[0].Height, true
}

// filled tells whether both lamps of a row are tapped.
func filled(t *proving.Typed, i int) bool {
	return strings.TrimSpace(t.Cell(i, "arrival")) != "" && strings.TrimSpace(t.Cell(i, "zone")) != ""
}

// Left is how many pushes are not filled in, or cannot be read.
func Left(t *proving.Typed, faults proving.TypedFaults) int {
	wrong := map[int]bool{}
	for _, f := range faults {
		wrong[f.Row-1] = true
	}
	n := 0
	for i := range t.Rows {
		if !t.Blank(i) && (wrong[i] || !filled(t, i)) {
			n++
		}
	}
	return n
}

// samplesOf is what was found of limit samples.
func samplesOf(j *proving.Judged) *proving.SamplesResult {
	if j == nil {
		return nil
	}
	r, _ := j.Result.(*proving.SamplesResult)
	return r
}

// Page gives the page.
func (c Cards) Page(assets page.Assets) page.CheckPage {
	out := page.CheckPage{
		Assets: assets, Title: c.Title, Address: c.Plan, Here: c.Here, Back: c.Back, Kind: say.LimitSampleCheck(), Lead: say.CheckLead(c.Shift), State: c.State,
		Hidden: c.Hidden, Notices: c.Notices, Who: c.Who, NoWho: c.NoWho, Sign: say.SignCheck(c.Shift), Refused: c.Refused, Shift: c.Shift, Saved: c.Saved,
	}
	if c.Shift {
		out.Kind = say.ShiftCheck()
	}
	if c.Result == nil || c.Refused != "" {
		return out
	}
	out.Against = say.CheckAgainst(c.Letter, c.Result.PlanDigest())
	out.Fields = []page.Field{headField(c.Typed, "height_uncertainty", c.Faults)}
	if !c.Shift {
		out.Fields = append([]page.Field{headField(c.Typed, "taken_at", c.Faults)}, out.Fields...)
	}
	out.Hidden = append(out.Hidden,
		page.Hidden{Name: page.NameFrom, Value: "0"}, page.Hidden{Name: page.NameCount, Value: strconv.Itoa(len(c.Typed.Rows))},
		page.Hidden{Name: page.NameColumns, Value: strings.Join(c.Typed.Columns, "|")}, page.Hidden{Name: page.NameAs, Value: "cards"})
	came := map[int]proving.SampleRow{}
	if r := samplesOf(c.Judged); r != nil {
		at := rowsTyped(c.Typed, c.Faults)
		for _, x := range r.Rows {
			if x.Row >= 1 && x.Row <= len(at) {
				came[at[x.Row-1]] = x
			}
		}
	}
	expected := map[int]proving.SampleRow{}
	if r := samplesOf(c.Expects); r != nil {
		_, at := Expected(c.Typed, c.Result)
		for _, x := range r.Rows {
			if x.Row >= 1 && x.Row <= len(at) {
				expected[at[x.Row-1]] = x
			}
		}
	}
	bounds := map[string]string{}
	for _, x := range say.SamplesToShow(c.Result) {
		bounds[x.Name] = x.Bounds
	}
	answer := proving.Pass
	for i := range c.Typed.Rows {
		if c.Typed.Blank(i) {
			continue
		}
		card, how := c.card(i, bounds, expected, came)
		out.Cards = append(out.Cards, card)
		switch {
		case how == proving.Fail:
			answer = proving.Fail
		case how == proving.Open && answer == proving.Pass:
			answer = proving.Open
		}
	}
	left := Left(c.Typed, c.Faults)
	out.Overall = page.Overall{Kind: string(answer), Text: say.OverallWord(answer, left), Why: say.OverallWhy(answer, left)}
	if left > 0 && answer != proving.Fail {
		out.Overall.Kind = "typing"
	}
	return out
}

// card is one push, and how it went.
func (c Cards) card(i int, bounds map[string]string, expected, came map[int]proving.SampleRow) (page.CheckCard, proving.Answer) {
	name := strings.TrimSpace(c.Typed.Cell(i, "sample"))
	cell := func(column string) string {
		return CellName(i, slices.IndexFunc(c.Typed.Columns, func(x string) bool { return bare(x) == column }))
	}
	out := page.CheckCard{
		ID: "c" + strconv.Itoa(i), Number: strconv.Itoa(i + 1), Name: say.SampleName(name), Bounds: say.Made(bounds[name]),
		ArrivalName: cell("arrival"), Arrival: lampTyped(c.Typed.Cell(i, "arrival")), ZoneName: cell("zone"), Zone: lampTyped(c.Typed.Cell(i, "zone")),
		ReadingName: cell("reading"), Reading: c.Typed.Cell(i, "reading"),
	}
	if name != proving.NoInsert && name != proving.BareNest {
		out.HeightName, out.Height = cell("height"), c.Typed.Cell(i, "height")
	}
	for j, column := range c.Typed.Columns { // what the card does not show goes along
		if n := bare(column); !slices.Contains(sampleColumns[1:], n) || n == "height" && out.HeightName == "" {
			out.Hidden = append(out.Hidden, page.Hidden{Name: CellName(i, j), Value: cellAt(c.Typed, i, j)})
		}
	}
	if x, ok := expected[i]; ok {
		out.Predicted, out.PredictedReading = say.PredictedLamps(x), say.PredictedReading(c.Result, x)
	}
	full := filled(c.Typed, i)
	for _, f := range c.Faults {
		if f.Row == i+1 && (full || c.Typed.Cell(i, f.Field) != "") {
			out.Faults = append(out.Faults, say.ColumnOf(proving.Samples, f.Field).Label+": "+f.Message)
		}
	}
	how := proving.Open
	x, judged := came[i]
	if judged {
		how = proving.PushOutcome(&x)
		out.Why = say.PushWhy(c.Result, x)
	}
	out.Outcome, out.OutcomeText = "typing", say.PushWord(how, judged)
	if judged {
		out.Outcome = string(how)
	}
	return out, how
}

func cellAt(t *proving.Typed, i, j int) string {
	if j < len(t.Rows[i]) {
		return t.Rows[i][j]
	}
	return ""
}

// lampTyped is a lamp as a card shows it, however it was typed.
func lampTyped(text string) string {
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "on", "1", "true", "yes":
		return "on"
	case "off", "0", "false", "no":
		return "off"
	}
	return ""
}
