package label

func (say Words) CardTitle(name string) string { return "Card for the station: " + name }

func (say Words) LampsMeanNothing() string {
	return "This plan has no push end or no zone yet: the lamps mean nothing."
}

func (say Words) NoneAccepted() string { return "None: no height is accepted." }

func (say Words) UnseenHead() string { return "The lamps do not see" }

func (say Words) WorksFirst() string { return "instructions of the works go first" }

func (say Words) DraftCard() string { return "DRAFT: do not judge parts by this card" }

func (say Words) NotReadyCard() string { return "NOT READY: do not judge parts by this" }

func (say Words) SupersededCard() string { return "SUPERSEDED: do not judge parts by this" }

// EitherLamp stands in place of a lamp that may be on or off.
func (say Words) EitherLamp() string { return "either" }
