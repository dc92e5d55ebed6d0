package label

import (
	"ramplan/press/words"
)

func (say Words) AnsweredRight(given string, trimSuffix string) string {
	return "Answered: " + given + ". Right: " + trimSuffix + "."
}

func (say Words) TrainingRecord(who string) string { return "Training record: " + who }

func (say Words) DraftNotIssued() string { return "draft, not issued" }

func (say Words) DraftThatBecameRevision(as string) string { return "draft that became revision " + as }

func (say Words) NoLimit() string { return "no limit" }

func (say Words) SeedOfTheExam() string { return "Seed of the exam" }

func (say Words) TimeTaken() string { return "Time taken" }

func (say Words) ThisRecord() string { return "This record" }

func (say Words) TrainingRecordTheTwoLamps() string {
	return "Training record: the two lamps of the station"
}

func (say Words) Page1OfWhatWas(float64 float64) string {
	return "Page 1 of " + words.Fixed(float64, 0) + ": what was missed goes on behind"
}

func (say Words) PracticeOnAPlanDoes() string {
	return "Practice on a plan does not stand for instruction at the machine. Never put a hand into the work space; the lamps are no safety function."
}

func (say Words) Plan(to string, to2 string, number string, name string, digest string) string {
	return to + " · " + to2 + " · " + number + " " + name + " · plan " + words.ShortDigest(digest)
}

func (say Words) TrainingRecordPageOf(float64 float64, float642 float64) string {
	return "Training record, page " + words.Fixed(float64, 0) + " of " + words.Fixed(float642, 0)
}

func (say Words) NothingWasMissed() string { return "Nothing was missed." }

func (say Words) ItWasBegunAndLeft() string {
	return "It was begun and left. What was answered was not handed in."
}
