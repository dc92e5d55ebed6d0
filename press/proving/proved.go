package proving

import (
	"slices"
	"time"

	"ramplan/press"
)

// Needed are the kinds of study without which no station is proved.
var Needed = []string{LoadCell, Stiffness, Master, Samples}

// beside are the kinds that are not needed; a failed one stands against the station.
var beside = []string{Restart, Trial}

// Lost are the kinds of study that an event withdraws.
func Lost(event string) []string {
	switch event {
	case RamExchanged, ControllerExchanged, Crash:
		return []string{LoadCell, Stiffness, Master, Restart, Trial, Samples}
	case NestExchanged, ToolExchanged, Moved:
		return []string{Stiffness, Master, Restart, Trial, Samples}
	case SetpointsChanged:
		return []string{Trial, Samples}
	}
	return nil
}

// prove tells whether the station is proved on a day.
func prove(plan *press.Result, studies []*Study, judged []Judged, on string) Proved {
	all := shelf{plan: plan, studies: studies, judged: judged, on: theDay(on).Format(time.DateOnly)}
	p := Proved{State: StateNotProved, PlanBlocked: plan.Blocked(), Kinds: map[string]KindState{}}
	for _, kind := range slices.Concat(Needed, beside) {
		p.Kinds[kind] = all.state(kind)
	}
	p.Until = all.until(p.Kinds)
	p.AsFound = all.asFound(p.Kinds)
	is := func(kinds []string, state string) bool {
		return slices.ContainsFunc(kinds, func(k string) bool { return p.Kinds[k].State == state })
	}
	pass := !slices.ContainsFunc(Needed, func(k string) bool { return p.Kinds[k].State != string(Pass) }) && !is(beside, string(Fail))
	switch {
	case p.PlanBlocked:
	case pass && p.AsFound.kept():
		p.State = StateProved
	case pass:
	case is(Needed, StateWithdrawn):
		p.State = StateWithdrawn
	case is(Needed, StateExpired):
		p.State = StateExpired
	}
	return p
}

// shelf is everything that is known of a station on a day.
type shelf struct {
	plan    *press.Result
	studies []*Study
	judged  []Judged
	on      string
}

// latest gives the study of a kind that counts: the latest by its moment, of equal ones the
// later given, none after the day asked; −1 where there is none.
func (a *shelf) latest(kind string) int {
	at := -1
	for i, s := range a.studies {
		if s.Kind != kind || dayOf(s.TakenAt) > a.on {
			continue
		}
		if at >= 0 {
			was, _ := moments(a.studies[at].TakenAt)
			if is, _ := moments(s.TakenAt); is.Before(was) {
				continue
			}
		}
		at = i
	}
	return at
}

// state of a kind, by the study of it that counts.
func (a *shelf) state(kind string) KindState {
	at := a.latest(kind)
	if at < 0 {
		return KindState{State: StateMissing}
	}
	s := a.studies[at]
	other := s.PlanDigest != "" && !ofPlan(a.plan, s)
	state := string(a.judged[at].Verdict)
	switch {
	case kind == Trial && other, kind == Samples && (other || s.PlanDigest == ""):
		state = StateOtherPlan
	case otherRam(a.plan, s):
		state = StateOtherRam
	case a.withdrawnBy(s) >= 0:
		state = StateWithdrawn
	case a.on > keepsUntil(s):
		state = StateExpired
	}
	return KindState{State: state, Study: &at}
}

// withdrawnBy gives the place of the last event that withdraws a study, −1 where none does.
// A study counts at its first moment, an event at its last: doubt counts against.
func (a *shelf) withdrawnBy(s *Study) int {
	at := -1
	first, _ := moments(s.TakenAt)
	for i, e := range a.studies {
		if e.Kind != Event || dayOf(e.TakenAt) > a.on || !slices.Contains(Lost(e.Event), s.Kind) {
			continue
		}
		if _, last := moments(e.TakenAt); !last.Before(first) {
			at = i
		}
	}
	return at
}

// until is the last day on which none of the four is too old, whatever they say; nil while
// one is missing.
func (a *shelf) until(kinds map[string]KindState) *string {
	var first *string
	for _, kind := range Needed {
		at := kinds[kind].Study
		if at == nil {
			return nil
		}
		if u := keepsUntil(a.studies[*at]); first == nil || u < *first {
			first = &u
		}
	}
	return first
}
