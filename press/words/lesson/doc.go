// Package lesson holds what the drill says: what its exercises ask, the answers that can be
// chosen, and why they are right or wrong. Which of them there are, which is right and how
// grave a wrong one is, is decided in package drill; here each is a sentence.
//
// A name says of which exercise and which choice a sentence is: NobodyLookedHold is the
// choice "hold" of the exercise about a part at which nobody looked, and NobodyLookedHoldWhy
// the reason that follows it.
package lesson

import (
	"ramplan/press"
	"ramplan/press/words"
)

// Words writes about one plan's drill, for one reader.
type Words struct{ words.Positions }

// Of makes them for a plan.
func Of(say words.Printer, p *press.Plan) Words { return Words{say.Positions(p)} }

// Anywhere makes the words that are of no plan.
func Anywhere(say words.Printer) Words { return Words{words.Positions{Printer: say}} }
