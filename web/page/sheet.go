package page

// A SheetPage shows a plan on paper before it is exported.
type SheetPage struct {
	Assets    Assets
	Title     Title
	Address   string
	State     string // Draft, or the revision
	Size      string
	Digest    string
	Revisions []Option
	Sizes     []Option
	Pages     []PaperPage
	PDF       string // address
	Drawings  []DrawingFiles
}

// A PaperPage is one page of it.
type PaperPage struct{ Image, Alt, PNG, SVG, Number string }

// DrawingFiles are the files of one drawing alone.
type DrawingFiles struct {
	Label string
	Files []Link
}
