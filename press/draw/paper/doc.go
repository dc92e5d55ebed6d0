// Package paper puts a plan on paper: the sheet and the pages behind it, one drawing alone
// with a line that says of which plan it is, and the record of a training. A [Document] is
// written in every format, with the plan inside.
package paper
