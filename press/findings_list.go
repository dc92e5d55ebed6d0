package press

// figures of a finding, by name.
type figures = map[string]float64

// say adds a finding.
func (w *work) say(s Severity, code, path string, f figures) {
	w.r.Findings = append(w.r.Findings, Finding{Severity: s, Code: code, Path: path, Figures: f})
}

// findings lists everything that there is to say about the plan, each thing
// whatever else was said: blockers first, then in the order of model section 12.
func (w *work) findings() {
	w.r.Findings = []Finding{}
	w.blockForce()
	w.blockReadings()
	w.blockMotion()
	w.blockJoint()
	w.overlapWider(Blocker)
	w.overlapWider(Caution)
	w.cautionSetUp()
	w.cautionRisk()
	w.cautionImpact()
	w.notes()
}
