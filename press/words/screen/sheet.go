package screen

import (
	"strconv"
)

func (say Words) SaysSuperseded(last string) string {
	return "This revision is " + say.SupersededBy(last, "") + "; what is printed here says so too."
}

func (say Words) SheetOfRevision(last string) string { return "The sheet of revision " + last }

func (say Words) PageOfSheet(number string, pages int) string {
	return "Page " + number + " of " + strconv.Itoa(pages) + "; its text is on the bench and in the PDF."
}

func (say Words) Or() string { return ", or " }

func (say Words) AllInOneFile() string { return "All of these in one file" }

func (say Words) AsItIsDrawn() string { return "as it is drawn" }
