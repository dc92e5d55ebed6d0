package archive

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"syscall"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"

	"ramplan/press"
)

// ErrNotFound says that there is no such plan, state or revision.
var ErrNotFound = errors.New("archive: there is no such entry")

// A Stale change started from an older version than the one that stands. It
// changed nothing.
type Stale struct {
	From int64 // the version that the change started from
	Head Head  // what stands
}

func (e *Stale) Error() string {
	return fmt.Sprintf("archive: the change started from version %d; version %d stands", e.From, e.Head.Version)
}

// Damaged says that a stored document is not what was stored.
type Damaged struct {
	Plan  ID     // 0 for a ram
	What  string // such as "state 12" or "revision B"
	Good  *Head  // the newest state before it that is whole, with the version to restore it from; nil without one
	State int64  // the number of that state
}

func (e *Damaged) Error() string {
	if e.Plan == 0 {
		return "archive: " + e.What + " is damaged: it does not match its digest"
	}
	return fmt.Sprintf("archive: %s of plan %d is damaged: it does not match its digest", e.What, e.Plan)
}

// NotTaken says that an issued revision is what was issued, but that the rules of
// today ask for more than those under which it was.
type NotTaken struct {
	Plan   ID
	Letter string
	Faults press.Problems // of the plan by today's rules
}

func (e *NotTaken) Error() string {
	return fmt.Sprintf("archive: revision %s of plan %d is what was issued, but today's rules do not take it: %s", e.Letter, e.Plan, e.Faults[0])
}

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

// A Failure is a disk, folder or file that does not let the archive work. Its
// text is a sentence for people.
type Failure struct {
	Text string
	Err  error
}

func (e *Failure) Error() string { return "archive: " + e.Text }
func (e *Failure) Unwrap() error { return e.Err }

// explain makes a Failure of what the system says, where it is known what it
// means.
func explain(err error) error {
	if err == nil {
		return nil
	}
	var failure *Failure
	if errors.As(err, &failure) {
		return err
	}
	if text := sentence(err); text != "" {
		return &Failure{text, err}
	}
	return err
}

// code gives the kind of error that the database met; 0 when it met none.
func code(err error) int {
	var e *sqlite.Error
	if errors.As(err, &e) {
		return e.Code() & 0xff
	}
	return 0
}

func sentence(err error) string {
	switch code(err) {
	case lib.SQLITE_FULL:
		return say.DiskFull()
	case lib.SQLITE_READONLY:
		return say.ArchiveReadOnly()
	case lib.SQLITE_BUSY, lib.SQLITE_LOCKED:
		return say.HeldByAnother()
	case lib.SQLITE_CANTOPEN:
		return say.CannotOpen()
	case lib.SQLITE_IOERR:
		return say.DiskFails()
	case lib.SQLITE_NOTADB:
		return say.NoArchiveOrDamaged()
	case lib.SQLITE_CORRUPT:
		return say.Damaged()
	}
	switch {
	case errors.Is(err, syscall.ENOTDIR):
		return say.CannotMakeFolder()
	case errors.Is(err, syscall.ENOSPC):
		return say.DiskFull()
	case errors.Is(err, syscall.EROFS):
		return say.ArchiveReadOnly()
	case errors.Is(err, fs.ErrNotExist):
		return say.ArchiveRemoved()
	case errors.Is(err, fs.ErrPermission), errors.Is(err, os.ErrPermission):
		return say.MayNotWriteToFolder()
	}
	return ""
}
