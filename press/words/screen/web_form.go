package screen

func (say Words) TheFormCouldNotBe(error string) string {
	return "The form could not be read: " + error + "."
}

func (say Words) GoBackAndSendIt() string { return "Go back and send it again." }

func (say Words) TheFormCouldNotBeRead() string {
	return "The form could not be read: it names no boundary."
}
