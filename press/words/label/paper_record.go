package label

import (
	"ramplan/press/words"
)

func (say Words) AnsweredRight(given string, right string) string {
	return "Answered: " + given + ". Right: " + right + "."
}

func (say Words) TrainingRecord(who string) string { return "Training record: " + who }

func (say Words) DraftNotIssued() string { return "draft, not issued" }

func (say Words) DraftThatBecameRevision(as string) string { return "draft that became revision " + as }

func (say Words) NoLimit() string { return "no limit" }

func (say Words) SeedOfTheExam() string { return "Seed of the exam" }

func (say Words) TimeTaken() string { return "Time taken" }

func (say Words) ThisRecord() string { return "This record" }

func (say Words) RecordHead() string {
	return "Training record: the two lamps of the station"
}

func (say Words) MissedBehind(pages int) string {
	return "Page 1 of " + words.Fixed(float64(pages), 0) + ": what was missed goes on behind"
}

func (say Words) RecordCaution() string {
	return "Practice on a plan does not stand for instruction at the machine. Never put a hand into the work space; the lamps are no safety function."
}

func (say Words) RecordFoot(who string, when string, number string, name string, digest string) string {
	return who + " · " + when + " · " + number + " " + name + " · plan " + words.ShortDigest(digest)
}

func (say Words) RecordPage(page, pages int) string {
	return "Training record, page " + words.Fixed(float64(page), 0) + " of " + words.Fixed(float64(pages), 0)
}

func (say Words) NothingMissed() string { return "Nothing was missed." }

func (say Words) LeftUnjudged() string {
	return "It was begun and left. What was answered was not handed in."
}
