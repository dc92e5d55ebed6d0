package screen

import (
	"strconv"
)

func (say Words) CurveOlderThanPoints() string {
	return "Older than the points below: this is the curve of the last sound plan."
}

func (say Words) DragAPoint() string {
	return "Drag a point, or move it with the arrow keys; with Shift by ten steps. Ctrl+Z undoes it."
}

func (say Words) PointsTooClose(mostHandles int) string {
	return "More than " + strconv.Itoa(mostHandles) + " points lie too close together to be moved here; the table below moves them."
}
