package issue

import (
	"fmt"
	"slices"
	"strings"
)

// InOrder puts revisions in the order of their letters, in which AA follows Y.
func InOrder(issued []Revision) {
	slices.SortFunc(issued, func(x, y Revision) int {
		return strings.Compare(fmt.Sprintf("%10s", x.Letter), fmt.Sprintf("%10s", y.Letter))
	})
}

// TrueLine tells whether revisions are what one plan's can be: A, B and so on
// without a gap, none before the one before it, and each such as is issued.
func TrueLine(issued []Revision) error {
	for i, r := range issued {
		if want := Letter(i + 1); r.Letter != want {
			return fmt.Errorf("issue: revision %s is found where %s belongs", r.Letter, want)
		}
		if i > 0 && r.At.Before(issued[i-1].At) {
			return fmt.Errorf("issue: revision %s is older than the one before it", r.Letter)
		}
		if faults := Refuse(r.Plan, r.Signed); len(faults) > 0 {
			return fmt.Errorf("issue: revision %s could not be issued: %s", r.Letter, faults[0])
		}
	}
	return nil
}
