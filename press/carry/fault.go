package carry

import (
	"errors"
	"fmt"

	"ramplan/press"
)

// What can be wrong with a file that a plan is to be taken from. Each is one
// sentence for people, behind the prefix of the package.
var (
	ErrKind    = errors.New("carry: this is neither an SVG, a PNG nor a PDF file")
	ErrNoPlan  = errors.New("carry: this is neither a plan nor a sheet with a plan inside; a chat tool or an editor may have left the plan out when it saved the file")
	ErrForeign = errors.New("carry: this is neither a plan nor a sheet with a plan inside")
	ErrDamaged = errors.New("carry: the plan inside is damaged; take another copy of the file")
	ErrLarge   = fmt.Errorf("carry: the file is larger than %d MiB, which no sheet is", MaxFile>>20)
	ErrBomb    = fmt.Errorf("carry: what is inside unpacks to more than %d MiB, which no plan does", maxDocument>>20)
	ErrNewer   = errors.New("carry: the plan inside was put there by a newer version of ramplan")
	ErrLocked  = errors.New("carry: the PDF is encrypted; save it without a password first")
	ErrMany    = errors.New("carry: several plans are inside; say which")
)

// unsound tells the first fault of a plan that is none.
func unsound(ps press.Problems) error {
	return fmt.Errorf("carry: what is inside is no sound plan: %s", ps[0])
}
