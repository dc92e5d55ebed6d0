package screen

func (say Words) TrainingRecords(standingDigest string) string {
	return "training records" + standingDigest
}

func (say Words) ThereIsNoSuchRecord() string { return "There is no such record." }

func (say Words) ItMayHaveBeenRemoved() string {
	return "It may have been removed with its person's records."
}

func (say Words) TrainingRecordOf(who string) string { return "Training record of " + who }

func (say Words) ThisRecordIsDamagedIt() string {
	return "This record is damaged: it is not what was stored, so it is not printed."
}
