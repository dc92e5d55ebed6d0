package words

import "time"

// When writes a moment as people of this machine read it: the day as ISO 8601
// writes it, and the minute.
func (say Printer) When(t time.Time) string { return t.Local().Format("2006-01-02 15:04") }

// Day writes a day as ISO 8601 does, as it was here.
func (say Printer) Day(t time.Time) string { return t.Local().Format("2006-01-02") }

// Today is the day of now, as paper has it.
func (say Printer) Today() string { return say.Day(time.Now()) }

// Stamp writes a moment for programs (RFC 3339).
func Stamp(t time.Time) string { return t.UTC().Format(time.RFC3339) }
