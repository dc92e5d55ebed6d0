package screen

func (say Words) TryAHoldOnThe() string { return "Try a hold on the way" }

func (say Words) DragTheSquareAlongIts() string {
	return "Drag the square along its step, or move it with the arrow keys, with Shift by ten steps: there the hold input goes off."
}

func (say Words) WhereTheHoldInputGoes() string { return "Where the hold input goes off" }
