package screen

import "time"

func (say Words) TakenOffShelf(told string) string {
	return "“" + told + "” was taken off the shelf. Plans keep their copies."
}

func (say Words) NothingIssued() string { return "nothing issued" }

func (say Words) Changed(issued string, changed time.Time) string {
	return issued + ", changed " + say.When(changed)
}

func (say Words) FiguresTakenAnew() string { return "The figures were taken anew." }

func (say Words) OfEarlierFigures(help string) string {
	return "Said of the earlier figures. " + help
}

func (say Words) LookAtWhatIsSaid() string {
	return "What is said of it (source, date, how measured) was said of the earlier figures: look at it, and save what holds now."
}
