package press

import (
	"ramplan/press/model"
	"ramplan/press/strict"
)

// Format is the name of the plan format that this program reads and writes.
const Format = "ramplan.plan/1"

// A Plan is a complete and sound description of one press station. Absent
// entries stand at their defaults here; [Plan.Given] tells which were entered.
// Pointers are nil where an entry is absent and nothing stands in for it.
// Plans are made by [Decode] or [Draft.Check] and are not changed afterwards.
type Plan struct {
	Title      Title      `json:"title"`
	Quality    Quality    `json:"quality"`
	Controller Controller `json:"controller"`

	model.Input // what the model computes with

	doc *strict.Node // the document as it was given
}

// Title is the title block: the data fields of ISO 7200 that a plan carries
// itself; date and revision come from where the plan is kept.
type Title struct {
	Name           string `json:"name"`
	Number         string `json:"number"`
	PartNumber     string `json:"part_number"`
	PartRevision   string `json:"part_revision"`
	Characteristic string `json:"characteristic"`
	Owner          string `json:"owner"`
	PreparedBy     string `json:"prepared_by"`
	CheckedBy      string `json:"checked_by"`
	ApprovedBy     string `json:"approved_by"`
	Notes          string `json:"notes"`
}

// Given tells whether the document holds the entry at this path, such as
// "station.nest_drift", explicit defaults included.
func (p *Plan) Given(path string) bool { return p.doc.At(path) != nil }
