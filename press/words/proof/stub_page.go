package proof

import (
	"ramplan/press"
	"ramplan/press/proving"
)

func (say Words) CheckName(kind, name string) string { return name }

func (say Words) CheckAsks(kind, name string) string { return "" }

func (say Words) CheckAdvice(kind string, c proving.Check) string { return say.CheckWord(c.Outcome) }

func (say Words) FindingSaid(r *press.Result, s *proving.Study, j *proving.Judged, f proving.Finding) string {
	return f.Code + " " + f.Message
}

func (say Words) LeadOf(r *press.Result, s *proving.Study, j *proving.Judged) string { return "" }

func (say Words) RevisionState(letter string, p *proving.Proved) string {
	if p.State == proving.StateProved {
		return "Revision " + letter + " is proved until " + *p.Until + "."
	}
	return "Revision " + letter + " is not proved."
}

func (say Words) AsFoundOf(r *press.Result, a *proving.AsFound) string { return "" }
