package view

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
)

// ramFrom says, in the section of the ram, from which ram of the shelf its
// entries were copied; nil where they were not. That is carried along and not
// typed.
func (f *form) ramFrom(section string) *page.RamFrom {
	if section != "ram" {
		return nil
	}
	out := &page.RamFrom{ID: "f-ram-shelf_name", Name: strings.TrimSpace(f.text["ram.shelf_name"])}
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

// ramNews is the note that the shelf's ram has changed.
func ramNews(name string) *page.RamNews {
	if name == "" {
		return nil
	}
	return &page.RamNews{Text: "The shelf's ram “" + name + "” has changed since it was copied into this plan."}
}
