package kept

func (say Words) TheArchiveWasOpenedTo() string {
	return "The archive was opened to look at only: nothing was saved."
}
