package lesson

func (say Words) WhichOfTheseZonesIs() string { return " Which of these zones is right?" }
