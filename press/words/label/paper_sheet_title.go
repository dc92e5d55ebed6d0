package label

func (say Words) CreatedBy() string { return "Created by" }

func (say Words) CheckedBy() string { return "Checked by" }

func (say Words) ApprovedBy() string { return "Approved by" }

func (say Words) DateOfIssue() string { return "Date of issue" }

func (say Words) PlanDigest() string { return "Plan digest" }

func (say Words) LegalOwner() string { return "Legal owner" }

func (say Words) DocumentType() string { return "Document type" }

func (say Words) PressFitPlan() string { return "Press-fit plan" }

func (say Words) PartNumber() string { return "Part number" }

func (say Words) PartRevision() string { return "Part revision" }

func (say Words) IdentificationNumber() string { return "Identification number" }

func (say Words) DrawnNotIssued() string { return "Drawn, not issued" }

func (say Words) NotToBeUsed() string { return "Not to be used any more:" }

func (say Words) SupersededRevision() string { return "Superseded revision" }

// RevisionProved is the label of the revision where it is known whether its station is
// proved.
func (say Words) RevisionProved(is bool) string {
	if is {
		return "Proved revision"
	}
	return "Unproved revision"
}

func (say Words) ReasonHead() string { return "Reason for the change:" }

func (say Words) DespiteBlockersHead(second string) string {
	return "Issued despite blockers, second name " + second + ":"
}
