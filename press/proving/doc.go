// Package proving holds a plan against what its station says: studies, which are pushes
// that were typed, pasted or logged, and the assessment of them, which tells where they
// refute the plan, what they offer as new entries, and whether the station is proved.
//
// A [Study] is read from JSON ([Decode]) or from a table of text ([ReadCSV]); [Assess]
// judges the studies of a plan together. The statistics are those of package study, which
// knows neither plans nor documents. Lengths are in mm, forces in N, times in s, settings in
// %, speeds in mm/s.
package proving
