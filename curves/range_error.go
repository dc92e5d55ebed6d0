package curves

import "fmt"

// RangeError says that a curve was asked outside its points.
type RangeError struct {
	Quantity  string  // "setting" or "force"
	Value     float64 // what was asked for
	Low, High float64 // what the curve holds
	Unit      string  // of all three: "%" or "N"
}

// Error names the value, its unit and the range.
func (e *RangeError) Error() string {
	return fmt.Sprintf("curves: %s %v %s is outside the curve, which runs from %v %s to %v %s",
		e.Quantity, e.Value, e.Unit, e.Low, e.Unit, e.High, e.Unit)
}
