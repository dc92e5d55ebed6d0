package screen

import (
	"strconv"

	"ramplan/press/words"
)

func (say Words) PlanUnreadable() string { return "A plan that cannot be read" }

func (say Words) Plan(exam string, revision string, digest string) string {
	return say.ExamOf(exam) + ". " + revision + ", plan " + words.ShortDigest(digest)
}

func (say Words) DraftThatBecameRevision(became string) string {
	return "Draft that became revision " + became
}

func (say Words) RecordsOfTitle(name string) string { return "Records of " + name + " · ramplan" }

func (say Words) RevisionCounts(letter string) string {
	return "What counts is revision " + letter + ", the last that was issued. Here is who has not passed on it, or failed the last exam on it."
}

func (say Words) PassCountsAsWell(join string) string {
	return " A pass on revision " + join + " counts as well: what was changed since does not concern the drill."
}

func (say Words) DraftCounts() string {
	return "Nothing was issued yet, so the draft counts as it stands now. Here is who has not passed on it, or failed the last exam on it."
}

func (say Words) AllAsCSV(name string) string { return "All as CSV with " + name + "s" }

func (say Words) ToBeTrained() string { return "To be trained: " }

func (say Words) ToBeTrainedAgain() string { return "To be trained again: " }

func (say Words) RemoveRecords(counted string) string { return "Remove " + counted + " for good" }

func (say Words) LeftUnjudged() string {
	return "It was begun and left. What was answered was not handed in, so nothing of it was judged."
}

func (say Words) Needed(needed int, pass float64) string {
	return ", " + strconv.Itoa(needed) + " needed (" + say.TargetShare(pass) + ")"
}

func (say Words) SeedOfTheExam() string { return "Seed of the exam" }

func (say Words) TakenOnDevice() string { return "Taken on, by that device's clock" }

func (say Words) QuestionNoLongerAsked() string {
	return "A question that this program does not ask any more"
}

func (say Words) AskedNotAtHand() string { return ". What was asked is not at hand any more." }

func (say Words) Right(trimSuffix string) string { return ". Right: " + trimSuffix + "." }
