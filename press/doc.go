// Package press is the vocabulary of a press station's plan, and the one place
// where a plan is read, checked and handed to the model.
//
// Typed text becomes a [Draft], a draft that is complete and sound becomes a
// [Plan], and [Evaluate] turns a plan into a [Result]. What is wrong with an
// entry is a [Problem] and carries the field's path; what is wrong with the
// station that the plan describes is a [Finding] inside the result. Neither
// holds a sentence made for one page only: wording lives in press/words.
//
// Units everywhere inside: mm, N, s, kg, MPa, mm/s, mm/s², µm where a name says
// so, settings in % of the rated motor current.
package press
