package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A result that Evaluate did not make says so when it is asked for what lies behind its
// figures, and not by a nil pointer somewhere below.
func TestHandMadeResult(t *testing.T) {
	for name, ask := range map[string]func(*Result){
		"traces":  func(r *Result) { r.Traces() },
		"course":  func(r *Result) { r.CourseAt(20) },
		"chances": func(r *Result) { r.ChancesAt(115) },
		"digest":  func(r *Result) { _ = r.PlanDigest() },
		"reading": func(r *Result) { r.ReadingOf(20) },
	} {
		func() {
			defer func() {
				assert.Contains(t, recover(), "was not made by Evaluate", name)
			}()
			ask(&Result{})
		}()
	}
}
