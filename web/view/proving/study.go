package proving

import (
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Study is everything that the page of one study is made from.
type Study struct {
	Kept
	Title    page.Title
	Plan     string        // address of the plan
	Letter   string        // of the revision that it is held against; empty: the draft
	Result   *press.Result // of that; nil: nothing is sound
	Faults   proving.TypedFaults
	From     int  // first row of the leaf
	More     bool // more blank rows
	Window   string
	Notices  []page.Notice
	Stale    bool
	Failure  string // why nothing was saved
	Who      string // as typed into the form
	NoWho    string // what is wrong with it
	Upload   *page.Upload
	Drawings []string
	Files    []page.Link // of the drawings
	Others   []page.Link // the study as a file, and what it is held against else
	Adopt    *page.Adoption
}

// Page gives the page.
func (s Study) Page(assets page.Assets) page.StudyPage {
	out := page.StudyPage{
		Assets: assets, Title: s.Title, Address: s.Plan, Here: s.Address, Name: say.KindName(s.Kind), Asks: say.KindAsks(s.Kind), Notices: s.Notices,
		Version: s.Version, Window: s.Window, Stale: s.Stale, Saved: s.Failure == "" && !s.Stale, Adopt: s.Adopt,
	}
	if s.Kind == proving.Samples && s.Result != nil && words.TwoLooks(s.Result) {
		out.Asks += " " + say.ProbeLeftOut(false)
	}
	if s.Result != nil {
		out.Against = say.AgainstRevision(s.Letter)
	}
	if s.Replaces != "" {
		out.Links = append(out.Links, page.Link{Address: s.Replaces, Text: say.CorrectsLink()})
	}
	if s.ReplacedBy != "" {
		out.Links = append(out.Links, page.Link{Address: s.ReplacedBy, Text: say.CorrectedByLink()})
	}
	out.Links = append(out.Links, s.Others...)
	out.State = s.state()
	rows := RowsOf(s.Typed)
	table := tableOf{typed: s.Typed, faults: s.Faults, here: s.Address, from: s.From, open: !s.Signed() && !s.Posted, more: s.More, flags: s.flags()}
	if s.Kind != proving.Event {
		out.Table = table.page()
	}
	if s.Kind != proving.Event && table.open {
		out.Caution = pushCaution(s.Plan, s.Result, s.Kind)
		if rows < enough[s.Kind] {
			out.How = say.HowToTake(s.Kind, s.Result)
		}
	}
	if s.Signed() || s.Posted {
		out.Signed = s.facts()
		if s.Signed() && s.ReplacedBy == "" {
			out.Again = "correct"
		}
	} else {
		out.Heads, out.Folded = headFields(s.Typed, s.Faults)
		out.Given = given(out.Folded)
		out.Upload = s.Upload
		for _, f := range s.Faults {
			if f.Row == 0 && f.Field == "" {
				out.Faults = append(out.Faults, f.Message)
			}
		}
	}
	if !s.Signed() {
		out.Removes = true
		out.Sign = &page.SignForm{Who: s.Who, Fault: s.NoWho, Note: say.ReadyToSign(rows, len(s.Faults), StillEmpty(s.Typed)), Ready: rows > 0 && len(s.Faults) == 0}
	}
	out.Says = s.says()
	return out
}

// given names the fields in which something stands.
func given(fs []page.Field) string {
	var names []string
	for _, f := range fs {
		if f.Value != "" {
			names = append(names, f.Label)
		}
	}
	return strings.Join(names, ", ")
}

func (s Study) state() page.State {
	switch {
	case s.Failure != "":
		return page.State{Kind: "unsaved", Text: say.NotKept(s.Failure)}
	case s.Stale:
		return page.State{Kind: "unsaved", Text: say.NotKept("")}
	}
	return page.State{Kind: "valid", Text: s.by()}
}

// facts are what stands over a signed study.
func (s Study) facts() []page.Fact {
	var out []page.Fact
	for _, h := range s.Typed.Heads {
		f := say.HeadOf(s.Kind, bare(h.Name))
		unit := f.Unit
		if u := unitOf(h.Name); u != "" {
			unit = u
		}
		text := h.Text
		if within, is := strings.CutPrefix(unit, "± "); is {
			text, unit = "± "+text, within
		}
		if unit != "" {
			text += "\u202f" + unit
		}
		if bare(h.Name) == "event" {
			text = say.EventName(h.Text)
		}
		out = append(out, page.Fact{Name: f.Label, Text: text})
	}
	if s.Signed() {
		out = append(out, page.Fact{Name: say.SignedLabel(), Text: s.SignedBy + ", " + say.When(s.SignedAt)})
	}
	if s.Digest != "" {
		out = append(out, page.Fact{Name: say.DigestLabel(), Text: s.Digest})
	}
	return out
}

// says is what the study says, as far as it can be read.
func (s Study) says() page.Says {
	switch {
	case s.Kind == proving.Event:
		return page.Says{Empty: say.EventEffect(s.Typed.Head("event"))}
	case s.Result == nil:
		return page.Says{Empty: say.CannotTell()}
	case s.Judged == nil:
		return page.Says{Empty: say.NothingTyped()}
	}
	return page.Says{
		Verdict: string(s.Judged.Verdict), VerdictText: say.VerdictSaid(string(s.Judged.Verdict)), Checks: checksOf(s.Result, s.Study, s.Judged),
		Findings: findingsOf(s.Plan, s.Result, s.Study, s.Judged), Drawings: s.Drawings, Files: s.Files, Tables: tablesOf(s.Result, s.Study, s.Judged),
	}
}

// tablesOf are the figures of a study.
func tablesOf(r *press.Result, study *proving.Study, j *proving.Judged) []page.SaysTable {
	var out []page.SaysTable
	for _, t := range say.FiguresOf(r, study, j) {
		table := page.SaysTable{ID: "figures-" + t.Name, Head: t.Head, Heads: t.Heads}
		for _, row := range t.Rows {
			table.Rows = append(table.Rows, page.SaysRow(row))
		}
		out = append(out, table)
	}
	return out
}

// flags are said beside rows that stand out.
func (s Study) flags() map[int]string {
	out := map[int]string{}
	if s.Judged == nil {
		return out
	}
	at := rowsTyped(s.Typed, s.Faults)
	flag := func(rows []int, text string) {
		for _, n := range rows {
			if n >= 1 && n <= len(at) {
				out[at[n-1]] = text
			}
		}
	}
	flag(outliersOf(s.Judged), say.OutlierFlag())
	if r, ok := s.Judged.Result.(*proving.TrialResult); ok && r != nil {
		flag(r.LampMismatch, say.LampsFlag())
	}
	return out
}

// rowsTyped gives the place in the table, from 0, of each row of the study: blank ones and
// those that cannot be read are none.
func rowsTyped(t *proving.Typed, faults proving.TypedFaults) []int {
	wrong := map[int]bool{}
	for _, f := range faults {
		wrong[f.Row-1] = true
	}
	var out []int
	for i := range t.Rows {
		if !wrong[i] && !t.Blank(i) {
			out = append(out, i)
		}
	}
	return out
}

func outliersOf(j *proving.Judged) []int {
	switch r := j.Result.(type) {
	case *proving.LoadCellResult:
		if r != nil {
			return r.Outliers
		}
	case *proving.StiffnessResult:
		if r != nil {
			return r.Outliers
		}
	case *proving.MasterResult:
		if r != nil {
			return r.Outliers
		}
	case *proving.RestartResult:
		if r != nil {
			return r.Outliers
		}
	case *proving.TrialResult:
		if r != nil {
			return r.Outliers
		}
	}
	return nil
}
