package proof

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"ramplan/press/proving"
)

// A card says in a line how the newest revision stands, and what is due. Regression values.
func TestCards(t *testing.T) {
	var say Words
	for state, want := range map[string]string{
		proving.StateProved:    "Revision B proved until 2027-11-20",
		proving.StateNotProved: "Revision B not proved",
		proving.StateWithdrawn: "Revision B no longer proved: withdrawn",
		proving.StateExpired:   "Revision B no longer proved: expired",
	} {
		assert.Equal(t, want, say.CardState("B", state, "2027-11-20"))
	}
	at := time.Date(2026, 11, 28, 6, 0, 0, 0, time.Local)
	for want, d := range map[string]proving.Due{
		"":                                   {Days: 300},
		"Due: prove the station again today": {Soon: true},
		"Due: prove the station again within 1 day; no shift check kept yet":                     {Soon: true, Days: 1, NoCheck: true},
		"Due: prove the station again within 30 days; last shift check failed, 2026-11-28 06:00": {Soon: true, Days: 30, CheckFailed: true},
		"Due: last shift check over a day old, 2026-11-28 06:00":                                 {CheckOld: true},
	} {
		assert.Equal(t, want, say.CardDue(d, at))
	}
}
