package shell

func (say Words) DeadLink() string {
	return "it is a link that leads to no file"
}

func (say Words) IsFolder() string {
	return "it is a folder"
}

func (say Words) NamesNothing() string {
	return "it names nothing; leave the flag away instead"
}

func (say Words) GivenBefore() string {
	return "it was given before"
}

func (say Words) NoHomeFolder() string {
	return "this user has no home folder; name the archive's folder with -data DIR"
}

func (say Words) TitleFlag() string {
	return "write the message over a drawing alone; -title=false leaves it away"
}
