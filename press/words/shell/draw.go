package shell

import (
	"fmt"
)

func (say Words) WhatFlag(sheetName string, join string, drillName string, studies string) string {
	return "`WHAT` to draw: " + sheetName + ", " + join + "; of a study " + studies + "; or " + drillName + ", which is one HTML file for a phone or tablet"
}

func (say Words) StudyFlag() string {
	return "`FILES` of studies of the plan's station, joined by commas, as assess reads them: they stand behind the sheet as its proof, and one of them is drawn with -what"
}

func (say Words) OneStudyNeeded(what string) string {
	return what + " is drawn of one study: name its file with -study"
}

func (say Words) StudyNotDrawn(what string) string {
	return "-study is for the sheet and for drawings of studies, not for " + what
}

func (say Words) KeptHasItsStudies() string {
	return "a plan in the archive has its own studies there; -study goes with plan files"
}

func (say Words) RecordNeedsStudies(page string) string {
	return "the page " + page + " is of studies: name their files with -study, or a plan in the archive with -plan"
}

func (say Words) RecordHasNoRows(page string) string {
	return "the page " + page + " is for paper and has no rows"
}

func (say Words) StudyHasNoSuchDrawing(what, kind, there string) string {
	return what + " is no drawing of a study of kind " + kind + "; there are " + there
}

func (say Words) NoStudyOfKind(what, kind string) string {
	return what + " is drawn of a study of kind " + kind + ", and no study that counts was found"
}

func (say Words) OutFlag(join string) string {
	return "`FILE` to write, ending in ." + join + ", or a folder; - writes to standard output"
}

func (say Words) FormatFlag(join string) string {
	return "`FORMAT` in a folder or on standard output: " + join + "; of rows csv (default pdf in a folder, else svg)"
}

func (say Words) SizeFlag(join string) string { return "`SIZE` of the sheet: " + join }

func (say Words) PagesFlag(join string) string {
	return "`PAGES` behind the sheet, joined by commas: " + join + ", or all; with -o FILE.csv only their rows"
}

func (say Words) WidthFlag() string {
	return "`WIDTH` of a drawing alone: column, half, page, slide or a number of mm"
}

func (say Words) SeparatorFlag(separators string) string {
	return "`SEPARATOR` of rows: " + separators
}

func (say Words) ArchiveOrFiles() string {
	return "draw takes a plan from the archive or from files, not from both"
}

func (say Words) RevisionNeedsPlan() string {
	return "-revision needs -plan, the number of a plan in the archive"
}

func (say Words) DataNeedsPlan() string {
	return "-data needs -plan, the number of a plan in the archive"
}

func (say Words) NoSuchPage(name string, join string) string {
	return fmt.Sprintf("draw knows no page %q; there are %s", name, join)
}

func (say Words) NoSuchSeparator(separator string, join string) string {
	return fmt.Sprintf("draw knows no separator %q; there are %s", separator, join)
}

func (say Words) NotForTheDrill() string {
	return "-size, -separator and -font are not for the drill: it is one HTML file"
}

func (say Words) NoSuchDrawing(what string, join string) string {
	return fmt.Sprintf("draw knows no drawing %q; it draws: %s", what, join)
}

func (say Words) NoSuchSize(paper string, join string) string {
	return fmt.Sprintf("draw knows no size %q; there are %s", paper, join)
}

func (say Words) PagesNeedASheet() string {
	return "-pages are behind a sheet, not behind one drawing alone"
}

func (say Words) WidthAndTitleNeedOneDrawing() string {
	return "-width and -title are for one drawing alone; name it with -what"
}

func (say Words) SizeNeedsASheet() string {
	return "-size is for a sheet; one drawing alone has a -width"
}

func (say Words) CardKeepsItsTitle() string {
	return "the card keeps its title: it names the station"
}

func (say Words) DrawNeedsPlans() string {
	return "draw takes one plan or more, after the flags; try: ramplan draw -o sheet.pdf PLAN.json"
}

func (say Words) RowsHaveNoSize() string { return "-size is for a sheet; rows have none" }

func (say Words) RowsHaveNoFont() string { return "-font is for what is drawn; rows have none" }

func (say Words) SeparatorNeedsRows() string {
	return "-separator is for rows: give -o a name that ends in .csv"
}

func (say Words) OneCSVOnePlan() string {
	return "a .csv holds rows of one plan: name them with -pages"
}

func (say Words) RowsNeedOneFile() string {
	return "rows go into one file: give -o a name that ends in .csv"
}

func (say Words) NoSuchFormat(format string, join string) string {
	return fmt.Sprintf("draw knows no format %q; there are %s", format, join)
}

func (say Words) NoFormatInName(to string, join string) string {
	return fmt.Sprintf("draw cannot write %q; give -o a name that ends in .%s, or a folder that ends in /", to, join)
}

func (say Words) ManyPlansNeedPDFOrFolder() string {
	return "many plans go into one .pdf, or into a folder: give -o a name that ends in .pdf or in /"
}

func (say Words) RevisionSuperseded(revision string, superseded string) string {
	return fmt.Sprintf("revision %s is %s", revision, superseded)
}

func (say Words) CannotDrawPlan(name string, err error) string {
	return fmt.Sprintf("%s: cannot draw: %v", name, err)
}

func (say Words) StoppedUnwrittenBefore(name string) string {
	return fmt.Sprintf("stopped before %s; nothing was written", name)
}

func (say Words) CannotDraw(err error) string { return fmt.Sprintf("cannot draw: %v", err) }

func (say Words) StoppedUnwritten() string { return "stopped; nothing was written" }

func (say Words) StoppedAfterPlans(name string, i int, n int) string {
	return fmt.Sprintf("stopped before %s; %d of %d plans were looked at", name, i, n)
}

func (say Words) TwoPlansOneFile(other string, plans string, name string) string {
	return fmt.Sprintf("%s and %s would both be written to %s; draw them one by one", other, plans, name)
}

func (say Words) PagesOverPlan(other string, name string, plans string) string {
	return fmt.Sprintf("pages of %s would be written to %s, and %s as well; draw them one by one", other, name, plans)
}

func (say Words) FirstPageOnly(count int) string {
	return fmt.Sprintf("this is page 1 of %d; give -o a file to have the others beside it", count)
}

func (say Words) PagesWritten(count int, to string, pageName string) string {
	return fmt.Sprintf("%d pages: %s to %s", count, to, pageName)
}
