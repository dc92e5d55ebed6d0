package view

import (
	"strings"

	"ramplan/press"
)

// tidyRows drops the carriers of rows that hold entries: they are only needed
// while nothing is typed in the row.
func tidyRows(entries []press.Entry) []press.Entry {
	filled := map[string]bool{}
	for _, e := range entries {
		if base, row, ok := rowOf(e.Path); ok {
			if path := rowPath(base, row); path != e.Path {
				filled[path] = true
			}
		}
	}
	out := entries[:0:0]
	for _, e := range entries {
		if filled[e.Path] && isContainer(e) && strings.HasSuffix(general(e.Path), "[]") {
			continue
		}
		out = append(out, e)
	}
	return out
}
