package drill

import "slices"

// What an answer may say that nobody may do at the station, whatever else is known. An
// answer is no deed: each of these follows upon "answered that".
const (
	gravePass   = "a refused part may be passed on"
	graveAgain  = "a part may be pressed again that must not be"
	graveGoOn   = "work may go on after a fault"
	graveRow    = "work may go on after several refused parts in a row"
	graveChange = "the setting or the zone may be changed in answer to the lamps"
	graveHand   = "a hand may be put into the work space"
	graveRefuse = "a good part shows lamps that refuse"          // the mirror of the first
	graveAsGood = "a refused part shows the lamps of a good one" // and of it, from the part to the lamps
)

// graveOf lists what is grave in the exam of a role, in the order of its rule.
func graveOf(role Role) []string {
	switch role {
	case Technician:
		return []string{gravePass, graveRefuse, graveAsGood, graveAgain, graveGoOn, graveRow, graveChange, graveHand}
	case Setter:
		return []string{gravePass, graveAgain, graveGoOn, graveRow, graveChange}
	}
	return []string{gravePass, graveRefuse, graveAsGood, graveAgain, graveGoOn, graveRow, graveChange, graveHand}
}

// GraveRule says before an exam what fails it alone: every one of them, in this order.
func GraveRule(role Role) string {
	all := slices.Clone(graveOf(role))
	s := "Whatever the score, nobody passes who answers that " + all[0]
	for _, one := range all[1 : len(all)-1] {
		s += ", that " + one
	}
	return s + ", or that " + all[len(all)-1] + ". One such answer fails alone."
}

// Answered says what was answered, never as a deed; empty for an answer that is not
// grave.
func Answered(grave string) string {
	if grave == "" {
		return ""
	}
	return "answered that " + grave
}
