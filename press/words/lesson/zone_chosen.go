package lesson

func (say Words) WhichZone() string { return " Which of these zones is right?" }
