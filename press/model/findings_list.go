package model

import "strings"

// say adds a finding of the severity that its code has.
func (w *work) say(code, path string, f any) {
	rule, known := RuleOf(code)
	if !known {
		panic("model: the finding " + code + " has no rule")
	}
	w.sayAs(rule.Severity, code, path, f)
}

// sayAs adds a finding of a code that can have either of two severities.
func (w *work) sayAs(s Severity, code, path string, f any) {
	w.r.Findings = append(w.r.Findings, Finding{Severity: s, Code: code, Path: path, Row: w.rowName(path), Figures: f})
}

// rowName is what the row of the parts is called that a path names or lies in.
func (w *work) rowName(path string) string {
	if !strings.HasPrefix(path, "parts[") {
		return ""
	}
	for i, row := range w.p.Parts {
		if at := rowPath(i); path == at || strings.HasPrefix(path, at+".") {
			return strings.TrimSpace(row.Name)
		}
	}
	return ""
}

// findings lists everything that there is to say about the plan, each thing
// whatever else was said: blockers first, then in the order of model section 12.
func (w *work) findings() {
	w.r.Findings = []Finding{}
	w.blockForce()
	w.blockReadings()
	w.blockMotion()
	w.blockJoint()
	w.blockProbe()
	w.blockSteps()
	w.overlapWider(Blocker)
	w.overlapWider(Caution)
	w.cautionSetUp()
	w.cautionRisk()
	w.cautionRule()
	w.cautionImpact()
	w.cautionProbe()
	w.cautionSteps()
	w.notes()
}
