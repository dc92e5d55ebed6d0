package kept

func (say Words) TheArchivesLogWasRemoved() string {
	return "The archive's log was removed and could not be rescued yet: save again."
}

func (say Words) AnEmptyFileStandsIn() string {
	return "An empty file stands in place of the archive: nothing was saved."
}
