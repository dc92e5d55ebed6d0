package screen

import (
	"strconv"
)

func (say Words) ThatDraft() string { return "The draft" }

func (say Words) ComparedWith(label string, inside string) string {
	return label + " compared with " + inside
}

func (say Words) TheSame(counted string) string { return counted + " the same" }

func (say Words) BringBackState(n int64) string {
	return "Bring back state " + strconv.FormatInt(n, 10)
}

func (say Words) StartTheDraftFromRevision(letter string) string {
	return "Start the draft from revision " + letter + " again"
}

func (say Words) NoFigures() string { return "no sound plan: it has no figures" }

func (say Words) SamplesLabel() string { return "Limit samples" }

func (say Words) JudgedRightly() string { return "Judged rightly" }
