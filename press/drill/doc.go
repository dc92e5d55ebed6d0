// Package drill makes exercises about one plan's two lamps, and their right
// answers, from the plan and its result: nothing here is true of all stations.
//
// A [Drill] is made once for a plan. Its items have stable keys, such as
// "read/on-off"; the same key and seed always give the same exercise, so that a
// page need keep nothing but keys, a seed and what was answered. Where a plan's
// lamps mean two things, both answers are right; the reason that a wrong answer
// gets is worked out from the plan's own positions.
package drill
