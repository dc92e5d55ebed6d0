package kept

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
