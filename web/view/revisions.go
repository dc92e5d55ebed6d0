package view

import (
	"slices"
	"strconv"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/press/words"
	"ramplan/press/words/screen"
	"ramplan/web/page"
)

// Revisions is the page of what was issued, and of issuing the next.
type Revisions struct {
	Title            Title
	Address          string
	Version          int64
	Next             string // letter
	Issued           []Revision
	Plan             *press.Plan // the draft, when it is a sound plan
	Result           *press.Result
	Unsound          int  // faults of a draft that is none
	Same             bool // the draft is the last revision, to the letter
	Physical, Others []press.Finding
	Draft            *press.Draft      // to whose fields the blockers lead
	Just             string            // letter of the one that was issued just now
	Asked            *issue.Asked      // what differs from the last revision that the drill asks about; nil where that cannot be read
	Typed            map[string]string // by path, what was typed into the form
	Faults           press.Problems    // why that was not issued
}

// A Revision is one that was issued.
type Revision struct {
	Letter                                               string
	At                                                   time.Time
	Prepared, Checked, Approved, Reason, Despite, Second string
	Drill                                                string // again, same, or empty where nobody said so
	Digest                                               string
	Damaged                                              bool
	Faults                                               press.Problems // why today's rules do not take it
	Readable                                             bool           // a draft can be made of it
}

func (r Revision) page(address string) page.Revision {
	out := page.Revision{
		Letter: r.Letter, When: say.Day(r.At), Stamp: words.Stamp(r.At), Prepared: r.Prepared, Checked: r.Checked, Approved: r.Approved,
		Reason: r.Reason, Despite: r.Despite, Second: r.Second, Drill: saidOf(drillSaid, r.Drill), Digest: words.ShortDigest(r.Digest), Damaged: r.Damaged,
		Remark: r.oneName(),
	}
	for _, p := range r.Faults {
		out.NotTaken = append(out.NotTaken, label(p.Path)+": "+p.Message)
	}
	if !r.Damaged && len(r.Faults) == 0 {
		out.Address = address + "/revisions/" + r.Letter
	}
	return out
}

// A signedField is a field of the form, with its words.
type signedField struct {
	path        string
	label, help func(screen.Words) string
}

// signing are the fields of the form, in order.
var signing = []signedField{
	{issue.PathPrepared, screen.Words.PreparedBy, screen.Words.PreparedByHelp},
	{issue.PathChecked, screen.Words.CheckedBy, screen.Words.CheckedByHelp},
	{issue.PathApproved, screen.Words.ApprovedBy, screen.Words.ApprovedByHelp},
	{issue.PathReason, screen.Words.Reason, screen.Words.ReasonHelp},
}

// despite are those asked as well when there are blockers.
var despite = []signedField{
	{issue.PathDespite, screen.Words.DespiteBlockers, screen.Words.DespiteBlockersHelp},
	{issue.PathSecond, screen.Words.SecondName, screen.Words.SecondNameHelp},
}

// Page gives the page of the revisions.
func (v Revisions) Page(assets page.Assets) page.RevisionsPage {
	out := page.RevisionsPage{Assets: assets, Title: v.Title.page(), Address: v.Address, Version: strconv.FormatInt(v.Version, 10), Next: v.Next}
	for i, r := range v.Issued {
		one := r.page(v.Address)
		if i > 0 {
			one.Superseded = sentence(say.SupersededBy(v.Issued[0].Letter, ""))
		}
		if len(r.Faults) > 0 && r.Readable {
			one.Back = &page.BringBack{Action: v.Address + "/revisions/" + r.Letter, Version: out.Version, Do: "draft", Label: StartAgain(r.Letter)}
		}
		out.Issued = append(out.Issued, one)
	}
	if v.Just != "" {
		out.Just = say.RevisionWasIssued(v.Just)
		if remark := v.Issued[0].oneName(); remark != "" {
			out.Just += " " + remark
		}
	}
	if len(v.Issued) > 0 {
		out.Compare = v.Address + "/compared?from=" + v.Issued[0].Letter + "&to=draft"
	}
	switch {
	case v.Plan == nil:
		out.Cannot = say.NothingSoundToIssue(counted(v.Unsound, "entry", "entries"))
		return out
	case v.Same:
		out.Cannot = say.NothingNewToIssue(v.Issued[0].Letter)
		if len(v.Faults) > 0 { // another window was faster
			out.Cannot = say.IssuedAlready(v.Issued[0].Letter)
		}
		return out
	}
	say.Explain(v.Result)
	out.Headline, out.Blocked = say.Headline(v.Plan, v.Result), v.Result.Blocked()
	form := newForm(Take(v.Draft.Entries, nil), nil)
	form.page() // knows the places only then
	told := func(fs []press.Finding) (out []page.Finding) {
		for _, f := range v.Result.Findings {
			for _, g := range fs {
				if f.Code == g.Code && f.Path == g.Path {
					one := page.Finding{Severity: string(f.Severity), Text: f.Message, Where: label(f.Path)}
					if link := form.places.link(f.Path); link != "" {
						one.Link = v.Address + link
					}
					out = append(out, one)
					break
				}
			}
		}
		return out
	}
	out.Physical, out.Others = told(v.Physical), told(v.Others)
	if len(v.Physical) > 0 {
		out.Cannot = say.NeverIssuedWith()
		return out
	}
	fields := signing
	if len(v.Others) > 0 {
		fields = append(fields[:len(fields):len(fields)], despite...)
	}
	for _, f := range fields {
		out.Fields = append(out.Fields, v.field(f.path, f.label(say), f.help(say)))
		if f.path == issue.PathReason && len(v.Issued) > 0 {
			out.Fields = append(out.Fields, v.drillField())
		}
	}
	out.Remark = v.oneName()
	for _, p := range v.Faults {
		if !strings.HasPrefix(p.Path, "issue.") {
			out.Trouble = append(out.Trouble, sentence(p.Message))
		}
	}
	return out
}

// oneName remarks that one name stands for all three; empty where several do.
func (r Revision) oneName() string {
	alike := func(name string) bool {
		return strings.EqualFold(strings.Join(strings.Fields(name), " "), strings.Join(strings.Fields(r.Prepared), " "))
	}
	if strings.TrimSpace(r.Prepared) == "" || !alike(r.Checked) || !alike(r.Approved) {
		return ""
	}
	return say.OneNameForAll()
}

// oneName is the same remark on what stands in the form.
func (v Revisions) oneName() string {
	value := func(path string) string { return v.field(path, "", "").Value }
	return Revision{Prepared: value(issue.PathPrepared), Checked: value(issue.PathChecked), Approved: value(issue.PathApproved)}.oneName()
}

// field is one of the form; it stands at what the title block says until
// something was typed.
func (v Revisions) field(path, label, help string) page.Field {
	value, typed := v.Typed[path]
	if !typed {
		t := v.Plan.Title
		value = map[string]string{issue.PathPrepared: t.PreparedBy, issue.PathChecked: t.CheckedBy, issue.PathApproved: t.ApprovedBy}[path]
		if path == issue.PathReason && len(v.Issued) == 0 {
			value = say.FirstIssue()
		}
	}
	return page.Field{
		ID: strings.ReplaceAll(path, ".", "-"), Name: page.NameSigned + path, Label: label, Kind: "text", Help: help, Value: value,
		Required: true, Limit: strconv.Itoa(drafts.MostText), Messages: v.Faults.At(path),
	}
}

// saidOf says what a table has for a key; empty for a key that it does not have.
func saidOf[K comparable](table map[K]func(screen.Words) string, key K) string {
	if tell, ok := table[key]; ok {
		return tell(say)
	}
	return ""
}

// drillSaid says it in the list of revisions.
var drillSaid = map[string]func(screen.Words) string{
	issue.DrillAgain: screen.Words.DrillConcerned,
	issue.DrillSame:  screen.Words.DrillNotConcerned,
}

// drillField asks whether the change concerns the drill.
func (v Revisions) drillField() page.Field {
	last := v.Issued[0].Letter
	help := say.LastUnreadable(last)
	if v.Asked != nil {
		help = say.AskedChanges(last, v.asked(), v.Asked.Lamps)
	}
	f := v.field(issue.PathDrill, say.ConcernsDrill(), help)
	f.Kind = "choice"
	for _, o := range []page.Option{
		{Value: "", Label: say.SayWhich()}, {Value: issue.DrillAgain, Label: say.EverybodyDue()}, {Value: issue.DrillSame, Label: say.StaysTrained(last)},
	} {
		o.Chosen = o.Value == f.Value
		f.Options = append(f.Options, o)
	}
	return f
}

// asked names what changed that the drill asks about.
func (v Revisions) asked() []string {
	pos := say.Positions(v.Plan)
	say := func(x *float64) string {
		if x == nil {
			return "none"
		}
		return pos.At(*x)
	}
	var out []string
	for _, x := range v.Asked.Figures {
		out = append(out, x.Name+" "+say(x.Was)+" → "+say(x.Is))
	}
	for _, c := range v.Asked.Entries {
		if name := label(c.Path); !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}

// Issued is one issued revision with everything that it leads to.
type Issued struct {
	Address  string
	Revision Revision
	Plan     *press.Plan
	Result   *press.Result
	Drawings Drawings
	Version  int64 // of the draft
	IsDraft  bool  // the draft makes the same plan
	Last     Revision
}

// Page gives the page of an issued revision.
func (v Issued) Page(assets page.Assets) page.IssuedPage {
	shown := result(v.Plan, v.Result, v.Drawings, places{})
	shown.Copy = copied(v.Plan, v.Result, say.Setpoints(v.Plan, v.Result), say.Standing(v.Revision.Letter, true), false)
	out := page.IssuedPage{
		Assets: assets, Title: Title{Address: v.Address, Name: v.Plan.Title.Name, Number: v.Plan.Title.Number}.page(), Address: v.Address,
		Revision: v.Revision.page(v.Address), Headline: say.Headline(v.Plan, v.Result), Blocked: v.Result.Blocked(), Result: shown,
	}
	letter := v.Revision.Letter
	if v.Last.Letter != letter {
		out.Revision.Superseded = say.PaperOutOfDate(v.Last.Letter, say.Day(v.Last.At))
		out.Last = &page.Link{Text: "Revision " + v.Last.Letter, Address: v.Address + "/revisions/" + v.Last.Letter}
	}
	of := "?revision=" + letter
	out.Links = []page.Link{
		{Text: say.ItsSheet(), Address: v.Address + "/sheet" + of},
		{Text: say.ItsDrill(), Address: v.Address + "/drill" + of},
		{Text: say.CompareWithTheDraft(), Address: v.Address + "/compared?from=" + letter + "&to=draft"},
		{Text: say.AllRevisions(), Address: v.Address + "/revisions"},
	}
	if !v.IsDraft {
		out.Back = &page.BringBack{Action: v.Address + "/revisions/" + letter, Version: strconv.FormatInt(v.Version, 10), Do: "draft", Label: StartAgain(letter)}
	}
	return out
}
