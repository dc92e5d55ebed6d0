package words

import "time"

// When writes a moment as people of this machine read it: the day as ISO 8601
// writes it, and the minute.
func (w Printer) When(t time.Time) string { return t.Local().Format("2006-01-02 15:04") }

// Day writes a day as ISO 8601 does, as it was here.
func (w Printer) Day(t time.Time) string { return t.Local().Format("2006-01-02") }

// Today is the day of now, as paper has it.
func (w Printer) Today() string { return w.Day(time.Now()) }

// Stamp writes a moment for programs (RFC 3339).
func Stamp(t time.Time) string { return t.UTC().Format(time.RFC3339) }
