package lesson

// A Grave is what an answer may say that nobody may do at the station, whatever else is
// known: its key, which nobody reads.
type Grave string

// What is grave.
const (
	GravePass   Grave = "pass"
	GraveUnseen Grave = "unseen"
	GraveAgain  Grave = "again"
	GraveStack  Grave = "stack"
	GraveGoOn   Grave = "go-on"
	GraveRow    Grave = "row"
	GraveChange Grave = "change"
	GraveHand   Grave = "hand"
	GraveGuard  Grave = "guard"
	GraveOther  Grave = "other"
	GraveRefuse Grave = "refuse"  // the mirror of the first: it would be passed on
	GraveAsGood Grave = "as-good" // and of it, from the part to the lamps
)

// graves says each of them. An answer is no deed: each follows upon "answered that".
var graves = map[Grave]string{
	GravePass:   "a refused part may be passed on",
	GraveUnseen: "a part may be passed on before tested lamps or a measurement have judged it",
	GraveAgain:  "a part may be pressed again that must not be",
	GraveStack:  "the next insert may be put on a part that is still in the nest",
	GraveGoOn:   "work may go on after a fault",
	GraveRow:    "work may go on after several refused parts in a row",
	GraveChange: "the setting or the zone may be changed in answer to the lamps",
	GraveHand:   "a hand may be put into the work space",
	GraveGuard:  "work may go on with a guard bridged or a shield open",
	GraveOther:  "two-hand control may protect somebody else",
	GraveRefuse: "lamps that refuse may be those of a good part",
	GraveAsGood: "the lamps of a good part may be those of a refused one",
}

// Grave says what of an answer is grave; empty for nothing.
func (say Words) Grave(g Grave) string { return graves[g] }

// Answered says what was answered, never as a deed; empty for an answer that is not
// grave.
func (say Words) Answered(g Grave) string {
	if g == "" {
		return ""
	}
	return say.AnsweredThat(say.Grave(g))
}

// GraveIntro stands before what fails an exam alone.
func (say Words) GraveIntro() string {
	return "Whatever the score, you fail at once if you say that:"
}

func (say Words) AnsweredThat(grave string) string { return "answered that " + grave }
