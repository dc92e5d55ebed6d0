package kept

import "fmt"

// A signed study never changes: a correction is a new one that names it.
func (say Words) StudySigned() string {
	return "A signed study never changes. Correct it: a correction is a new study that names this one."
}

func (say Words) StudyPosted() string {
	return "What a program sent is not typed over. Sign it or drop it as it is."
}

func (say Words) StudyCorrected() string {
	return "Another study corrects this one already. Correct that one."
}

func (say Words) StudyOtherKind() string {
	return "A correction is of the same kind as the study that it corrects, and only a signed study of the same plan is corrected."
}

func (say Words) StudyTooLarge() string {
	return "A study holds 10,000 rows and 4 MiB of text at most."
}

func (say Words) StudyNoKind() string { return "There is no such kind of study." }

func (say Words) StudyNoSigner() string {
	return "A signature needs a name or number of at most 80 characters."
}

func (say Words) CheckNoOutcome() string { return "Say whether the shift check passed or failed." }

func (say Words) StudyChangedElsewhere() string {
	return "The study was changed meanwhile, in another window or by somebody else. Nothing of it was overwritten."
}

// What is wrong with the plain files of studies that are to come in.
func (say Words) IsNo(format string) string { return "is no " + format }

func (say Words) NothingTyped() string { return "what was typed cannot be read" }

func (say Words) NoStudyDate(found, layout string) string {
	return fmt.Sprintf("found %q as a date; one such as %s is needed", found, layout)
}

func (say Words) NoSignature() string {
	return "a signed study has a date, a name and its own digest, and one that was not signed has none of them"
}

func (say Words) NoShiftCheck() string {
	return "a shift check is a signed study of kind samples that passed or failed"
}

func (say Words) NotTheStudy() string {
	return "is not the study that was kept: its digest or kind is another one"
}

func (say Words) StudyTwice(number int) string {
	return fmt.Sprintf("study %d is there twice, or its number is none", number)
}

func (say Words) StudyCorrectsNothing(number, replaces int) string {
	return fmt.Sprintf("study %d corrects study %d, which is not there before it", number, replaces)
}

func (say Words) CheckOfNoRevision(number int, letter string) string {
	return fmt.Sprintf("study %d checked revision %s, which is not there, or is another plan", number, letter)
}

func (say Words) StudyNotTaken(number int, why string) string {
	return fmt.Sprintf("study %d: %s", number, why)
}

func (say Words) StudiesWithoutPlan() string {
	return "studies stand in this folder, and neither a plan, a draft nor an issued revision that they are of"
}

func (say Words) DamagedLeftOut(what string) string { return what + " is damaged and was left out" }

func (say Words) NothingSaidBeside(file string) string {
	return file + " has no file of what was said of it, such as when it was issued or signed, beside it"
}

func (say Words) CorrectsWrongly(what string) string { return "corrects " + what + ", which cannot be" }
