package proving

import (
	"strings"

	"ramplan/press"
)

// Assess holds a plan against studies of its station. The day for which the state is asked
// is written as 2026-11-28; anything else is a programmer's mistake. The studies are sound:
// they were read.
func Assess(plan *press.Result, studies []*Study, on string) *Assessment {
	a := &Assessment{Format: AssessmentFormat, PlanDigest: plan.PlanDigest(), On: on, Studies: make([]Judged, len(studies))}
	for i, s := range studies {
		a.Studies[i] = judge(plan, s)
	}
	a.Proved = prove(plan, studies, a.Studies, on)
	return a
}

// judge holds a plan against one study.
func judge(plan *press.Result, s *Study) Judged {
	j := &judging{plan: plan, study: s}
	j.say(otherRam(plan, s), OtherRam)
	switch s.Kind {
	case LoadCell:
		j.loadCell()
	case Stiffness:
		j.stiffness()
	case Master:
		j.master()
	case Restart:
		j.restart()
	case Trial:
		j.trial()
	case Samples:
		j.samples()
	}
	j.say(s.PlanDigest != "" && !ofPlan(plan, s), OtherPlan)
	return j.done()
}

// otherRam tells whether plan and study name different rams.
func otherRam(plan *press.Result, s *Study) bool {
	name := strings.TrimSpace(plan.Plan.Ram.Name)
	given := strings.TrimSpace(s.Ram)
	return name != "" && given != "" && name != given
}

// ofPlan tells whether a study names the plan, by the beginning of its digest.
func ofPlan(plan *press.Result, s *Study) bool {
	return s.PlanDigest != "" && strings.HasPrefix(plan.PlanDigest(), strings.ToLower(s.PlanDigest))
}
