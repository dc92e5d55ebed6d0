package screen

func (say Words) ColumnsWereSwapped() string {
	return "The columns of the curve were swapped. Undo brings them back."
}

func (say Words) TakenTimesHundred() string {
	return "The settings of the curve were taken times 100. Undo brings them back."
}

func (say Words) RowsWereOrdered() string {
	return "The rows of the curve were put in order. Undo brings them back."
}
