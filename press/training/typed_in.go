package training

import "strings"

// typedIn begins the sitting of a record that was typed in from a code: nobody
// here asked the questions. The code follows, so that the same code is kept
// once.
const typedIn = "code: "

// PracticeExam is the exam of a record of a round of practice, which is none.
const PracticeExam = "practice"

// TypedInSitting is the sitting of a record that is typed in from a code.
func TypedInSitting(code string) string { return typedIn + code }

// TypedIn gives the code that a record was typed in from; empty for one of an exam that
// was taken here.
func (t *Record) TypedIn() string {
	code, typed := strings.CutPrefix(t.Sitting, typedIn)
	if !typed {
		return ""
	}
	return code
}
