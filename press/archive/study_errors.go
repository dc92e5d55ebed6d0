package archive

// A StaleStudy was changed from an older version than the one that stands. Nothing of it was
// changed.
type StaleStudy struct {
	From   int64 // the version that the change started from
	Stands KeptStudy
}

// Text is a sentence for people.
func (e *StaleStudy) Text() string  { return say.StudyChangedElsewhere() }
func (e *StaleStudy) Error() string { return "archive: " + e.Text() }

// A StudyRefused says why a study is not kept or changed.
type StudyRefused int

// Reasons why a study is not kept or changed.
const (
	_            StudyRefused = iota
	ErrSigned                 // a signed study never changes
	ErrPosted                 // what a program sent is not typed over
	ErrCorrected              // another study corrects it already
	ErrOtherKind              // what it names is of another kind or plan, or not signed
	ErrTooLarge               // more rows or text than a study may have
	ErrKind                   // no such kind, or another than it was begun as
	ErrNoSigner               // a signature without a name
	ErrOutcome                // a shift check that neither passed nor failed
)

// Text is a sentence for people.
func (e StudyRefused) Text() string {
	switch e {
	case ErrSigned:
		return say.StudySigned()
	case ErrPosted:
		return say.StudyPosted()
	case ErrCorrected:
		return say.StudyCorrected()
	case ErrOtherKind:
		return say.StudyOtherKind()
	case ErrTooLarge:
		return say.StudyTooLarge()
	case ErrKind:
		return say.StudyNoKind()
	case ErrNoSigner:
		return say.StudyNoSigner()
	}
	return say.CheckNoOutcome()
}

func (e StudyRefused) Error() string { return "archive: " + e.Text() }
