package words

import (
	"slices"

	"ramplan/press"
)

// MotionAlone says what a time lacks while nobody has said how long the controller
// needs, and how that is measured.
const MotionAlone = "motion alone: add what your controller needs from the seat to arrival, measured on 25 arrivals and on the shortest good sample"

// motionAlone tells whether the times of a plan are of the motion alone: the settle
// time was not given.
func motionAlone(r *press.Result) bool {
	return slices.ContainsFunc(r.Findings, func(f press.Finding) bool { return f.Code == press.TakenAsPerfect && f.Path == settlePath })
}

const settlePath = "motion.settle_time"

// aside puts a text behind what it is about; nothing where the settle time is known.
func aside(r *press.Result, before, text, after string) string {
	if !motionAlone(r) {
		return ""
	}
	return before + text + after
}

// WatchNote says what the watch time is made of, and that it leaves nothing over.
func (say Printer) WatchNote(r *press.Result) string {
	if TwoLooks(r) {
		s := "Both watch times run from leaving home at the plan's speeds, with every step before: that of the probe to the probe end, that of the push to the push end with the first look on the way, each plus settle and its confirm time. " +
			"They are the least to wait, with nothing over. A ram that slows down under load takes longer: time it on the station."
		return s + aside(r, " No settle time is given, so they are of the ", MotionAlone, ".")
	}
	s := "The watch time runs from leaving home to the end of the push at the plan's speeds, plus settle and confirm time: the least to wait, with nothing over. " +
		"A ram that slows down under load takes longer: time it on the station."
	return s + aside(r, " No settle time is given, so it is of the ", MotionAlone, ".")
}

// WatchBrief is the same in a few words, beside the figure.
func (say Printer) WatchBrief(r *press.Result) string {
	if motionAlone(r) {
		return "motion alone: add your controller's time from seat to arrival"
	}
	return "only then is an arrival missing"
}

// ByMotion is said behind a time that is of the motion alone; empty otherwise.
func (say Printer) ByMotion(r *press.Result) string { return aside(r, ", ", "by the motion alone", "") }
