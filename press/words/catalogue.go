package words

import "ramplan/press"

// CatalogueLead says what the fault catalogue tells, and what it leaves out where
// many parts never come to the push.
func CatalogueLead(r *press.Result) string {
	s := "Should one of these come to the station: where the ram comes to rest, what the two signals say and when, and how surely that is judged rightly: good said of a good part, something else of all others."
	if ppm := r.Risk.EarlyContactPPM; ppm >= manyPPM {
		s += " But " + PPM(ppm) + " of all parts are met in the approach, where nothing is judged and no push limit is in force: the rows are of parts that are not."
	}
	return s
}
