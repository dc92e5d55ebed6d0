package kept

func (say Words) TheDiskIsFullNothing() string { return "The disk is full: nothing was saved." }

func (say Words) TheArchiveOrItsFolder() string {
	return "The archive or its folder is read-only: nothing was saved."
}

func (say Words) AnotherProgramHoldsTheArchive() string {
	return "Another program holds the archive: nothing was saved."
}

func (say Words) TheArchiveCannotBeOpened() string {
	return "The archive cannot be opened: its folder is missing, read-only or may not be written to."
}

func (say Words) TheDiskDoesNotTake() string {
	return "The disk does not take or give data: nothing was saved."
}

func (say Words) TheFileIsNoArchiveOf() string {
	return "The file is no archive of ramplan, or it is damaged from its first bytes on."
}

func (say Words) TheArchivesFileIsDamaged() string {
	return "The archive's file is damaged; restore a backup, or copy the plans out that can still be read."
}

func (say Words) TheArchivesFolderCannotBe() string {
	return "The archive's folder cannot be made: what stands in its place is a file."
}

func (say Words) TheArchivesFolderOrFile() string {
	return "The archive's folder or file was removed: nothing was saved."
}

func (say Words) TheArchivesFolderMayNot() string {
	return "The archive's folder may not be written to by this user."
}
