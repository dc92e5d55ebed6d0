package view

import (
	"slices"
	"strings"

	"ramplan/press"
)

// containers are the paths of the plan that hold other entries, as the field
// table writes them, each with the kinds of joint that have it (nil: all).
var containers = findContainers()

func findContainers() map[string][]string {
	found := map[string][]string{}
	for i := range press.Fields {
		f := &press.Fields[i]
		if f.Kind == press.Rows {
			found[f.Path] = f.For
		}
		for at, r := range f.Path {
			if at == 0 || r != '.' && r != '[' {
				continue
			}
			path := f.Path[:at]
			if kinds, known := found[path]; known {
				found[path] = widest(kinds, f.For)
			} else {
				found[path] = f.For
			}
		}
	}
	return found
}

// widest joins two lists of kinds, nil meaning all.
func widest(a, b []string) []string {
	if a == nil || b == nil {
		return nil
	}
	out := slices.Clone(a)
	for _, k := range b {
		if !slices.Contains(out, k) {
			out = append(out, k)
		}
	}
	return out
}

// general turns a path of a document into one of the field table: parts[3].plus
// into parts[].plus.
func general(path string) string {
	if base, rest, ok := listOf(path); ok {
		if digits, tail, ok := strings.Cut(rest, "]"); ok && isRow(digits) {
			return base + "[]" + tail
		}
	}
	return path
}

func isRow(digits string) bool {
	return digits != "" && strings.Trim(digits, "0123456789") == ""
}

// applies tells whether this kind of joint has the entry at a path. An entry
// that no kind has is no business of the joint.
func applies(path, kind string) bool {
	kinds, known := containers[general(path)]
	if f, ok := press.FieldAt(path); ok {
		kinds, known = f.For, true
	}
	return !known || kinds == nil || slices.Contains(kinds, kind)
}

// anchor is the id of the place on the page where a path is entered.
func anchor(path string) string { return "f-" + plainID.Replace(path) }

var plainID = strings.NewReplacer("[", "-", "]", "", ".", "-")

// places knows which paths the page has a place for.
type places map[string]string // id by path

// link leads to the place of a path, or of what holds it; empty where there is
// none.
func (p places) link(path string) string {
	for path != "" {
		if id, ok := p[path]; ok {
			return "#" + id
		}
		path = path[:max(0, strings.LastIndexAny(path, ".["))]
	}
	return ""
}

// label names the place of a path in words: "Plus, part 2".
func label(path string) string {
	f, ok := press.FieldAt(path)
	if !ok {
		for _, s := range press.Sections {
			if s.Path == path {
				return s.Label
			}
		}
		if base, row, ok := rowOf(path); ok && base == path[:strings.LastIndexByte(path, '[')] {
			return RowName(base, row)
		}
		return path
	}
	if base, row, ok := rowOf(path); ok {
		return f.Label + ", " + strings.ToLower(RowName(base, row))
	}
	for _, s := range press.Sections {
		if strings.HasPrefix(path, s.Path+".") {
			return s.Label + ": " + strings.ToLower(f.Label[:1]) + f.Label[1:]
		}
	}
	return f.Label
}
