package lesson

func (say Words) NoAnswerWasGiven(explain string) string { return "No answer was given. " + explain }
