package page

// A SheetPage shows a plan on paper before it is exported.
type SheetPage struct {
	Assets     Assets
	Title      Title
	Address    string
	State      string // Draft, or the revision
	Superseded string // that the revision is; empty where it is the last
	Last       Link   // to the sheet of the last
	Size       string
	Digest     string
	Revisions  []Option
	Sizes      []Option
	Pages      []PaperPage
	Behind     []BehindPage
	Rows       []RowsFiles
	Separated  string // how they can be
	PDF        string // address, to which the form adds what is ticked
	Drawings   []DrawingFiles
	Widths     []Option // of a drawing alone
	NoTitle    bool     // a drawing alone goes without its title
	Kept       []Hidden // what is asked of the pages, while drawings are asked for
}

// A PaperPage is one page of it.
type PaperPage struct{ Image, Alt, PNG, SVG, Number string }

// A BehindPage is a page that may stand behind the sheet.
type BehindPage struct {
	Name, Label string
	Chosen      bool
}

// RowsFiles are the files of rows of one page.
type RowsFiles struct {
	Label string
	Files []Link
}

// DrawingFiles are the files of one drawing alone.
type DrawingFiles struct {
	Label string
	Image string // address
	Files []Link // to which their form adds width and title
}
