package words

import (
	"strconv"

	"ramplan/press"
)

// SharesPaper is the page of the shares of all parts as they are simulated.
const SharesPaper = "shares"

const shareLimits = "95 % limits"

// sharesTable is the page of what the station lets through and what it refuses: the named
// shares, and behind them what the parts are against what the station says. They are
// estimated only where the page is made.
func (say Printer) sharesTable(_ *press.Plan, r *press.Result) Table {
	s := r.PaperShares()
	t := Table{
		Lead:    say.SharesIntro(r),
		Columns: []Column{{Head: "Share of all parts", Share: 5}, {Head: "Closed form", Share: 1.6}, {Head: "Simulated", Share: 1.6}, {Head: shareLimits, Share: 2.4}},
		Figures: []string{"Closed form", "Simulated"}, Ranges: []string{shareLimits},
	}
	if s.BadLot != nil {
		t.Columns, t.Figures = append(t.Columns, Column{Head: "Bad lot", Share: 1.6}), append(t.Figures, "Bad lot")
	}
	if s.Shares == nil {
		t.Lacking = say.NoShares()
		return t
	}
	for _, row := range say.Shares(r, s) {
		t.Rows = append(t.Rows, row.cells(s.BadLot != nil))
	}
	t.Notes = say.SharesSay(s)
	if s.BadLot != nil {
		t.Notes = append(t.Notes, say.SharesLot())
	}
	t.Notes = append(t.Notes, say.SharesFrom(s)+" "+say.sharesRepeat(s), "How the plan fares on a worst day, with parts off to one side, wider parts and a worn nest, is the page “"+daysTitle+"”.")
	t.Then = []Table{say.matrixTable(s)}
	return t
}

// cells are those of a row on paper.
func (row ShareRow) cells(lot bool) []string {
	label := row.Label
	if row.Means != "" {
		label += " (" + row.Means + ")"
	}
	ppm := func(text string) string {
		if text == "" {
			return none
		}
		return Unit(text, "ppm")
	}
	limits := row.Limits
	if limits != noneCanBe {
		limits = ppm(limits)
	}
	marked := func(text, marks string) string {
		if text == "" || marks == "" {
			return ppm(text)
		}
		return ppm(text) + " " + marks
	}
	out := []string{label, marked(row.Closed, row.ClosedMarks), marked(row.Share, row.Marks), limits}
	if lot {
		out = append(out, marked(row.Lot, row.LotMarks))
	}
	return out
}

// matrixTable is what the parts are against what the station says of them.
func (say Printer) matrixTable(s *press.Simulation) Table {
	t := Table{
		Title:   "What the parts are, and what the station says",
		Lead:    "In ppm of all parts; a dash: none can be. Each signal pair stands with the words of the plan's table. What the marks lead to holds for each figure under 100\u202fppm here as well.",
		Columns: []Column{{Head: "The part is", Share: 1.4}},
	}
	for _, head := range say.SharesSeen(s) {
		t.Columns, t.Bare = append(t.Columns, Column{Head: head, Share: 2}), append(t.Bare, head)
	}
	for i, row := range s.Shares.Matrix.All() {
		cells := []string{Truths[i]}
		for _, cell := range row.All() {
			cells = append(cells, say.MatrixCell(*cell))
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

// sharesRepeat says how somebody else comes to the same shares.
func (say Printer) sharesRepeat(s *press.Simulation) string {
	flags := "ramplan simulate -seed " + strconv.FormatUint(s.Seed, 10) + " -precision " + Trimmed(s.Precision, 3) + " -json"
	lot := ""
	if s.BadLot != nil {
		lot = ", and those of the bad lot from as many points or more"
	}
	if s.Shares.Met {
		return "“" + flags + "” with this plan estimates the same shares" + lot + "."
	}
	return "That is not as close as " + say.Share(s.Precision) + " of each leading share or of 1" + thin + "ppm: paper goes no further. “" + flags + "” with this plan does, and its shares may differ within the limits."
}
