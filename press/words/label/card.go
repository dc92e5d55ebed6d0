package label

func (say Words) CardForTheStation(name string) string { return "Card for the station: " + name }

func (say Words) ThisPlanHasNoPush() string {
	return "This plan has no push end or no zone yet: the lamps mean nothing."
}

func (say Words) NoneNoHeightIsAccepted() string { return "None: no height is accepted." }

func (say Words) TheLampsDoNotSee() string { return "The lamps do not see" }

func (say Words) InstructionsOfTheWorksGo() string { return "instructions of the works go first" }

func (say Words) DraftDoNotJudgeParts() string { return "DRAFT: do not judge parts by this card" }

func (say Words) NotReadyDoNotJudge() string { return "NOT READY: do not judge parts by this" }

func (say Words) SupersededDoNotJudgeParts() string { return "SUPERSEDED: do not judge parts by this" }
