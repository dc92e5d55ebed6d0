package kept

func (say Words) LogRemoved() string {
	return "The archive's log was removed and could not be rescued yet: save again."
}

func (say Words) EmptyInPlace() string {
	return "An empty file stands in place of the archive: nothing was saved."
}
