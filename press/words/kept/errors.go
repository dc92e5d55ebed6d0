package kept

func (say Words) DiskFull() string { return "The disk is full: nothing was saved." }

func (say Words) ArchiveReadOnly() string {
	return "The archive or its folder is read-only: nothing was saved."
}

func (say Words) HeldByAnother() string {
	return "Another program holds the archive: nothing was saved."
}

func (say Words) CannotOpen() string {
	return "The archive cannot be opened: its folder is missing, read-only or may not be written to."
}

func (say Words) DiskFails() string {
	return "The disk does not take or give data: nothing was saved."
}

func (say Words) NoArchiveOrDamaged() string {
	return "The file is no archive of ramplan, or it is damaged from its first bytes on."
}

func (say Words) Damaged() string {
	return "The archive's file is damaged; restore a backup, or copy the plans out that can still be read."
}

func (say Words) CannotMakeFolder() string {
	return "The archive's folder cannot be made: what stands in its place is a file."
}

func (say Words) ArchiveRemoved() string {
	return "The archive's folder or file was removed: nothing was saved."
}

func (say Words) MayNotWriteToFolder() string {
	return "The archive's folder may not be written to by this user."
}
