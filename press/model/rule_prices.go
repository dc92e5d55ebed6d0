package model

// A RuleWindow is the window that one of the rules would give a plan, with what it lets
// pass. What does not exist is nil.
type RuleWindow struct {
	Rule         string
	Chosen       bool // the rule of the plan
	ByHand       bool // both edges are set by hand: no rule moves anything
	Setting      float64
	ZoneStart    *float64 // mm
	PushEnd      *float64 // mm
	Width        *float64 // mm, of the accepted readings
	ConsumerPPM  *float64
	ProducerPPM  *float64
	Worst        *WorstShares // on the worst day; nil where the others are
	TargetMissed bool         // by the rule of the targets
}

// RuleWindows sets the windows of all rules side by side. They are no part of the
// evaluation, and worked out when they are asked for first, from any goroutine.
func (r *Outcome) RuleWindows() []RuleWindow {
	if r.work == nil || !r.Pressable() {
		return nil
	}
	w := r.inside()
	w.onRules.Do(func() { w.rules = w.p.ruleWindows() })
	return w.rules
}

func (in *Input) ruleWindows() []RuleWindow {
	var out []RuleWindow
	for _, rule := range []string{ByGuard, ByTarget, ByProcess} {
		other := *in
		other.Window.Rule = rule
		w := other.placed()
		_, risk := other.risks(&w.parts, &w.seated, &w.zone)
		row := RuleWindow{
			Rule: rule, Chosen: rule == in.Window.Rule || rule == ByGuard && in.Window.Rule == "",
			ByHand:  in.Window.ZoneStart != nil && in.Window.PushStroke != nil,
			Setting: w.r.Force.Setting, ZoneStart: w.zone.z1, PushEnd: w.zone.e,
			ConsumerPPM: risk.ConsumerPPM, ProducerPPM: risk.ProducerPPM,
		}
		if w.zone.overlap {
			row.Width = ptr(w.zone.last - w.zone.first)
		}
		if risk.ConsumerPPM != nil {
			row.Worst = ptr(w.onWorstDay())
		}
		if t := w.r.Window.Target; t != nil {
			row.TargetMissed = !t.Met
		}
		out = append(out, row)
	}
	return out
}

// placed works out an input as far as its window.
func (in *Input) placed() *work {
	w := &work{p: in, r: &Outcome{}}
	w.parts, w.r.Stack = stackUp(in.Parts, in.Station.Nest)
	w.joint, _ = in.Joint.pressIn(w.parts.travel)
	w.window()
	return w
}
