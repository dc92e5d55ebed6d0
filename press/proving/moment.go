package proving

import (
	"regexp"
	"time"
)

var (
	dayForm    = regexp.MustCompile(`^[0-9]{4}-[0-9]{2}-[0-9]{2}$`)
	momentForm = regexp.MustCompile(`^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]{1,9})?(Z|[+-]([01][0-9]|2[0-3]):[0-5][0-9])$`)
	digestForm = regexp.MustCompile(`^sha256:[0-9A-Fa-f]{12,64}$`)
)

// IsDay tells whether a text is a day of the calendar, such as 2026-11-25.
func IsDay(text string) bool {
	if !dayForm.MatchString(text) {
		return false
	}
	t, err := time.Parse(time.DateOnly, text)
	return err == nil && t.Year() > 0
}

// isMoment tells whether a text is a day, or day and time with their offset from UTC.
func isMoment(text string) bool {
	if IsDay(text) {
		return true
	}
	if !momentForm.MatchString(text) {
		return false
	}
	t, err := time.Parse(time.RFC3339Nano, text)
	return err == nil && t.Year() > 0
}

func isDigestStart(text string) bool { return digestForm.MatchString(text) }
