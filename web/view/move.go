package view

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// Move adds, removes, copies, raises or lowers one row of a list. It is false where there
// is no such list, row or place.
func Move(t Typed, what, base string, row int) (Typed, bool) {
	f, ok := press.FieldAt(base)
	if !ok || f.Kind != press.Rows || f.Path != base {
		return t, false
	}
	n := rowsIn(t.Draft.Entries, base)
	order := make([]int, n) // by new place, the old one
	for i := range order {
		order[i] = i
	}
	switch {
	case what == "add" && n < 2*f.MaxRows:
		t.Draft.Entries = reordered(t.Draft.Entries, base, order)
		t.Draft.Entries = append(t.Draft.Entries, press.Entry{Path: rowPath(base, n), Text: emptyRow(base)})
		return t, true
	case row < 0 || row >= n:
		return t, false
	case what == "repeat" && n < 2*f.MaxRows:
		order = slices.Insert(order, row+1, row)
	case what == "remove":
		order = append(order[:row], order[row+1:]...)
	case what == "up" && row > 0:
		order[row], order[row-1] = order[row-1], order[row]
	case what == "down" && row < n-1:
		order[row], order[row+1] = order[row+1], order[row]
	default:
		return t, false
	}
	t.Draft.Entries = reordered(t.Draft.Entries, base, order)
	if base == stepRows {
		t.Draft.Entries = heldWith(t.Draft.Entries, n, order)
	}
	return t, true
}

// emptyRow is the text of a row in which nothing is typed.
func emptyRow(base string) string {
	if strings.HasSuffix(columnsOf(base)[0].Path, "]") {
		return "[]"
	}
	return "{}"
}

// rowsIn counts the rows of a list.
func rowsIn(entries []press.Entry, base string) int {
	n := 0
	for _, e := range entries {
		if b, row, ok := rowOf(e.Path); ok && b == base && hasPlace(e.Path) {
			n = max(n, row+1)
		}
	}
	return n
}

// reordered puts the rows of a list in another order; those that order does not
// name are gone. Rows in which nothing is typed stay as such.
func reordered(entries []press.Entry, base string, order []int) []press.Entry {
	byRow := map[int][]press.Entry{}
	var out []press.Entry
	at := -1
	for _, e := range entries {
		if b, row, ok := rowOf(e.Path); ok && b == base && hasPlace(e.Path) {
			byRow[row] = append(byRow[row], e)
			if at < 0 {
				at = len(out)
			}
			continue
		}
		out = append(out, e)
	}
	if at < 0 {
		at = len(out)
	}
	var rows []press.Entry
	for now, old := range order {
		if len(byRow[old]) == 0 {
			rows = append(rows, press.Entry{Path: rowPath(base, now), Text: emptyRow(base)})
		}
		for _, e := range byRow[old] {
			e.Path = rowPath(base, now) + strings.TrimPrefix(e.Path, rowPath(base, old))
			rows = append(rows, e)
		}
	}
	return append(out[:at:at], append(rows, out[at:]...)...)
}

// WithCurve puts these points (%, N) in place of the curve's.
func WithCurve(t Typed, points [][2]float64) Typed {
	out := reordered(t.Draft.Entries, curveRows, nil)
	for i, p := range points {
		for k, x := range p {
			out = append(out, press.Entry{Path: rowPath(rowPath(curveRows, i), k), Text: words.Exact(x)})
		}
	}
	t.Draft.Entries = out
	return t
}

// Forget drops the n-th of the entries for which the form has no place.
func Forget(t Typed, n int) Typed {
	var out []press.Entry
	seen := map[string]bool{}
	for _, e := range t.Draft.Entries {
		if other(e, seen) {
			if n--; n == -1 {
				continue
			}
		}
		out = append(out, e)
	}
	t.Draft.Entries = out
	return t
}

// other tells whether the form has no place for an entry: its path is unknown,
// or it has come before.
func other(e press.Entry, seen map[string]bool) bool {
	first := !seen[e.Path]
	seen[e.Path] = true
	return !(first && hasPlace(e.Path) && (isContainer(e) || isInput(e.Path)))
}
