package proving_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"ramplan/press/proving"
)

// Due 30 days before the end and 24 hours after the last check, both by common practice, no
// source; the days by hand.
func TestDue(t *testing.T) {
	now := time.Date(2026, 11, 28, 14, 0, 0, 0, time.UTC)
	ago := func(h float64) time.Time { return now.Add(-time.Duration(h * float64(time.Hour))) }
	for name, c := range map[string]struct {
		state, until string
		checked      time.Time
		passed       proving.Answer
		want         proving.Due
	}{
		"at work":                {proving.StateProved, "2027-11-20", ago(8), proving.Pass, proving.Due{Days: 357}},
		"for 31 days":            {proving.StateProved, "2026-12-29", ago(8), proving.Pass, proving.Due{Days: 31}},
		"for 30 days":            {proving.StateProved, "2026-12-28", ago(8), proving.Pass, proving.Due{Days: 30, Soon: true}},
		"the last day":           {proving.StateProved, "2026-11-28", ago(8), proving.Pass, proving.Due{Soon: true}},
		"a day ago":              {proving.StateProved, "2027-11-20", ago(24), proving.Pass, proving.Due{Days: 357}},
		"more than a day ago":    {proving.StateProved, "2027-11-20", ago(24.1), proving.Pass, proving.Due{Days: 357, CheckOld: true}},
		"it failed":              {proving.StateProved, "2027-11-20", ago(1), proving.Fail, proving.Due{Days: 357, CheckFailed: true}},
		"it failed long ago":     {proving.StateNotProved, "", ago(1000), proving.Fail, proving.Due{CheckFailed: true}},
		"never checked":          {proving.StateProved, "2027-11-20", time.Time{}, "", proving.Due{Days: 357, NoCheck: true}},
		"not proved, no checks":  {proving.StateNotProved, "", time.Time{}, "", proving.Due{}},
		"withdrawn, and checked": {proving.StateWithdrawn, "", ago(30), proving.Pass, proving.Due{CheckOld: true}},
	} {
		got := proving.DueOf(c.state, c.until, c.checked, c.passed, now)
		assert.Equal(t, c.want, got, name)
		assert.Equal(t, c.want.Soon || c.want.CheckFailed || c.want.CheckOld || c.want.NoCheck, got.Any(), name)
	}
}
