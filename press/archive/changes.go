package archive

import (
	"slices"
	"strings"

	"ramplan/press"
)

// A Change is one entry that differs between two drafts.
type Change struct {
	Path     string
	Was, Is  string
	Had, Has bool // the draft of before, of after, has the entry
}

// Changes lists the entries that differ, in the order of the drafts.
func Changes(was, is *press.Draft) []Change {
	before := texts(was)
	after := texts(is)
	var out []Change
	for _, e := range is.Entries {
		old, had := before[e.Path]
		if now := after[e.Path]; now == e.Text && (!had || old != now) {
			out = append(out, Change{Path: e.Path, Was: old, Is: now, Had: had, Has: true})
			before[e.Path] = now // an entry given twice is told once
		}
	}
	for _, e := range was.Entries {
		if _, has := after[e.Path]; !has {
			out = append(out, Change{Path: e.Path, Was: e.Text, Had: true})
		}
	}
	return out
}

func texts(d *press.Draft) map[string]string {
	m := make(map[string]string, len(d.Entries))
	for _, e := range d.Entries {
		if _, twice := m[e.Path]; !twice {
			m[e.Path] = e.Text
		}
	}
	return m
}

// onePath gives the path of the only entry that differs, if there is only one.
func onePath(was, is *press.Draft) (string, bool) {
	c := Changes(was, is)
	if len(c) != 1 {
		return "", false
	}
	return c[0].Path, true
}

// same tells whether two drafts hold the same entries; in what order they stand
// says nothing but among those of one path.
func same(a, b *press.Draft) bool {
	return len(a.Entries) == len(b.Entries) && slices.Equal(byPath(a), byPath(b))
}

func byPath(d *press.Draft) []press.Entry {
	sorted := slices.Clone(d.Entries)
	slices.SortStableFunc(sorted, func(x, y press.Entry) int { return strings.Compare(x.Path, y.Path) })
	return sorted
}
