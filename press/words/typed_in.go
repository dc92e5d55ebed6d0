package words

// TypedIn marks a record that somebody typed in from a code.
const TypedIn = "typed in from a code, not watched by the server"

// GraveByCode stands where a code says that an answer failed an exam alone: it does not
// say which.
const GraveByCode = "answered what fails an exam alone"

// NoMissesInCode stands where a record would say what was missed.
const NoMissesInCode = "A code does not say what was missed."

// TypedOutcome says what an exam came to that was typed in from a code, or that it was
// practice.
func (say Printer) TypedOutcome(exam string, o Outcome) string {
	if exam == practice {
		return "Practised"
	}
	return o.String() + ", by a code"
}

// practice is the exam of a record of a round of practice.
const practice = "practice"

// What is said of a code that is not taken.
const (
	NoCode        = "This is no record code. Type it as it stands on the page of the phone or tablet, with the name behind it."
	CodeTyped     = "Something in this code or in the name is mistyped: the check figure does not fit."
	CodeSense     = "This code says what cannot be, such as more right answers than questions."
	CodeOther     = "This code is of another plan, or of a state of this one that is not kept here: its revision and digest fit none."
	CodeFromAfter = "This code is of a day that is still to come. Set the clock of the phone or tablet, and take it again."
)
