package view

import (
	"net/url"
	"strconv"
	"strings"
	"time"

	"ramplan/press/proving"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Shelf is one page of the shelf, or of the bin.
type Shelf struct {
	Items  []Item
	Total  int // on all pages
	Offset int
	Text   string // that is searched for
	Order  string
	Bin    bool
	Binned int // how many plans are in the bin
	Undo   *Undo
}

// An Item is one plan on the shelf.
type Item struct {
	Address, Name, Number, Revision, Strip string
	Changed, Binned                        time.Time
	Version                                int64
	Blockers, Cautions, Notes, Faults      int
	NotReady                               string // why, where there is a blocker
	Damaged                                bool
	Asked                                  string // the revision whose digest was searched for
	AskedState, AskedAt                    string // the state of the draft in place of that, in words, and its address
	AskedShown                             bool   // strip and findings are those of what was searched for
	AsIssued                               bool   // the draft is the last revision
	Proved                                 *Proved
}

// Proved is how the newest issued revision of a plan stands, and what is due at its station.
type Proved struct {
	State, Until string // as package proving has them
	Damaged      bool   // a stored study cannot be read
	Due          proving.Due
	Checked      time.Time // the last shift check of this revision; zero without
}

// Undo takes a plan out of the bin again.
type Undo struct {
	Address, Name string
	Version       int64
}

// orders of the shelf, as its form offers them.
var orders = []page.Option{
	{Value: "changed", Label: "Last change"},
	{Value: "name", Label: "Name"},
	{Value: "number", Label: "Number"},
	{Value: "due", Label: say.OrderedByDue()},
}

// Page gives the page of the shelf.
func (s Shelf) Page(assets page.Assets) page.Shelf {
	out := page.Shelf{Assets: assets, Title: say.ShelfTitle(), Text: s.Text, Bin: s.Bin, Path: "/", Empty: s.Total == 0 && strings.TrimSpace(s.Text) == ""}
	if s.Bin {
		out.Title, out.Path = say.BinTitle(), "/bin"
	}
	for _, o := range orders {
		o.Chosen = o.Value == s.Order
		out.Orders = append(out.Orders, o)
	}
	out.Count = counted(s.Total, "plan", "plans")
	if s.Text != "" {
		out.Count += " found"
	}
	out.NoHit = noHit(s.Text, s.Total)
	if s.Binned > 0 {
		out.Binned = say.InTheBin(counted(s.Binned, "plan", "plans"))
	}
	for _, it := range s.Items {
		out.Cards = append(out.Cards, it.card())
	}
	if s.Undo != nil {
		out.Undo = &page.Undo{Address: s.Undo.Address, Text: say.PlanIsInBin(titled(s.Undo.Name))}
	}
	out.Pages = s.pages(out.Path)
	return out
}

// noHit says that a search found nothing; empty where it found something or
// nothing was searched for.
func noHit(text string, found int) string {
	if found > 0 || strings.TrimSpace(text) == "" {
		return ""
	}
	return say.NothingFound(strings.TrimSpace(text))
}

// titled is a name in quotation marks, or what stands for none.
func titled(name string) string {
	if strings.TrimSpace(name) == "" {
		return say.UnnamedAtHead()
	}
	return "“" + strings.TrimSpace(name) + "”"
}

func (it Item) card() page.Card {
	c := page.Card{Address: it.Address, Name: it.Name, Number: it.Number, Strip: it.Strip, When: say.When(it.Changed), Stamp: words.Stamp(it.Changed)}
	if strings.TrimSpace(c.Name) == "" {
		c.Name, c.Nameless = say.WithoutName(), true
	}
	c.Revision = say.Standing(it.Revision, it.AsIssued)
	if it.Asked != "" {
		c.Asked, c.AskedAddress = "Revision "+it.Asked, it.Address+"/revisions/"+it.Asked
		c.AskedSays = say.HasThisDigest()
		if it.Asked != it.Revision {
			c.AskedSays = say.HadThisDigest(it.Revision)
		}
	} else if it.AskedState != "" {
		c.Asked, c.AskedAddress, c.AskedSays = say.ThisDigest(), it.AskedAt, say.DigestIsOf(it.AskedState)
	}
	if it.AskedShown {
		c.AskedSays += say.ShownHere()
	}
	switch {
	case it.Damaged:
		c.State = page.State{Kind: "blocker", Text: say.DraftDamaged()}
	case it.Faults > 0:
		c.State = page.State{Kind: "incomplete", Text: say.NotSoundYet(counted(it.Faults, "entry", "entries"))}
	case it.Blockers > 0:
		c.State = page.State{Kind: "blocker", Text: it.NotReady}
		if it.NotReady == "" {
			c.State.Text = say.NotReadyFor(counted(it.Blockers, "blocker", "blockers"))
		}
	case it.Cautions > 0:
		c.State = page.State{Kind: "caution", Text: counted(it.Cautions, "caution", "cautions")}
	default:
		c.State = page.State{Kind: "ready", Text: say.NoBlockersNoCautions()}
		if it.Notes > 0 {
			c.State.Text += ", " + counted(it.Notes, "note", "notes")
		}
	}
	c.Older = it.Faults > 0 && it.Strip != ""
	if it.Proved != nil && it.Revision != "" {
		c.Proof, c.Due = it.Proved.card(it.Address, it.Revision)
		c.Checked = sayProof.CardChecked(it.Proved.Due, it.Proved.Checked)
	}
	return c
}

// card is what the card of a plan says of its station: the state, and what is due, which leads
// to the shift checks where the last one failed, to a new one where one is to be made, else to
// the proving.
func (p *Proved) card(plan, letter string) (state page.State, due page.Link) {
	state = page.State{Kind: p.State, Text: sayProof.CardState(letter, p.State, p.Until)}
	if p.Damaged {
		state.Text = sayProof.CardDamaged(letter)
	}
	due = page.Link{Address: plan + "/proving", Text: sayProof.CardDue(p.Due, p.Checked)}
	switch {
	case p.Due.CheckFailed:
		due.Address = plan + "/checks"
	case p.Due.CheckOld, p.Due.NoCheck && !p.Due.Soon:
		due.Address = plan + "/check"
	}
	return state, due
}

// pages leads to the pages of the shelf beside this one.
func (s Shelf) pages(path string) page.Pages {
	to := func(offset int) string {
		v := url.Values{}
		if s.Text != "" {
			v.Set("q", s.Text)
		}
		if s.Order != "" {
			v.Set("order", s.Order)
		}
		if offset > 0 {
			v.Set("offset", strconv.Itoa(offset))
		}
		if len(v) == 0 {
			return path
		}
		return path + "?" + v.Encode()
	}
	out := page.Pages{}
	if s.Total == 0 {
		return out
	}
	const many = PlansOnPage
	if s.Offset > 0 {
		out.Before = to(max(0, s.Offset-many))
	}
	last := s.Offset + len(s.Items)
	if last < s.Total {
		out.After = to(last)
	}
	if out.Before != "" || out.After != "" {
		out.Text = strconv.Itoa(min(s.Offset+1, s.Total)) + " to " + strconv.Itoa(last) + " of " + strconv.Itoa(s.Total)
	}
	return out
}

// PlansOnPage is how many plans a page of the shelf shows.
const PlansOnPage = 24
