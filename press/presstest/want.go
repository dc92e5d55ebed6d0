package presstest

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// Status says how sure it is that a source prints a value.
type Status string

const (
	// Published values were taken from a text that prints or quotes them.
	Published Status = "published"
	// FromMemory values were recalled, the text was not at hand.
	FromMemory Status = "from memory"
	// Computed values are our own: they guard against change, no more.
	Computed Status = "computed"
)

// Source is where values come from.
type Source struct {
	ID     string // short, unique, in lower case
	Cite   string // author, title, edition, place in it
	Status Status
}

// Want is an expected value. Make it with [Printed], [Within], [Relative] or
// [Exact].
type Want struct {
	Source    Source
	Value     float64
	Tolerance float64 // absolute
	Rule      string  // how the tolerance came about
}

// Printed is a value as its source prints it, digit for digit: it allows half
// a unit of the last digit. It panics when the text is not a number.
func Printed(s Source, digits string) Want {
	v, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		panic("presstest: not a printed number: " + digits)
	}
	mantissa, exponent, _ := strings.Cut(strings.ToLower(digits), "e")
	last, _ := strconv.Atoi(exponent)
	if _, fraction, ok := strings.Cut(mantissa, "."); ok {
		last -= len(fraction)
	}
	half := 0.5 * math.Pow10(last)
	return Want{Source: s, Value: v, Tolerance: half * (1 + 1e-9), Rule: "printed digits of " + digits}
}

// Within is a value with an absolute tolerance, for a reason.
func Within(s Source, value, tolerance float64, reason string) Want {
	return Want{Source: s, Value: value, Tolerance: tolerance, Rule: reason}
}

// Relative is a value with a tolerance relative to its own size, for a reason.
func Relative(s Source, value, fraction float64, reason string) Want {
	return Want{Source: s, Value: value, Tolerance: math.Abs(value) * fraction, Rule: reason}
}

// Exact is a value without rounding: whole µm of a table, say. It allows the
// noise of binary numbers, 1e-12 relative.
func Exact(s Source, value float64) Want {
	return Want{Source: s, Value: value, Tolerance: 1e-12 * max(1, math.Abs(value)), Rule: "exact"}
}

// Equal compares a result with what its source says, and reports whether they
// agree. A result or an expectation that is not finite never agrees, and
// neither does one without a source.
func Equal(t testing.TB, what string, got float64, want Want) bool {
	t.Helper()
	fault := ""
	switch {
	case want.Source.ID == "" || want.Source.Cite == "" || want.Source.Status == "":
		fault = "the expected value has no source"
	case !finite(want.Value) || !finite(want.Tolerance) || want.Tolerance < 0:
		fault = "the expected value or its tolerance is no number"
	case !finite(got):
		fault = "the result is not a finite number"
	case math.Abs(got-want.Value) > want.Tolerance:
		fault = "they differ"
	default:
		return true
	}
	t.Errorf("%s: got %v, want %v ± %.3g (%s): %s\n\tsource: %s", what, got, want.Value, want.Tolerance, want.Rule,
		fault, cite(want.Source))
	return false
}

func cite(s Source) string { return fmt.Sprintf("%s [%s]", s.Cite, s.Status) }

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
