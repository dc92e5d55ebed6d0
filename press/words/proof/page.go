package proof

import (
	"slices"
	"strings"

	"ramplan/press/proving"
)

// NothingIssued says that no revision can be proved yet.
func (say Words) NothingIssued() string {
	return "Nothing is issued yet, so nothing can be proved. Studies are held against the draft; once a revision is issued they are held against that."
}

// BeginStudy is said on the button that begins a study of a kind in a state.
func (say Words) BeginStudy(state string) string {
	if state == proving.StateMissing {
		return "Begin"
	}
	return "Push again"
}

// OpenStudyOf leads to the study of a day.
func (say Words) OpenStudyOf(taken string) string {
	if taken == "" {
		return "Open it"
	}
	return "Study of " + dayOf(taken)
}

// GoOn leads to a study that was begun.
func (say Words) GoOn(rows int) string {
	if rows == 0 {
		return "Go on"
	}
	return "Go on, " + counted(rows, "row", "rows")
}

// LookAndSign leads to a study that a program sent.
func (say Words) LookAndSign() string { return "Look at it and sign" }

// DamagedWord, NotSignedWord, CorrectedWord and NotJudgedWord stand in place of a verdict.
func (say Words) DamagedWord() string { return "damaged" }

// NotSignedWord stands in place of the verdict of a study that is being typed.
func (say Words) NotSignedWord() string { return "not signed" }

// CorrectedWord stands in place of the verdict of a study that another one corrects.
func (say Words) CorrectedWord() string { return "corrected" }

// NotJudgedWord stands in place of a verdict where there is no plan to judge by.
func (say Words) NotJudgedWord() string { return "not judged" }

// DamagedStudy says that a study is not what was stored.
func (say Words) DamagedStudy() string {
	return "It is not what was stored: nothing of it counts. Bring back a backup, or push again."
}

// CorrectedLead says that another study took the place of one.
func (say Words) CorrectedLead() string { return "Another study corrects it; it counts no more." }

// OnlyLatestCounts says why a study does not count.
func (say Words) OnlyLatestCounts() string {
	return "It does not count: of each kind the latest does."
}

// ItCounts says that a study is the one of its kind that counts, unless something stands in the
// way.
func (say Words) ItCounts(state string) string {
	switch state {
	case proving.StateWithdrawn, proving.StateExpired, proving.StateOtherPlan, proving.StateOtherRam:
		return "The latest of its kind, but " + say.StateWord(state) + "."
	}
	return "The latest of its kind: it counts."
}

// StillMissing names the kinds of study that are still needed.
func (say Words) StillMissing(kinds []string) string {
	var names []string
	for _, k := range kinds {
		names = append(names, strings.ToLower(say.KindName(k)))
	}
	return "Still needed: " + listed(names) + "."
}

func listed(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

// NothingOpen says that nothing is.
func (say Words) NothingOpen() string { return "Nothing: every study that counts has passed." }

// CorrectsLink leads to the study that one corrects.
func (say Words) CorrectsLink() string { return "The study that it corrects" }

// CorrectedByLink leads to the study that corrects one.
func (say Words) CorrectedByLink() string { return "The study that corrects it" }

// SignedLabel and DigestLabel stand over who signed a study, and over its digest.
func (say Words) SignedLabel() string { return "Signed" }

// DigestLabel stands over the digest of a study.
func (say Words) DigestLabel() string { return "Digest" }

// OutlierFlag is said beside a row that stands out.
func (say Words) OutlierFlag() string { return "stands out" }

// LampsFlag is said beside a row whose lamps do not fit its reading.
func (say Words) LampsFlag() string { return "lamps differ" }

// ConfirmEvent asks whether to keep what happened.
func (say Words) ConfirmEvent(event string) string { return say.EventName(event) + ": keep this?" }

// KeepEvent and ChangeEvent are said on the buttons of that question.
func (say Words) KeepEvent() string { return "Keep this for good" }

// ChangeEvent goes back to what was said.
func (say Words) ChangeEvent() string { return "Change it, keep nothing" }

// EventStays says that an event is never taken back.
func (say Words) EventStays() string {
	return "It never goes away: what it withdraws comes back only by pushing again."
}

// EventWithdraws names what counts now and would not after an event, each kind with the day of
// its study, and the revision that is proved by it; no letter where none is.
func (say Words) EventWithdraws(proved string, kinds, days []string) string {
	if len(kinds) == 0 {
		return "Of the studies that count now it withdraws none."
	}
	var names []string
	needed := false
	for i, kind := range kinds {
		names = append(names, strings.ToLower(say.KindName(kind))+" of "+dayOf(days[i]))
		needed = needed || slices.Contains(proving.Needed, kind)
	}
	s := "Now it withdraws: " + listed(names) + "."
	if proved != "" && needed {
		s += " Revision " + proved + " is no longer proved then."
	}
	return s
}
