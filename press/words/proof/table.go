package proof

import (
	"fmt"
	"strconv"
	"time"
)

// RowsShown says which rows of a long study a page shows.
func (say Words) RowsShown(first, last, total int) string {
	return fmt.Sprintf("Rows %d to %d of %d", first, last, total)
}

// RowCount says how many rows a study has.
func (say Words) RowCount(n int) string { return counted(n, "row", "rows") }

// FaultyRows says how many rows could not be read.
func (say Words) FaultyRows(n int) string {
	if n == 1 {
		return "1 row cannot be read yet; what can be read is taken."
	}
	return strconv.Itoa(n) + " rows cannot be read yet; what can be read is taken."
}

// RowsStillEmpty says how many rows of a study are to be filled in.
func (say Words) RowsStillEmpty(n int) string {
	return counted(n, "row is", "rows are") + " still empty: to be filled in, or removed, before the study is signed."
}

// CellSpoken names a cell for who does not see the heads of its row and column.
func (say Words) CellSpoken(column, row string) string { return column + ", row " + row }

// Pasted says what was read into a table.
func (say Words) Pasted(rows, faulty int) string {
	text := counted(rows, "row was", "rows were") + " read in."
	if faulty > 0 {
		text += " " + say.FaultyRows(faulty)
	}
	return text
}

// TypedAsOf says when what was typed was kept.
func (say Words) TypedAsOf(at time.Time) string {
	return "Kept as typed, " + say.When(at) + "; not signed"
}

// SignedAsOf says who signed a study, and when.
func (say Words) SignedAsOf(who string, at time.Time) string {
	return "Signed by " + who + ", " + say.When(at)
}

// NotKept says why nothing was kept.
func (say Words) NotKept(why string) string { return "Not saved. " + why }

// PostedAsOf says that a program sent a study.
func (say Words) PostedAsOf(at time.Time) string {
	return "Sent by a program, " + say.When(at) + "; not signed"
}

func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// ReadyToSign says what a signature does, or what stands in its way.
func (say Words) ReadyToSign(rows, faults, empty int) string {
	switch {
	case empty > 0:
		return "Whoever signs answers for the study. " + say.RowsStillEmpty(empty)
	case faults > 0:
		return "Whoever signs answers for the study. What cannot be read has to be mended first."
	case rows == 0:
		return "Whoever signs answers for the study. There are no rows yet."
	}
	return "Whoever signs answers for the study; from then on it counts and never changes. A correction is a new study that names this one."
}

// SignRefused says that a study was not signed.
func (say Words) SignRefused(faults, empty int) string {
	if empty > 0 {
		return "Not signed: " + say.RowsStillEmpty(empty)
	}
	return "Not signed: " + counted(faults, "entry", "entries") + " cannot be read or missing. Each is marked where it stands."
}

// NotComeYet says that a study cannot have been taken on a day that is still to come.
func (say Words) NotComeYet(day string) string {
	return "Not signed: it was taken on " + day + ", says the study, and that day has not come yet."
}

// StudySigned says that a study was signed.
func (say Words) StudySigned() string { return "Signed. It counts from now on." }

// StudyTooLarge says how much a study can hold.
func (say Words) StudyTooLarge() string {
	return "A study holds 10,000 rows and 4 MiB of text at most; nothing was changed."
}

// NothingTyped says that a study says nothing yet.
func (say Words) NothingTyped() string { return "Nothing yet: there are no rows that can be read." }

// NoStudy says that there is no such study.
func (say Words) NoStudy() string { return "There is no such study of this plan." }

// CannotTell says that there is no plan to hold studies against.
func (say Words) CannotTell() string {
	return "The draft is no sound plan, and none was issued: there is nothing yet to hold a study against. What is typed is kept."
}

// AgainstRevision names what studies are held against.
func (say Words) AgainstRevision(letter string) string {
	if letter == "" {
		return "held against the draft"
	}
	return "held against revision " + letter
}

// VerdictSaid is the verdict of a study in a few words.
func (say Words) VerdictSaid(verdict string) string {
	switch verdict {
	case "pass":
		return "It does not refute the plan"
	case "fail":
		return "It refutes the plan"
	case "open":
		return "Open: too little, or nothing can be said"
	}
	return ""
}

// NothingToReadIn says that there was no table.
func (say Words) NothingToReadIn() string {
	return "There is no table to read: choose a file, or paste its text."
}

// PastedText names a text that is no file.
func (say Words) PastedText() string { return "text" }

// EventNeedsWho asks who says that something happened.
func (say Words) EventNeedsWho() string { return "Who says so: a name or number is needed." }

// OtherKind says that a table is of another kind than the study that it was read into.
func (say Words) OtherKind(found, wanted string) string {
	return "This is a table of the kind " + say.KindName(found) + "; this study is of the kind " + say.KindName(wanted) + ". Read it in on the page before this one, as a study of its own."
}

// HoldAgainst leads to the same study held against another state of the plan.
func (say Words) HoldAgainst(letter string) string {
	if letter == "" {
		return "Hold it against the draft"
	}
	return "Hold it against revision " + letter
}

// OnAPhone leads to the pushes one by one.
func (say Words) OnAPhone() string { return "Fill in one by one, as on a phone" }

// AsFile leads to a study as a file of a format.
func (say Words) AsFile(format string) string { return "As " + format }

// Made says between which heights a sample is made.
func (say Words) Made(bounds string) string {
	if bounds == "" {
		return ""
	}
	return "made " + bounds
}
