package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A FaultsPage is everything that the page of the fault catalogue is made from.
type FaultsPage struct {
	Typed   Typed          // the entries of the bench
	Faults  press.Problems // of them
	Plan    *press.Plan    // the last valid one; nil before there was any
	Result  *press.Result  // of that plan
	Strips  []string       // SVG, one a row of the result's catalogue
	Address string         // of the plan's bench
}

// Page gives the page of the fault catalogue.
func (f FaultsPage) Page(assets page.Assets) page.FaultsPage {
	out := page.FaultsPage{Assets: assets, Title: say.FaultsTitle(), Name: say.NewPlan(), Address: f.Address}
	f.trouble(&out)
	if f.Plan == nil {
		if name, _ := f.Typed.Draft.Get("title.name"); strings.TrimSpace(name) != "" {
			out.Name = strings.TrimSpace(name)
		}
		return out
	}
	w := writer{f.Plan, f.Result, places{}, say.Positions(f.Plan)}
	say.Explain(f.Result)
	out.Shown = true
	out.Name, out.Number = f.Plan.Title.Name, f.Plan.Title.Number
	out.Title = say.FaultsOfTitle(out.Name)
	out.Headline, out.Blocked = say.Headline(f.Plan, f.Result), f.Result.Blocked()
	out.Unseen, out.Perfect = say.Unseen(f.Plan, f.Result), say.Perfect(f.Result)
	out.Lacking = say.Lacking(f.Result)
	out.Rows = w.cards(f.Strips)
	out.Doubtful = doubtful(out.Rows)
	out.Lead = say.CatalogueLead(f.Result)
	out.Sure = say.MarkedSamples(counted(len(out.Doubtful), "row is", "rows are"), f.Plan.Faults.SampleProbability)
	out.Key = w.key()
	out.Samples = w.sampleTable()
	out.Samples.Datum, out.Samples.Surely = WordLink("datum"), FieldLink("faults.sample_probability")
	out.Rule = say.ReadingRule(f.Plan, f.Result)
	out.Cautions, out.Trade = words.Cautions, words.TradeCautions
	out.Digest = f.Result.PlanDigest()
	return out
}

// trouble says that the entries are no sound plan, and what is wrong.
func (f FaultsPage) trouble(out *page.FaultsPage) {
	if len(f.Faults) == 0 {
		return
	}
	out.Older = f.Plan != nil
	out.Trouble = say.EntriesUnsound(Bench{Faults: f.Faults}.state().Text)
	if out.Older {
		out.Trouble += say.ShowsLastSound()
	} else {
		out.Trouble += say.NoCatalogueYet()
	}
	out.Wrong = newForm(f.Typed, f.Faults).list()
}

// cards are the rows of the catalogue with their strips and marks.
func (w writer) cards(strips []string) []page.FaultCard {
	var out []page.FaultCard
	for i, row := range w.catalogue() {
		card := page.FaultCard{FaultRow: row, ID: "row-" + strconv.Itoa(i+1), Mark: say.Judged(w.p, w.r, words.AsJudged(w.r.Faults[i]))}
		if words.RefusedFirst(w.r.Faults[i]) {
			card.NoPush = words.NoPush
		} else if i < len(strips) {
			card.Strip = strips[i]
		}
		out = append(out, card)
	}
	return out
}

// doubtful leads to the rows that are not judged surely.
func doubtful(rows []page.FaultCard) []page.Link {
	var out []page.Link
	for _, r := range rows {
		if r.Mark != "" {
			out = append(out, page.Link{Address: "#" + r.ID, Text: r.Name, Note: r.Mark + "."})
		}
	}
	return out
}

// key says how the small strips are read, and the figures that they share.
func (w writer) key() string {
	g := w.r.Window.GoodRange
	s := say.SmallStripsLegend(w.pos, g[0], g[1])
	if z := w.r.Window.Zone; z != nil && z[0] != nil && z[1] != nil {
		s += say.SmallStripsZone(w.pos, *z[0], *z[1])
	}
	if e := w.r.Travel.PushEnd; e != nil {
		s += say.SmallStripsPushEnd(w.pos, *e)
	}
	return s + "."
}

// looseSample is the sample that the probe must refuse.
func (w writer) looseSample() page.Sample {
	out := page.Sample{Name: "Loose", Height: say.LooseSampleFit(w.r), Must: say.RefuseAtFirstLook(), Probability: none}
	if w.r.Probe.CaughtBelow != nil {
		out.Probability = say.TargetShare(w.r.Samples.Probability)
	}
	return out
}

// sampleTable says which limit samples to make and what each must do.
func (w writer) sampleTable() page.SampleTable {
	q := w.p.Requirement
	out := page.SampleTable{Asked: say.DrawingAsksFor(w.pos, q.HeightLow, q.HeightHigh)}
	s := w.r.Samples
	if s == nil {
		return out
	}
	out.Asked += " " + say.SamplesMade(w.p, w.r)
	out.Notes = say.SampleNotes(w.p, w.r)
	for _, x := range say.LimitSamples(w.p, w.r) {
		row := page.Sample{Name: x.Name, Height: x.Heights(w.p), Must: say.RefuseIt(), Probability: say.TargetShare(s.Probability)}
		switch {
		case x.Missing:
			row.Must, row.Probability = say.NoHeightSoSurely(), none
		case !x.Pressed():
			row.Must, row.Probability = say.CannotBePressed(), none
		case x.Good:
			row.Must = say.AcceptIt()
		}
		out.Rows = append(out.Rows, row)
	}
	if words.TwoLooks(w.r) {
		out.Rows = append(out.Rows, w.looseSample())
		out.Notes = append(out.Notes, say.LooseSampleNotes(w.r)...)
	}
	return out
}
