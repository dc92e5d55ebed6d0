package view

import (
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// Shares gives the shares of a plan as far as they are known: estimated, counted, or both.
func Shares(r *press.Result, s *press.Simulation, days *page.Days) page.Shares {
	if s == nil || s.Shares == nil {
		return page.Shares{Nothing: say.NoShares()}
	}
	out := page.Shares{Intro: say.SharesIntro(r), Seen: say.SharesSeen(s), Counted: s.Counted != nil, Lot: s.BadLot != nil, Says: say.SharesSay(s), Days: days}
	for _, row := range say.Shares(r, s) {
		out.Rows = append(out.Rows, page.ShareRow(row))
	}
	for i, row := range s.Shares.Matrix.All() {
		m := page.MatrixRow{Truth: words.Truths[i]}
		for _, cell := range row.All() {
			m.Cells = append(m.Cells, say.MatrixCell(*cell))
		}
		out.Matrix = append(out.Matrix, m)
	}
	if out.Lot {
		out.Rests = append(out.Rests, say.SharesLot())
	}
	out.Rests = append(out.Rests, say.SharesFrom(s))
	if text := say.SharesCounted(s); text != "" {
		out.Rests = append(out.Rests, text)
	}
	return out
}

// A SharesPage is everything that the page of the shares is made from.
type SharesPage struct {
	Typed   Typed
	Faults  press.Problems
	Plan    *press.Plan   // the last valid one; nil before there was any
	Result  *press.Result // of that plan
	Address string        // of the plan's bench
	Stream  string
	Parts   string // as asked for
	Seed    string
	Refused []string // what is wrong with that
	NoParts bool     // a count was asked for, and of how many parts was not said
	Known   *press.Simulation
	Days    *page.Days
}

// Page gives the page of the shares.
func (f SharesPage) Page(assets page.Assets) page.SharesPage {
	out := page.SharesPage{Assets: assets, Title: say.SharesTitle(), Name: say.NewPlan(), Address: f.Address, Parts: f.Parts, Seed: f.Seed, Faults: f.Refused, NoParts: words.PartsNotGiven, Asks: f.NoParts}
	if len(f.Faults) > 0 {
		out.Older = f.Plan != nil
		out.Trouble = say.EntriesUnsound(Bench{Faults: f.Faults}.state().Text)
	}
	if f.Plan == nil {
		if name, _ := f.Typed.Draft.Get("title.name"); strings.TrimSpace(name) != "" {
			out.Name = strings.TrimSpace(name)
		}
		return out
	}
	say.Explain(f.Result)
	out.Shown, out.Stream = true, f.Stream
	out.Name, out.Number = f.Plan.Title.Name, f.Plan.Title.Number
	out.Title = say.SharesOfTitle(out.Name)
	out.Headline, out.Blocked = say.Headline(f.Plan, f.Result), f.Result.Blocked()
	shares := Shares(f.Result, f.Known, f.Days)
	out.Shares = &shares
	out.Cautions, out.Trade = words.Cautions, words.TradeCautions
	out.Digest = f.Result.PlanDigest()
	return out
}
