package screen

func (say Words) TheColumnsOfTheCurve() string {
	return "The columns of the curve were swapped. Undo brings them back."
}

func (say Words) TheSettingsOfTheCurve() string {
	return "The settings of the curve were taken times 100. Undo brings them back."
}

func (say Words) TheRowsOfTheCurve() string {
	return "The rows of the curve were put in order. Undo brings them back."
}
