package label

func (say Words) SetpointsNotReady() string { return "Setpoints, not ready to be typed in" }

func (say Words) LeftOnTheSeat(minSeatingForce float64) string {
	return ", at least " + say.Force(minSeatingForce) + " left on the seat"
}
