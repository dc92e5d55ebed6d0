package screen

// What a program is told that sends or asks for studies.

func (say Words) SendTheStudy() string {
	return "Send the study itself as the body of the request, as JSON or as a table of text, not in a form."
}

func (say Words) NoStudySent() string { return "What was sent is no study that can be kept." }

func (say Words) StudyHalfTyped() string {
	return "This study is being typed and cannot be read as a whole yet."
}

func (say Words) NoDayAsked() string { return "A day such as 2026-11-28 is needed." }
