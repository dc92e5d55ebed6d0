package screen

import (
	"strconv"
)

func (say Words) SeedIsWhole() string { return "A seed is a whole number." }

func (say Words) NoSuchLevel() string { return "There is no such level." }

func (say Words) DraftNotForPractice() string {
	return "The draft is no sound plan yet: there is nothing to practise on."
}

func (say Words) StationInMotion() string { return "Station in motion" }

func (say Words) HeightNoNumber() string { return "The height is no number." }

func (say Words) WhoNeeded(maxWho int) string {
	return "A name or number is needed, of " + strconv.Itoa(maxWho) + " characters at most."
}

func (say Words) ExamUnderThisName() string {
	return "An exam under this name is not handed in yet: open it above. It can be given up at its foot."
}

func (say Words) NothingToExam() string {
	return "This plan has nothing that this exam could ask."
}

func (say Words) AnswerUnreadable(number string) string {
	return "Not handed in yet: question " + number + " has an answer that cannot be read. The time runs on."
}

func (say Words) RecordsOfEverybody() string { return "Training records of everybody" }

func (say Words) NoRecordsOfPerson() string { return "There are no records of this person." }

func (say Words) MayBeRemoved() string { return "They may have been removed." }

func (say Words) RecordsOfPerson(who string) string { return "Training records of " + who }

func (say Words) NotRemovedTick() string {
	return "Nothing was removed: tick that it is meant."
}

func (say Words) FreshSet() string { return "fresh set" }

func (say Words) TrainingRecords(standingDigest string) string {
	return "training records" + standingDigest
}

func (say Words) NoSuchRecord() string { return "There is no such record." }

func (say Words) RecordMayBeRemoved() string {
	return "It may have been removed with its person's records."
}

func (say Words) TrainingRecordOf(who string) string { return "Training record of " + who }

func (say Words) RecordDamaged() string {
	return "This record is damaged: it is not what was stored, so it is not printed."
}
