package drafts

import (
	"strconv"
	"strings"
)

// What was done to make a state. A state that was typed names the one path that
// it changed, or nothing where it changed more.
const (
	DidMake    = "made"
	DidOpen    = "opened a file"
	DidCopy    = "copied"
	DidReplace = "replaced"
	DidChoose  = "chose between two windows"
	DidRam     = "took a ram from the shelf"
	DidTyped   = "typed"
)

const didRestore = "restored "

// DidRestore is what was done where an earlier state was made the draft.
func DidRestore(state int64) string { return didRestore + strconv.FormatInt(state, 10) }

// Restored gives the state that was made the draft; false where something else was
// done.
func Restored(did string) (state string, ok bool) { return strings.CutPrefix(did, didRestore) }

// DidAgain is what was done where an issued revision was made the draft.
func DidAgain(letter string) string { return "started again from revision " + letter }

// TypedIn tells whether the text of one field was typed.
func TypedIn(did string) bool { return did != DidTyped && strings.Contains(did, ".") }

// Typed tells whether something was typed, in one field or in several.
func Typed(did string) bool { return did == DidTyped || TypedIn(did) || strings.Contains(did, "[") }
