package proving

import "ramplan/press"

// AssessmentFormat names the document of an assessment.
const AssessmentFormat = "ramplan.assessment/1"

// An Answer of a check or a study.
type Answer string

// What a check says of the plan, and the verdict of a study.
const (
	Pass Answer = "pass" // not refuted
	Fail Answer = "fail" // the data refute the plan
	Open Answer = "open" // too little, or nothing can be said
)

// An Assessment is a plan held against studies of its station. What cannot be computed is nil.
type Assessment struct {
	Format     string   `json:"format"`
	PlanDigest string   `json:"plan_digest"`
	On         string   `json:"on"` // the day for which Proved is asked
	Studies    []Judged `json:"studies"`
	Proved     Proved   `json:"proved"`
}

// A Judged study: its checks decide, its findings tell.
type Judged struct {
	Kind        string    `json:"kind"`
	StudyDigest string    `json:"study_digest"`
	Verdict     Answer    `json:"verdict"` // empty of an event, null in JSON
	Checks      []Check   `json:"checks"`
	Findings    []Finding `json:"findings"` // cautions first
	Result      any       `json:"result"`   // a pointer to the result of the kind; nil of an event, and where there is none
	Adopt       *Adopt    `json:"adopt"`
}

// A Check is one question and its answer.
type Check struct {
	Name    string `json:"name"`
	Outcome Answer `json:"outcome"`
}

// A Finding is one thing that a study has to say. Its sentence is made by package
// press/words/proof from the finding and the study that it stands in.
type Finding struct {
	Severity press.Severity `json:"severity"`
	Code     string         `json:"code"`
	Message  string         `json:"message"`
	Path     string         `json:"path"` // the entry of the plan or of the study that it is about
}

// Adopt is what a study offers as new entries of the plan; a field is nil where it offers none.
type Adopt struct {
	CurvePoints        [][2]float64 `json:"ram.curve.points,omitempty"`              // %, N
	ForceTolerance     *float64     `json:"ram.force_tolerance,omitempty"`           // ± %
	ForceScatter       *float64     `json:"ram.force_scatter,omitempty"`             // ± N
	Repeatability      *float64     `json:"ram.repeatability,omitempty"`             // ± mm
	Nest               *float64     `json:"station.nest,omitempty"`                  // mm
	Stiffness          *float64     `json:"station.stiffness,omitempty"`             // N/mm
	StiffnessTolerance *float64     `json:"station.stiffness_tolerance,omitempty"`   // ± %
	Reference          *float64     `json:"station.reference_uncertainty,omitempty"` // ± mm
}
