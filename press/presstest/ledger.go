package presstest

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"
)

// Ledger counts comparisons by source: only those that were made and agreed,
// and each named value once. The zero Ledger is empty and ready.
type Ledger struct {
	agreed map[Source]map[string]bool // names of the values
}

// Equal compares like [Equal] and counts the value when it agrees. The name
// tells the value from others of its source; to compare one twice under the
// same name is an error of the test.
func (l *Ledger) Equal(t testing.TB, what string, got float64, want Want) {
	t.Helper()
	if !Equal(t, what, got, want) {
		return
	}
	if l.agreed == nil {
		l.agreed = make(map[Source]map[string]bool)
	}
	names := l.agreed[want.Source]
	if names == nil {
		names = make(map[string]bool)
		l.agreed[want.Source] = names
	}
	if names[what] {
		t.Errorf("%s of %s is compared twice, but may count only once", what, want.Source.ID)
	}
	names[what] = true
}

// Count returns how many values of a status agreed, and of how many sources.
func (l *Ledger) Count(s Status) (values, sources int) {
	for source, names := range l.agreed {
		if source.Status == s {
			values += len(names)
			sources++
		}
	}
	return values, sources
}

// String lists the sources with their counts, one a line, and the sums.
func (l *Ledger) String() string {
	var b strings.Builder
	for _, status := range []Status{Published, FromMemory, Computed} {
		values, sources := l.Count(status)
		if values == 0 {
			continue
		}
		fmt.Fprintf(&b, "%s: %d values from %d sources\n", status, values, sources)
		for _, s := range l.sources(status) {
			fmt.Fprintf(&b, "  %5d  %s\n", len(l.agreed[s]), s.Cite)
		}
	}
	return b.String()
}

// sources returns the sources of a status by their ID.
func (l *Ledger) sources(status Status) []Source {
	var list []Source
	for s := range l.agreed {
		if s.Status == status {
			list = append(list, s)
		}
	}
	slices.SortFunc(list, func(a, b Source) int { return cmp.Compare(a.ID, b.ID) })
	return list
}
