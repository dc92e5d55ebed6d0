package lesson

func (say Words) ArrivalSaysWhy(end float64) string {
	return "Arrival comes on when something stops the ram, at the push end of " + say.At(end) + " or before. It does not say what stopped it, nor where."
}

func (say Words) ArrivalSays() string { return "The arrival lamp is on. What does this lamp say?" }

func (say Words) ArrivalSaysStopped() string { return "Something has stopped the ram" }

func (say Words) ArrivalSaysHeight() string { return "The part has the right height" }

func (say Words) ArrivalSaysHeightWhy(why string) string {
	return "Arrival does not say where the ram stands. " + why
}

func (say Words) ArrivalSaysHome() string { return "Home is where the ram stands again" }

func (say Words) ArrivalSaysFirm() string { return "The insert sits firmly" }

func (say Words) ArrivalSaysFirmWhy(why string) string {
	return "No lamp says how firmly an insert sits. " + why
}

func (say Words) ZoneSaysWhy(zoneStart float64, zoneEnd float64) string {
	return "Zone is on while the ram stands between " + say.Bare(zoneStart) + " and " + say.At(zoneEnd) + ", whatever has brought it there."
}

func (say Words) ZoneSays() string { return "The zone lamp is on. What does this lamp say?" }

func (say Words) ZoneSaysInside() string {
	return "The ram stands between the zone start and the zone end"
}

func (say Words) ZoneSaysGood() string { return "The part is good" }

func (say Words) ZoneSaysGoodWhy(why string) string {
	return "One lamp alone does not judge a part. " + why
}

func (say Words) ZoneSaysInsert() string { return "An insert is in the nest" }

func (say Words) ZoneSaysInsertWhy(why string) string {
	return "The lamp knows where the ram stands, and not what lies in the nest. " + why
}

func (say Words) ZoneSaysSafe() string { return "A hand may go into the work space" }

func (say Words) UnseenBoth() string {
	return "Both lamps are on. Which of these faults can be there even so?"
}
