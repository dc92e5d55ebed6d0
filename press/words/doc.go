// Package words holds all wording: the sentences of findings, the headline, what
// the signals and their pairs mean and what to do then, the rows of the fault
// catalogue, the glossary, the cautions, and numbers and units for people.
//
// It makes sentences from codes and figures and decides nothing: which findings
// there are, and what follows from the plan, is computed in package press.
package words
