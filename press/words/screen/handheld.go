package screen

func (say Words) PlanDigest() string { return "Plan digest" }

func (say Words) FileMade() string { return "File made" }

func (say Words) DrillForHandheld() string { return "Drill for a phone or tablet" }

func (say Words) DrillOfTitle(name string) string { return "Drill of " + name + " · ramplan" }

func (say Words) DoNotJudgeLoud(toUpper string) string {
	return toUpper + ": do not judge parts by this page"
}
