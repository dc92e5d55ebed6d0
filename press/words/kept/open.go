package kept

func (say Words) OpenedToLook() string {
	return "The archive was opened to look at only: nothing was saved."
}
