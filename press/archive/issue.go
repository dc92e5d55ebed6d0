package archive

import (
	"time"

	"ramplan/press/carry"
)

// Issue is what paper says of a revision.
func (r Revision) Issue() *carry.Issue {
	return &carry.Issue{
		Revision: r.Letter, Date: r.At.Local().Format(time.DateOnly),
		Prepared: r.Prepared, Checked: r.Checked, Approved: r.Approved,
		Reason: r.Reason, Despite: r.Despite, Second: r.Second,
	}
}

// Says tells whether paper says what was issued. The day may be the one before or
// after: it was printed as the clocks stood where the sheet was made.
func (r Revision) Says(paper carry.Issue) bool {
	day, err := time.Parse(time.DateOnly, paper.Date)
	if err != nil {
		return false
	}
	apart := r.At.Sub(day)
	paper.Date = ""
	mine := *r.Issue()
	mine.Date = ""
	return paper == mine && apart > -24*time.Hour && apart < 48*time.Hour
}
