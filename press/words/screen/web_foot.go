package screen

import (
	"ramplan/press/words"
)

func (say Words) TheDraftHasFaults() string { return " · the draft has faults" }

func (say Words) TheDraftIsPlan(digest string) string {
	return " · the draft is plan " + words.ShortDigest(digest)
}

func (say Words) Printed(what string) string { return what + " · printed " + say.Today() }
