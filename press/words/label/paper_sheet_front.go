package label

func (say Words) SetpointsNotReadyToBe() string { return "Setpoints, not ready to be typed in" }

func (say Words) AtLeastLeftOnThe(minSeatingForce float64) string {
	return ", at least " + say.Force(minSeatingForce) + " left on the seat"
}
