package shell

func (say Words) ItIsALinkThat() string {
	return "it is a link that leads to no file"
}

func (say Words) ItIsAFolder() string {
	return "it is a folder"
}

func (say Words) ItNamesNothingLeaveThe() string {
	return "it names nothing; leave the flag away instead"
}

func (say Words) ItWasGivenBefore() string {
	return "it was given before"
}

func (say Words) ThisUserHasNoHome() string {
	return "this user has no home folder; name the archive's folder with -data DIR"
}

func (say Words) WriteTheMessageOverA() string {
	return "write the message over a drawing alone; -title=false leaves it away"
}
