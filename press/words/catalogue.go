package words

import "ramplan/press"

// JudgedRightly says what is right of each row of the fault catalogue.
const JudgedRightly = "How often, over the errors of a reading, the two signals say what they should: both on for the nominal part, the accepted rows, a setting one step off and your own rows marked good; " +
	"not both on for every other row. What is met in the approach counts as 0. A worn nest is no fault of the part: its row says instead how often the lamps and the check with the master find it."

// CatalogueLead says what the fault catalogue tells, and what it leaves out where
// many parts never come to the push.
func (say Printer) CatalogueLead(r *press.Result) string {
	s := "Should one of these come to the station: where the ram comes to rest, what the two signals say and when, and how surely that is judged rightly. Judged rightly: " + lowerFirst(JudgedRightly)
	if TwoLooks(r) {
		s += " A probe comes first: " + lowerFirst(GoOnOnly) + " What it refuses has the lamps, the reading and the time of this first look; judged rightly is of both looks together. " + say.ZoneInProbe(r.Plan, r)
	}
	s += aside(r, " The times are of the ", MotionAlone, ".")
	if ppm := r.Risk.EarlyContactPPM; ppm >= manyPPM {
		s += " But " + say.PPM(ppm) + " of all parts are met in the approach, where nothing is judged and no push limit is in force: the rows are of parts that are not."
	}
	return s
}
