package lesson

func (say Words) NoAnswerBut(explain string) string { return "No answer was given. " + explain }
