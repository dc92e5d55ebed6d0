package drill

import "slices"

// What an answer may say that nobody may do at the station, whatever else is known. An
// answer is no deed: each of these follows upon "answered that".
const (
	gravePass   = "a refused part may be passed on"
	graveUnseen = "a part may be passed on before tested lamps or a measurement have judged it"
	graveAgain  = "a part may be pressed again that must not be"
	graveStack  = "the next insert may be put on a part that is still in the nest"
	graveGoOn   = "work may go on after a fault"
	graveRow    = "work may go on after several refused parts in a row"
	graveChange = "the setting or the zone may be changed in answer to the lamps"
	graveHand   = "a hand may be put into the work space"
	graveGuard  = "work may go on with a guard bridged or a shield open"
	graveOther  = "two-hand control may protect somebody else"
	graveRefuse = "lamps that refuse may be those of a good part"          // the mirror of the first: it would be passed on
	graveAsGood = "the lamps of a good part may be those of a refused one" // and of it, from the part to the lamps
)

// graveOf lists what is grave in the exam of a role, in the order of its rule.
func graveOf(role Role) []string {
	all := []string{gravePass, graveUnseen, graveRefuse, graveAsGood, graveAgain, graveStack, graveGoOn, graveRow, graveChange, graveHand, graveGuard, graveOther}
	if role == Setter {
		all = slices.DeleteFunc(all, func(s string) bool {
			return slices.Contains([]string{graveUnseen, graveRefuse, graveAsGood, graveStack}, s)
		})
	}
	return all
}

// GraveIntro stands before what fails an exam alone.
const GraveIntro = "Whatever the score, you fail at once if you say that:"

// GraveRule says before an exam what fails it alone, a line each, after [GraveIntro].
func GraveRule(role Role) []string { return graveOf(role) }

// Answered says what was answered, never as a deed; empty for an answer that is not
// grave.
func Answered(grave string) string {
	if grave == "" {
		return ""
	}
	return "answered that " + grave
}
