package shell

import (
	"fmt"
)

func (say Words) WhatToDrawOrWhich(sheetName string, join string, drillName string) string {
	return "`WHAT` to draw: " + sheetName + ", " + join + ", or " + drillName + ", which is one HTML file for a phone or tablet"
}

func (say Words) FileToWriteEndingIn(join string) string {
	return "`FILE` to write, ending in ." + join + ", or a folder; - writes to standard output"
}

func (say Words) FormatInAFolderOr(join string) string {
	return "`FORMAT` in a folder or on standard output: " + join + "; of rows csv (default pdf in a folder, else svg)"
}

func (say Words) SizeOfTheSheet(join string) string { return "`SIZE` of the sheet: " + join }

func (say Words) PagesBehindTheSheetJoined(join string) string {
	return "`PAGES` behind the sheet, joined by commas: " + join + ", or all; with -o FILE.csv only their rows"
}

func (say Words) WidthOfADrawingAlone() string {
	return "`WIDTH` of a drawing alone: column, half, page, slide or a number of mm"
}

func (say Words) SeparatorOfRows(separators string) string {
	return "`SEPARATOR` of rows: " + separators
}

func (say Words) DrawTakesAPlanFrom() string {
	return "draw takes a plan from the archive or from files, not from both"
}

func (say Words) RevisionNeedsPlanTheNumber() string {
	return "-revision needs -plan, the number of a plan in the archive"
}

func (say Words) DataNeedsPlanTheNumber() string {
	return "-data needs -plan, the number of a plan in the archive"
}

func (say Words) DrawKnowsNoPageThere(name string, join string) string {
	return fmt.Sprintf("draw knows no page %q; there are %s", name, join)
}

func (say Words) DrawKnowsNoSeparatorThere(separator string, join string) string {
	return fmt.Sprintf("draw knows no separator %q; there are %s", separator, join)
}

func (say Words) SizeSeparatorAndFontAre() string {
	return "-size, -separator and -font are not for the drill: it is one HTML file"
}

func (say Words) DrawKnowsNoDrawingIt(what string, join string) string {
	return fmt.Sprintf("draw knows no drawing %q; it draws: %s", what, join)
}

func (say Words) DrawKnowsNoSizeThere(paper string, join string) string {
	return fmt.Sprintf("draw knows no size %q; there are %s", paper, join)
}

func (say Words) PagesAreBehindASheet() string {
	return "-pages are behind a sheet, not behind one drawing alone"
}

func (say Words) WidthAndTitleAreFor() string {
	return "-width and -title are for one drawing alone; name it with -what"
}

func (say Words) SizeIsForASheet() string {
	return "-size is for a sheet; one drawing alone has a -width"
}

func (say Words) TheCardKeepsItsTitle() string {
	return "the card keeps its title: it names the station"
}

func (say Words) DrawTakesOnePlanOr() string {
	return "draw takes one plan or more, after the flags; try: ramplan draw -o sheet.pdf PLAN.json"
}

func (say Words) SizeIsForASheetRows() string { return "-size is for a sheet; rows have none" }

func (say Words) FontIsForWhatIs() string { return "-font is for what is drawn; rows have none" }

func (say Words) SeparatorIsForRowsGive() string {
	return "-separator is for rows: give -o a name that ends in .csv"
}

func (say Words) ACsvHoldsRowsOf() string {
	return "a .csv holds rows of one plan: name them with -pages"
}

func (say Words) RowsGoIntoOneFile() string {
	return "rows go into one file: give -o a name that ends in .csv"
}

func (say Words) DrawKnowsNoFormatThere(format string, join string) string {
	return fmt.Sprintf("draw knows no format %q; there are %s", format, join)
}

func (say Words) DrawCannotWriteGiveO(to string, join string) string {
	return fmt.Sprintf("draw cannot write %q; give -o a name that ends in .%s, or a folder that ends in /", to, join)
}

func (say Words) ManyPlansGoIntoOne() string {
	return "many plans go into one .pdf, or into a folder: give -o a name that ends in .pdf or in /"
}

func (say Words) RevisionIs(revision string, superseded string) string {
	return fmt.Sprintf("revision %s is %s", revision, superseded)
}

func (say Words) CannotDraw(name string, err error) string {
	return fmt.Sprintf("%s: cannot draw: %v", name, err)
}

func (say Words) StoppedBeforeNothingWasWritten(name string) string {
	return fmt.Sprintf("stopped before %s; nothing was written", name)
}

func (say Words) CannotDrawA(err error) string { return fmt.Sprintf("cannot draw: %v", err) }

func (say Words) StoppedNothingWasWritten() string { return "stopped; nothing was written" }

func (say Words) StoppedBeforeOfPlansWere(name string, i int, n int) string {
	return fmt.Sprintf("stopped before %s; %d of %d plans were looked at", name, i, n)
}

func (say Words) AndWouldBothBeWritten(other string, plans string, name string) string {
	return fmt.Sprintf("%s and %s would both be written to %s; draw them one by one", other, plans, name)
}

func (say Words) PagesOfWouldBeWritten(other string, name string, plans string) string {
	return fmt.Sprintf("pages of %s would be written to %s, and %s as well; draw them one by one", other, name, plans)
}

func (say Words) ThisIsPage1Of(count int) string {
	return fmt.Sprintf("this is page 1 of %d; give -o a file to have the others beside it", count)
}

func (say Words) PagesTo(count int, to string, pageName string) string {
	return fmt.Sprintf("%d pages: %s to %s", count, to, pageName)
}
