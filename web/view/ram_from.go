package view

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/web/page"
)

// ramFrom says, in the section of the ram, from which ram of the shelf its
// entries were copied; nil where they were not. That is carried along and not
// typed.
func (f *form) ramFrom(section string) *page.RamFrom {
	if section != "ram" {
		return nil
	}
	out := &page.RamFrom{ID: "f-ram-shelf_name", Name: strings.TrimSpace(f.text[drafts.PathShelfName])}
	given := false
	for _, path := range shelfFields {
		text, has := f.text[path]
		given = given || has
		if has {
			out.Hidden = append(out.Hidden, page.Hidden{Name: path, Value: text})
		}
		out.Messages = append(out.Messages, f.faults.At(path)...)
		f.places[path] = out.ID
	}
	if !given {
		for _, path := range shelfFields {
			delete(f.places, path)
		}
		return nil
	}
	return out
}

// isShelfField tells whether a field says where the ram was copied from.
func isShelfField(f *press.Field) bool { return slices.Contains(shelfFields, f.Path) }

// Unshelve forgets from where the ram was copied.
func Unshelve(t Typed) Typed {
	var out []press.Entry
	for _, e := range t.Draft.Entries {
		if !slices.Contains(shelfFields, e.Path) {
			out = append(out, e)
		}
	}
	return Take(out, t.Parked)
}

// RamNews is that the shelf's ram has changed since it was copied into a plan.
type RamNews struct {
	Name    string
	Changes []Change // of the plan, if it takes that ram anew
}

// mostRamNews is how many changes are told one by one.
const mostRamNews = 4

func (n *RamNews) page() *page.RamNews {
	if n == nil {
		return nil
	}
	out := &page.RamNews{Text: say.ShelfRamChanged(n.Name)}
	var told []Change
	for _, c := range n.Changes {
		if c.Path != drafts.PathShelfDigest {
			told = append(told, c)
		}
	}
	if len(told) == 0 {
		out.Text += say.ShelfRamIsThePlans()
		return out
	}
	out.Changes, out.Rest = cut(inBrief(told), mostRamNews)
	return out
}
