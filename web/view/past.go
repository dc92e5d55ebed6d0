package view

import (
	"strconv"
	"strings"
	"time"

	"ramplan/press/drafts"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Title names the plan that a page beside its bench is about.
type Title struct{ Address, Name, Number, Revision string }

func (t Title) page() page.Title {
	out := page.Title{Address: t.Address, Name: strings.TrimSpace(t.Name), Number: strings.TrimSpace(t.Number)}
	if out.Name == "" {
		out.Name = say.UnnamedPlan()
	}
	return out
}

// A History is one page of the states that a plan's draft had.
type History struct {
	Title   Title
	Address string // of the plan
	Version int64
	States  []State
	More    bool // there are older ones
	Damaged bool // the draft that stands is not what was stored
}

// A State is one of them.
type State struct {
	N, Prev                int64
	At                     time.Time
	Did                    string
	Stands, Sound, Damaged bool
	Changes                []Change // from the one that it was made from
	Alike                  bool     // it means what that one meant, and is only written otherwise
	Issued                 []string // letters of the revisions that it was issued as
}

// mostChanges is how many changes of one state are told one by one.
const mostChanges = 6

// Page gives the page of the history.
func (h History) Page(assets page.Assets) page.HistoryPage {
	out := page.HistoryPage{Assets: assets, Title: h.Title.page(), Address: h.Address, Version: strconv.FormatInt(h.Version, 10)}
	for _, s := range h.States {
		p := page.PastState{
			Number: strconv.FormatInt(s.N, 10), When: say.When(s.At), Stamp: words.Stamp(s.At), Stands: s.Stands,
			Do: "restore " + strconv.FormatInt(s.N, 10), Did: did(s.Did),
		}
		switch {
		case s.Damaged:
			p.Note, p.Do = say.DamagedState(), ""
		case !s.Sound:
			p.Note = say.NoSoundPlan()
		}
		all := inBrief(s.Changes)
		p.Changes, p.Rest = cut(all, mostChanges)
		p.Folded = all[len(p.Changes):]
		if s.Alike {
			p.Rest = say.WrittenOtherwise()
		}
		for _, letter := range s.Issued {
			p.Issued = append(p.Issued, page.Link{Text: "Revision " + letter, Address: h.Address + "/revisions/" + letter})
		}
		if s.Stands {
			p.Do = ""
		} else if !s.Damaged && !h.Damaged {
			p.Compare = h.Address + "/compared?from=draft&to=" + StateSide(s.N)
		}
		out.States = append(out.States, p)
	}
	if h.More && len(h.States) > 0 {
		out.Older = h.Address + "/history?before=" + strconv.FormatInt(h.States[len(h.States)-1].N, 10)
	}
	return out
}

// did says what made a state; empty for typing, which its changes tell.
func did(what string) string {
	if drafts.Typed(what) {
		return ""
	}
	if state, is := drafts.Restored(what); is {
		return say.StateBroughtBack(state)
	}
	return strings.ToUpper(what[:min(1, len(what))]) + what[min(1, len(what)):]
}

// Damage tells of a draft that is not what was stored.
type Damage struct {
	Address, What, Name string
	Good                int64 // the newest state that is whole; 0 without one
	At                  time.Time
	Version             int64
}

// Page gives the page that tells it.
func (d Damage) Page(assets page.Assets) page.DamagePage {
	out := page.DamagePage{Assets: assets, Title: Title{Name: d.Name, Address: d.Address}.page(), Address: d.Address, What: d.What, Version: strconv.FormatInt(d.Version, 10)}
	if d.Good > 0 {
		out.Good, out.When, out.Do = strconv.FormatInt(d.Good, 10), say.When(d.At), "restore "+strconv.FormatInt(d.Good, 10)
	}
	return out
}
