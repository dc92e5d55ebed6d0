package simulate

// Truth is what a part is, whatever the signals say.
type Truth int

// Truths in the order in which the first that applies is taken. A part that is met in the
// approach has the truth that it would have had.
const (
	Unseated   Truth = iota // stalled before its seat
	Long                    // stands taller than the drawing allows
	Short                   // less tall
	Loose                   // seated right, with less grip than is required with its safety
	Conforming              // none of these
)

// Truths is how many there are.
const Truths = 5

// Seen is what the station says of a part.
type Seen int

// What is seen: arrival first, then zone.
const (
	OnOn Seen = iota
	OnOff
	OffOn
	OffOff
	Early // met before the push begins
)

// Verdicts is how many there are.
const Verdicts = 5

// Share is one of the named shares, of all parts that are made.
type Share int

// Named shares.
const (
	UnseatedShare Share = iota
	LongShare
	ShortShare
	LooseShare
	ConformingShare
	Accepted            // both signals on
	EarlyContact        // met before the push begins
	FalseAccept         // accepted and not conforming
	FalseAcceptHeight   // of it, too tall or too low
	FalseAcceptUnseated // of it, not seated
	FalseAcceptLoose    // of it, loose
	FalseReject         // conforming, neither accepted nor met early
	LooseFails          // holds less than is required, whatever its height or seat: no safety, friction as drawn
)

// Shares is how many there are.
const Shares = 13

// holds tells whether a named share counts a cell of the matrix.
func (s Share) holds(truth Truth, seen Seen) bool {
	wrongHeight := truth == Long || truth == Short
	switch s {
	case Accepted:
		return seen == OnOn
	case EarlyContact:
		return seen == Early
	case FalseAccept:
		return seen == OnOn && truth != Conforming
	case FalseAcceptHeight:
		return seen == OnOn && wrongHeight
	case FalseAcceptUnseated:
		return seen == OnOn && truth == Unseated
	case FalseAcceptLoose:
		return seen == OnOn && truth == Loose
	case FalseReject:
		return truth == Conforming && seen != OnOn && seen != Early
	case LooseFails: // cuts through cells
		return false
	}
	return truth == Truth(s)
}
