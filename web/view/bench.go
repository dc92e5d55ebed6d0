package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/web/page"
)

// A Bench is everything that the page of one plan is made from.
type Bench struct {
	Typed    Typed
	Faults   press.Problems // of the draft
	Plan     *press.Plan    // the last valid one; nil before there was any
	Result   *press.Result  // of that plan
	Drawings Drawings       // of it
	Notices  []page.Notice
	Paste    *page.Paste
	Growth   Growth
	Doubts   []page.Doubt // about the points just read
	Made     *Made        // of all that, where it was made already
	Kept     Kept
}

// Made is what a page shows of the entries and of what they lead to, however they stand in
// the archive: it can be made while they are saved.
type Made struct {
	form             page.Form
	name             string // as typed
	faults           []page.Fault
	result           *page.Result
	headline, glance string
}

// Make makes it.
func (b Bench) Make() *Made {
	form := newForm(b.Typed, b.Faults)
	form.paste, form.curve, form.doubts, form.growth = b.Paste, b.curve(), b.Doubts, b.Growth
	if len(b.Faults) == 0 {
		form.strayed = strayedZones(b.Plan, b.Result)
	}
	out := &Made{form: form.page(), name: strings.TrimSpace(form.text["title.name"]), faults: form.list()}
	if b.Plan != nil {
		out.result = result(b.Plan, b.Result, b.Drawings, form.places)
		out.headline, out.glance = say.Headline(b.Plan, b.Result), say.Glance(b.Plan, b.Result)
	}
	return out
}

// Kept is how the entries stand in the archive.
type Kept struct {
	Address          string // of the plan
	Version          int64  // of the draft that the form starts from
	State            int64  // that this is, as the history numbers it
	Window           string
	Revision         string // the last issued
	AsIssued         bool   // the entries are that revision
	Older            string // an earlier revision that they are in place of it
	CanUndo, CanRedo bool
	Binned           bool
	Standing         Standing // of the last revision
	RamNews          *RamNews // the shelf's ram has changed since it was copied; nil for none
	Stale            bool     // another window changed the plan: nothing was saved
	Failure          string   // why nothing could be saved
}

// Drawings of a plan, as SVG.
// Probe and Run are empty where the plan has none.
type Drawings struct {
	Strip, Force, PressIn, Cycle, Probe, Run string

	RunPlaces draw.RunPlaces
}

// Page gives the page of the bench.
func (b Bench) Page(assets page.Assets) page.Bench {
	made := b.Made
	if made == nil {
		made = b.Make()
	}
	out := page.Bench{
		Assets:  assets,
		Title:   "ramplan",
		Name:    say.NewPlan(),
		Form:    made.form,
		State:   b.standing(),
		Notices: b.Notices,
		Faults:  made.faults,
		Result:  made.result,

		Headline: made.headline,
		Glance:   made.glance,
	}
	if made.name != "" {
		out.Title, out.Name = say.PageTitle(made.name), made.name
	}
	if b.Plan != nil {
		if at := b.Kept.Address + "/shares"; b.Result.Verdict != nil {
			out.Result.Shares = page.BenchShares{Stream: at, Of: b.Result.PlanDigest(), Address: at}
			for i := range out.Result.Groups {
				if g := &out.Result.Groups[i]; g.ID == "risk" {
					out.Result.Shares.Says, g.Says = g.Says, nil // said once, where all shares stand
					g.More = page.Link{Address: "#shares", Text: say.WithStallsLooseFitsAnd()}
				}
			}
		}
		out.Standing = page.State{Kind: gravest(b.Result), Text: out.Result.Count}
		if len(b.Faults) > 0 {
			out.Result.Older = say.OlderThanEntriesThis()
		}
		out.Result.Copy = copied(b.Plan, b.Result, say.Setpoints(b.Plan, b.Result), b.Kept.standing(), len(b.Faults) > 0)
		out.Perfect = out.Result.Perfect
	}
	out.Address = b.Kept.Address
	out.Alarm = b.Kept.alarm()
	out.Issued, out.Differs = b.Kept.standing(), b.Kept.Revision != "" && !b.Kept.AsIssued
	out.Proved = b.Kept.Standing.Link(b.Kept.Address, !b.Kept.AsIssued)
	out.CanUndo, out.CanRedo, out.Binned, out.Stale, out.Unsaved = b.Kept.CanUndo, b.Kept.CanRedo, b.Kept.Binned, b.Kept.Stale, b.Kept.Failure != ""
	out.News = b.Kept.RamNews.page()
	out.Form.Hidden = append(out.Form.Hidden,
		page.Hidden{Name: page.NameVersion, Value: strconv.FormatInt(b.Kept.Version, 10)},
		page.Hidden{Name: page.NameState, Value: strconv.FormatInt(b.Kept.State, 10)},
		page.Hidden{Name: page.NameWindow, Value: b.Kept.Window})
	return out
}

func (k Kept) standing() string {
	if k.Older != "" {
		return say.StandingOld(k.Older, k.Revision)
	}
	return say.Standing(k.Revision, k.AsIssued)
}

// alarm says in a few words, where it is always in sight, that nothing is saved.
func (k Kept) alarm() string {
	switch {
	case k.Failure != "":
		return say.NotSavedSeeTop()
	case k.Stale:
		return say.NotSavedChangedElsewhereSeeTop()
	}
	return ""
}

// standing says how the entries stand and whether they are saved.
func (b Bench) standing() page.State {
	state := b.state()
	switch {
	case b.Kept.Failure != "":
		return page.State{Kind: "unsaved", Text: say.TypedIsKeptInPage(b.Kept.Failure)}
	case b.Kept.Stale:
		return page.State{Kind: "unsaved", Text: say.NotSavedChangedElsewhere()}
	}
	state.Text += " Saved."
	return state
}

// state says in one line how the entries stand.
func (b Bench) state() page.State {
	if len(b.Faults) == 0 {
		return page.State{Kind: "valid", Text: say.UpToDate()}
	}
	missing := 0
	for _, p := range b.Faults {
		if p.Code == press.CodeRequired {
			missing++
		}
	}
	wrong := len(b.Faults) - missing
	switch {
	case wrong == 0:
		return page.State{Kind: "incomplete", Text: say.StillNeeded(counted(missing, "entry is", "entries are"))}
	case missing == 0:
		return page.State{Kind: "wrong", Text: say.FaultsInEntries(counted(wrong, "fault is", "faults are"))}
	}
	return page.State{Kind: "wrong", Text: say.FaultsAndNeeded(counted(wrong, "fault is", "faults are"), counted(missing, "entry is", "entries are"))}
}

// list is every fault of the entries, each leading to its field.
func (f *form) list() []page.Fault {
	var out []page.Fault
	for _, p := range f.faults {
		where := label(p.Path)
		if where == "" {
			where = say.ThatPlan()
		}
		out = append(out, page.Fault{Link: f.places.link(p.Path), Where: where, Text: p.Message})
	}
	return out
}

// counted counts in words: 1 entry, 2 entries.
func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}
