package proving

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/web/page"
)

// An Overview is everything that the page of a plan's proving is made from.
type Overview struct {
	Title     page.Title
	Address   string        // of the plan
	Letter    string        // of the newest issued revision; empty before the first
	Result    *press.Result // of what studies are held against: that revision, else the draft; nil: nothing is sound
	Found     *proving.Assessment
	Counted   []int  // places in Kept of the studies that the assessment is of
	Kept      []Kept // all, the first begun first
	Notices   []page.Notice
	Upload    page.Upload
	Event     page.EventForm
	Happened  *proving.Study // said, and not kept yet
	Withdraws []string       // kinds whose study would count no more with it
	Checks    page.StationChecks
	Files     []page.Link
}

// Page gives the page.
func (o Overview) Page(assets page.Assets) page.ProvingPage {
	out := page.ProvingPage{Assets: assets, Title: o.Title, Address: o.Address, Notices: o.Notices, Upload: o.Upload, Event: o.Event, Station: o.Checks, Files: o.Files}
	out.State = o.state()
	if o.Result == nil {
		out.Unsound = say.CannotTell()
	}
	first := o.first()
	for _, kind := range needed {
		n := o.need(kind)
		n.First = kind == first
		out.Needs = append(out.Needs, n)
	}
	out.Caution = pushCaution(o.Address, o.Result, needed...)
	for i := len(o.Kept) - 1; i >= 0; i-- {
		if k := o.Kept[i]; k.Kind != proving.Event {
			out.Studies = append(out.Studies, o.card(k, i))
		}
	}
	o.open(&out)
	o.events(&out.Event)
	return out
}

// state is that of the newest revision, in words.
func (o Overview) state() page.ProvingState {
	switch {
	case o.Letter == "":
		return page.ProvingState{Kind: "none", Text: say.NothingIssued()}
	case o.Found == nil:
		return page.ProvingState{Kind: proving.StateNotProved, Text: say.CannotTell()}
	}
	p := &o.Found.Proved
	out := page.ProvingState{Kind: p.State, Text: say.RevisionState(o.Letter, p)}
	if p.FoundStands() {
		out.Found = say.AsFoundOf(o.Result, p.AsFound)
	}
	if o.Checks.Failed {
		out.Alarm = say.CheckFailedAlarm()
	}
	return out
}

// first is the kind that is to be done next: the first needed one that has not passed.
func (o Overview) first() string {
	for _, kind := range needed {
		if !optional(kind) && o.stateOf(kind).State != string(proving.Pass) {
			return kind
		}
	}
	return ""
}

// pushCaution is what stands where pushes of some kinds are taken.
func pushCaution(plan string, r *press.Result, kinds ...string) page.PushCaution {
	out := page.PushCaution{Says: say.PushCautions(kinds...)}
	if r != nil {
		out.SetUp = &page.Link{Address: plan + "/sheet?behind=proving", Text: say.SetUpPage()}
	}
	return out
}

func (o Overview) stateOf(kind string) proving.KindState {
	if o.Found == nil {
		return proving.KindState{State: proving.StateMissing}
	}
	return o.Found.Proved.Kinds[kind]
}

// place of a counted study among those that are kept; −1 where none counts.
func (o Overview) place(s proving.KindState) int {
	if s.Study == nil || *s.Study >= len(o.Counted) {
		return -1
	}
	return o.Counted[*s.Study]
}

func (o Overview) need(kind string) page.Need {
	s := o.stateOf(kind)
	out := page.Need{Kind: kind, Name: say.KindName(kind), Asks: say.KindAsks(kind), Optional: optional(kind), State: s.State, StateText: say.StateWord(s.State), Do: "start " + kind, DoLabel: say.BeginStudy(s.State)}
	taken := ""
	if at := o.place(s); at >= 0 {
		taken = o.Kept[at].taken()
		out.Study = &page.Link{Address: o.Kept[at].Address, Text: say.OpenStudyOf(taken)}
	}
	out.Next = say.NextOf(kind, s.State, taken, o.Letter, o.Result)
	if out.Optional && s.State == proving.StateMissing {
		out.State, out.StateText = "idle", say.NotBegun()
	}
	for _, k := range o.Kept {
		if k.Kind == kind && !k.Signed() { // the newest; the others stand below with what is there
			text := say.GoOn(k.Rows())
			if k.Posted {
				text = say.LookAndSign()
			}
			out.Typing = []page.Link{{Address: k.Address, Text: text}}
			if s.State == proving.StateMissing {
				out.StateText = say.NotSignedWord()
			}
			break
		}
	}
	return out
}

func (o Overview) card(k Kept, at int) page.StudyCard {
	out := page.StudyCard{ID: "study-" + k.ID, Address: k.Address, Name: say.KindName(k.Kind), When: strings.Replace(k.taken(), "T", " ", 1), By: k.by(), Typing: !k.Signed(), Folded: true}
	switch {
	case k.Damaged:
		out.Verdict, out.VerdictText, out.Lead = "fail", say.DamagedWord(), say.DamagedStudy()
		return out
	case !k.Signed():
		out.Verdict, out.VerdictText, out.Lead = "typing", say.NotSignedWord(), say.RowCount(k.Rows())
		return out
	case k.ReplacedBy != "":
		out.Verdict, out.VerdictText, out.Lead = "typing", say.CorrectedWord(), say.CorrectedLead()
		return out
	case k.Judged == nil:
		out.Verdict, out.VerdictText = "typing", say.NotJudgedWord()
		return out
	}
	out.Verdict, out.VerdictText = string(k.Judged.Verdict), say.StateWord(string(k.Judged.Verdict))
	out.Lead = say.LeadOf(o.Result, k.Study, k.Judged)
	out.Says = &page.Says{Checks: checksOf(o.Result, k.Study, k.Judged), Findings: findingsOf(o.Address, o.Result, k.Study, k.Judged)}
	out.Counts = say.OnlyLatestCounts()
	if s := o.stateOf(k.Kind); o.place(s) == at {
		out.Counts = say.ItCounts(s.State)
		out.Verdict, out.VerdictText = s.State, say.StateWord(s.State) // withdrawn, say, although it passed
	}
	return out
}

// open lists what is still open: checks of what counts that did not pass, and kinds that have
// no study that counts.
func (o Overview) open(out *page.ProvingPage) {
	if o.Found == nil {
		out.Nothing = say.CannotTell()
		return
	}
	for _, kind := range needed {
		s := o.stateOf(kind)
		at := o.place(s)
		if at < 0 || o.Kept[at].Judged == nil {
			continue
		}
		for _, c := range o.Kept[at].Judged.Checks {
			if c.Outcome != proving.Pass {
				out.Open = append(out.Open, page.OpenPoint{Kind: kind, Name: say.KindName(kind) + ": " + strings.ToLower(say.CheckName(kind, c.Name)), Text: say.CheckAdvice(kind, c)})
			}
		}
	}
	var missing []string
	for _, kind := range needed {
		if s := o.stateOf(kind).State; !optional(kind) && !slices.Contains([]string{string(proving.Pass), string(proving.Fail), string(proving.Open)}, s) {
			missing = append(missing, kind)
		}
	}
	switch {
	case len(missing) > 0:
		out.Nothing = say.StillMissing(missing)
	case len(out.Open) == 0:
		out.Nothing = say.NothingOpen()
	}
}

// events are what happened to the station, the newest first.
func (o Overview) events(to *page.EventForm) {
	chosen := ""
	for _, p := range to.Picks {
		if p.Chosen {
			chosen = p.Value
		}
	}
	to.Picks = nil
	for _, e := range proving.Events {
		to.Picks = append(to.Picks, page.Pick{Value: e, Text: say.EventName(e), Chosen: e == chosen})
	}
	if o.Happened != nil {
		to.Confirm = o.confirm(*to)
	}
	for i := len(o.Kept) - 1; i >= 0; i-- {
		k := o.Kept[i]
		if k.Kind != proving.Event || k.Study == nil {
			continue
		}
		to.Events = append(to.Events, page.EventLine{What: say.EventName(k.Study.Event), When: strings.Replace(k.Study.TakenAt, "T", " ", 1), By: k.by(), Notes: k.Study.Notes, Effect: say.EventEffect(k.Study.Event)})
	}
}

// confirm asks whether to keep what happened, and says what that does.
func (o Overview) confirm(f page.EventForm) *page.EventConfirm {
	e, proved := o.Happened, ""
	if o.Found != nil && o.Found.Proved.State == proving.StateProved {
		proved = o.Letter
	}
	var days []string
	for _, kind := range o.Withdraws {
		days = append(days, o.Kept[o.place(o.stateOf(kind))].taken())
	}
	out := &page.EventConfirm{
		Lead: say.ConfirmEvent(e.Event), Keep: say.KeepEvent(), Change: say.ChangeEvent(),
		Does: []string{say.EventEffect(e.Event), say.EventWithdraws(proved, o.Withdraws, days), say.EventStays()},
	}
	for _, x := range []struct{ name, label, text string }{
		{page.NameWhat, "", e.Event}, {page.NameWhen, say.HeadOf(proving.Event, "taken_at").Label, f.When}, {page.NameWho, say.HeadOf(proving.Event, "taken_by").Label, f.Who},
		{page.NameNotes, say.HeadOf(proving.Event, "notes").Label, f.Notes},
	} {
		out.Hidden = append(out.Hidden, page.Hidden{Name: x.name, Value: x.text})
		if x.label != "" && x.text != "" {
			out.Facts = append(out.Facts, page.Fact{Name: x.label, Text: x.text})
		}
	}
	return out
}

// findingsOf are the findings of a study with the way to the entry that each is about.
func findingsOf(address string, r *press.Result, s *proving.Study, j *proving.Judged) []page.Finding {
	var out []page.Finding
	for _, f := range j.Findings {
		line := page.Finding{Severity: string(f.Severity), Text: say.FindingSaid(r, s, j, f)}
		if field, ok := press.FieldAt(f.Path); ok {
			line.Link, line.Where = address+"#f-"+strings.ReplaceAll(f.Path, ".", "-"), field.Label
		}
		out = append(out, line)
	}
	return out
}
