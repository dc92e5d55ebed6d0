package screen

func (say Words) TryAHold() string { return "Try a hold on the way" }

func (say Words) DragTheSquare() string {
	return "Drag the square along its step, or move it with the arrow keys, with Shift by ten steps: there the hold input goes off."
}

func (say Words) HoldInputGoesOff() string { return "Where the hold input goes off" }
