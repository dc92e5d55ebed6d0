package proving

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
	"ramplan/press/words/proof"
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
	Looks   []Look // of a shift check: the pushes with the probe in use
	Warned  string // what stands against the station
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

// A Look is one push of a shift check with the probe in use, as it is filled in.
type Look struct {
	words.ShiftPush
	Arrival, Zone string // as tapped
}

// LooksBegun are the pushes with the probe in use, none of them tapped.
func LooksBegun(r *press.Result) []Look {
	var out []Look
	for _, x := range say.ShiftPushes(r) {
		if x.First {
			out = append(out, Look{ShiftPush: x})
		}
	}
	return out
}

// LookNames are the names of the lamps of such a push in a form.
func LookNames(i int) (arrival, zone string) {
	at := "look." + strconv.Itoa(i)
	return at + ".arrival", at + ".zone"
}

// LooksNoted writes those that are filled in as notes of the check.
func LooksNoted(all []Look) string {
	var out []proof.FirstLook
	for _, l := range all {
		if a, z := lampOf(l.Arrival), lampOf(l.Zone); a != nil && z != nil {
			out = append(out, proof.FirstLook{Sample: l.Sample, Arrival: *a, Zone: *z})
		}
	}
	return say.LooksNoted(out)
}

// ShiftBegun is an empty shift check: each push once that is no first look, in the order of the
// page that is printed.
func ShiftBegun(r *press.Result) *proving.Typed {
	t := proving.NewTyped(proving.Samples)
	for _, x := range say.ShiftPushes(r) {
		if x.First {
			continue
		}
		row := make([]string, len(t.Columns))
		row[slices.Index(t.Columns, "sample")] = x.Sample
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
	for _, x := range say.ShiftPushes(r) {
		middles[x.Sample] = x.Height
	}
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
	out.Warned = c.Warned
	if words.TwoLooks(c.Result) {
		out.Probe = say.ProbeLeftOut(c.Shift)
	}
	var answer proving.Answer
	var left int
	out.Cards, answer, left = c.cards()
	out.Overall = page.Overall{Kind: string(answer), Text: say.OverallWord(answer, left), Why: say.OverallWhy(answer, left)}
	if left > 0 && answer != proving.Fail {
		out.Overall.Kind = "typing"
	}
	return out
}

// Outcome is how the check stands, and how many of its pushes are not done yet.
func (c Cards) Outcome() (answer proving.Answer, left int) {
	_, answer, left = c.cards()
	return answer, left
}

// rows are those of a judged study by their place in the table.
func (c Cards) rows(j *proving.Judged, at []int) map[int]proving.SampleRow {
	out := map[int]proving.SampleRow{}
	found := samplesOf(j)
	if found == nil {
		return out
	}
	rows := found.Rows
	if c.Shift {
		rows = byMaster(c.Result, rows)
	}
	for _, x := range rows {
		if x.Row >= 1 && x.Row <= len(at) {
			out[at[x.Row-1]] = x
		}
	}
	return out
}

// cards are the pushes in their order, how they stand together, and how many are not done.
func (c Cards) cards() (out []page.CheckCard, answer proving.Answer, left int) {
	came := c.rows(c.Judged, rowsTyped(c.Typed, c.Faults))
	_, at := Expected(c.Typed, c.Result)
	expected := c.rows(c.Expects, at)
	asked := map[string]words.ShiftPush{}
	bounds := map[string]string{}
	for _, x := range say.SamplesToShow(c.Result) {
		bounds[x.Name] = x.Bounds
	}
	if c.Shift {
		for _, x := range say.ShiftPushes(c.Result) {
			asked[x.Sample], bounds[x.Sample] = x, x.Bounds
		}
	}
	answer = proving.Pass
	add := func(card page.CheckCard, how proving.Answer, done bool) {
		card.Number = strconv.Itoa(len(out) + 1)
		out = append(out, card)
		if !done {
			left++
		}
		switch {
		case how == proving.Fail:
			answer = proving.Fail
		case how == proving.Open && answer == proving.Pass:
			answer = proving.Open
		}
		delete(asked, strings.TrimSpace(card.Sample))
	}
	for i, l := range c.Looks {
		if l.Sample != words.LooseSample {
			add(lookCard(i, l))
		}
	}
	for i := range c.Typed.Rows {
		if !c.Typed.Blank(i) {
			add(c.card(i, bounds, asked, expected, came))
		}
	}
	for i, l := range c.Looks {
		if l.Sample == words.LooseSample {
			add(lookCard(i, l))
		}
	}
	if left += len(asked); len(asked) > 0 && answer == proving.Pass { // what a form left out
		answer = proving.Open
	}
	return out, answer, left
}

// lookCard is one push with the probe in use.
func lookCard(i int, l Look) (card page.CheckCard, how proving.Answer, done bool) {
	arrival, zone := lampOf(l.Arrival), lampOf(l.Zone)
	how, done = lookOutcome(l.ShiftPush, arrival, zone), arrival != nil && zone != nil
	card = page.CheckCard{
		ID: "look" + strconv.Itoa(i), Sample: l.Sample, Name: say.SampleName(l.Sample), With: say.WithProbe(true), Predicted: say.FirstLookPredicted(l.ShiftPush), PredictedReading: l.Where,
		Arrival: lampTyped(l.Arrival), Zone: lampTyped(l.Zone), Why: say.FirstLookWhy(l.ShiftPush, how), Outcome: "typing", OutcomeText: say.PushWord(how, how != proving.Open),
	}
	card.Predicted += ";"
	if l.Bounds != "" {
		card.With += ": " + l.Bounds
	}
	card.ArrivalName, card.ZoneName = LookNames(i)
	if how != proving.Open {
		card.Outcome = string(how)
	}
	return card, how, done
}

// card is one push, how it went, and whether everything is filled in that is asked of it.
func (c Cards) card(i int, bounds map[string]string, asked map[string]words.ShiftPush, expected, came map[int]proving.SampleRow) (out page.CheckCard, how proving.Answer, done bool) {
	name := strings.TrimSpace(c.Typed.Cell(i, "sample"))
	cell := func(column string) string {
		return CellName(i, slices.IndexFunc(c.Typed.Columns, func(x string) bool { return bare(x) == column }))
	}
	out = page.CheckCard{
		ID: "c" + strconv.Itoa(i), Sample: name, Name: say.SampleName(name), Bounds: say.Made(bounds[name]),
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
		if out.PredictedReading != "" {
			out.Predicted += ";"
		}
	}
	full := filled(c.Typed, i)
	e, told := expected[i]
	told = told && e.Lamps != proving.Open // its lamps are predicted for sure
	for _, f := range rowFaults(c.Faults, i+1) {
		if full && !told || c.Typed.Cell(i, f.Field) != "" {
			out.Faults = append(out.Faults, say.ColumnOf(proving.Samples, f.Field).Label+": "+f.Message)
		}
	}
	if c.Shift && words.TwoLooks(c.Result) {
		out.With = say.WithProbe(name == proving.NoInsert || name == proving.BareNest)
	}
	how, done = proving.Open, full && len(rowFaults(c.Faults, i+1)) == 0
	x, judged := came[i]
	if judged {
		how = proving.PushOutcome(&x)
		out.Why = say.PushWhy(c.Result, x)
	}
	switch {
	case told && wrongLamp(e, out.Arrival, out.Zone):
		how, judged = proving.Fail, true
		if out.Why == "" {
			out.Why = say.OtherLamps()
		}
	case told && full && !judged && out.HeightName != "" && strings.TrimSpace(out.Height) == "":
		out.Why = say.HeightLacking()
	case how == proving.Pass && asked[name].Reads && strings.TrimSpace(out.Reading) == "":
		how, judged, done = proving.Open, false, false
		out.Why = say.ReadingLacking()
	}
	if asked[name].Reads && strings.TrimSpace(out.Reading) == "" && how != proving.Fail {
		done = false
	}
	out.Outcome, out.OutcomeText = "typing", say.PushWord(how, judged)
	if judged {
		out.Outcome = string(how)
	}
	return out, how, done
}

// wrongLamp tells whether a lamp that is tapped is another than the predicted one.
func wrongLamp(x proving.SampleRow, arrival, zone string) bool {
	other := func(want *bool, came string) bool {
		on := lampOf(came)
		return want != nil && on != nil && *on != *want
	}
	return other(x.Arrival, arrival) || other(x.Zone, zone)
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

// lampOf is a lamp as it was tapped; nil: not yet.
func lampOf(text string) *bool {
	switch lampTyped(text) {
	case "on":
		return new(true)
	case "off":
		return new(false)
	}
	return nil
}

// rowFaults are those of one row, from 1.
func rowFaults(all proving.TypedFaults, row int) proving.TypedFaults {
	var out proving.TypedFaults
	for _, f := range all {
		if f.Row == row {
			out = append(out, f)
		}
	}
	return out
}
