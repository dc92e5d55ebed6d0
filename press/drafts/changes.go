package drafts

import (
	"slices"
	"strings"

	"ramplan/press"
)

// A Change is one entry that differs between two drafts.
type Change struct {
	Path     string
	Was, Is  string // as typed
	Had, Has bool   // it is given in the draft of before, of after
}

// Changes lists the entries that mean something else, in the order of the
// drafts: a figure that is only written in another way has not changed.
func Changes(was, is *press.Draft) []Change {
	before := texts(was)
	after := texts(is)
	var out []Change
	add := func(path string) {
		c := Change{Path: path}
		c.Was, c.Had = given(before, path)
		c.Is, c.Has = given(after, path)
		if c.Had != c.Has || c.Had && !press.SameMeaning(path, c.Was, c.Is) {
			out = append(out, c)
		}
	}
	told := make(map[string]bool, len(is.Entries))
	for _, e := range slices.Concat(is.Entries, was.Entries) {
		if !told[e.Path] {
			told[e.Path] = true
			add(e.Path)
		}
	}
	return out
}

// given is the text at a path, where there is one that counts as given.
func given(texts map[string]string, path string) (string, bool) {
	text, has := texts[path]
	if !has {
		return "", false
	}
	if _, counts := press.AsRead(path, text); !counts {
		return "", false
	}
	return text, true
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

// OnePath gives the path of the only entry whose text differs, if there is only
// one: typing in a field goes on while its figure stays the same.
func OnePath(was, is *press.Draft) (string, bool) {
	before, after := texts(was), texts(is)
	one, n := "", 0
	for path, text := range after {
		if old, had := before[path]; !had || old != text {
			one, n = path, n+1
		}
	}
	for path := range before {
		if _, has := after[path]; !has {
			one, n = path, n+1
		}
	}
	return one, n == 1
}

// Same tells whether two drafts hold the same entries; in what order they stand
// says nothing but among those of one path.
func Same(a, b *press.Draft) bool {
	return len(a.Entries) == len(b.Entries) && slices.Equal(byPath(a), byPath(b))
}

func byPath(d *press.Draft) []press.Entry {
	sorted := slices.Clone(d.Entries)
	slices.SortStableFunc(sorted, func(x, y press.Entry) int { return strings.Compare(x.Path, y.Path) })
	return sorted
}
