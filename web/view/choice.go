package view

import (
	"strconv"
	"time"

	"ramplan/press"
	"ramplan/web/page"
)

// A Choice is the two sides of a plan that two windows changed.
type Choice struct {
	Title   Title
	Address string
	Version int64     // that stands
	State   int64     // that this side started from
	At      time.Time // when what stands was made
	Mine    string    // the entries of this side, as a draft file
	Changes []Change  // from what stands to this side
	Trouble string

	Before       *press.Draft // what both started from; nil where that is not known
	Theirs, Ours []Change     // from there to what stands, and to this side
}

// Page gives the page on which a side is chosen.
func (c Choice) Page(assets page.Assets) page.ChoicePage {
	return page.ChoicePage{
		Assets: assets, Title: c.Title.page(), Address: c.Address, Version: strconv.FormatInt(c.Version, 10), State: strconv.FormatInt(c.State, 10),
		When: say.When(c.At), Mine: c.Mine, Trouble: c.Trouble, Known: c.Before != nil, Groups: c.groups(),
	}
}

// groups sorts the entries by who changed them. What one side left alone is
// picked from the other; what both changed stands first, picked from this side.
func (c Choice) groups() []page.ChoiceGroup {
	if c.Before == nil {
		var all page.ChoiceGroup
		for _, one := range c.Changes {
			all.Rows = append(all.Rows, page.ChoiceRow{Change: one.page(), Mine: true})
		}
		return filled(all)
	}
	theirs, ours := pathsOf(c.Theirs), pathsOf(c.Ours)
	both := page.ChoiceGroup{Label: say.ChangedInBothWindows()}
	here := page.ChoiceGroup{Label: say.ChangedInThisWindowOnly()}
	there := page.ChoiceGroup{Label: say.ChangedInTheOtherWindow()}
	for _, one := range c.Changes {
		text, given := c.Before.Get(one.Path)
		if _, counts := press.AsRead(one.Path, text); !counts {
			given = false
		}
		row := page.ChoiceRow{Change: one.page(), Before: shownEntry(one.Path, text, given), Mine: true}
		switch {
		case theirs[one.Path] && ours[one.Path]:
			both.Rows = append(both.Rows, row)
		case ours[one.Path]:
			here.Rows = append(here.Rows, row)
		default:
			row.Mine = false
			there.Rows = append(there.Rows, row)
		}
	}
	return filled(both, here, there)
}

func pathsOf(cs []Change) map[string]bool {
	out := make(map[string]bool, len(cs))
	for _, c := range cs {
		out[c.Path] = true
	}
	return out
}

func filled(groups ...page.ChoiceGroup) []page.ChoiceGroup {
	var out []page.ChoiceGroup
	for _, g := range groups {
		if len(g.Rows) > 0 {
			out = append(out, g)
		}
	}
	return out
}
