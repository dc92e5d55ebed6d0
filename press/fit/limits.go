package fit

// Limits are the deviations of one part's diameter from the nominal size.
type Limits struct {
	Low, High float64 // µm
}

// Triple is a figure at its low end, in the middle and at its high end.
type Triple struct {
	Low, Mean, High float64
}

// Interference is how much larger the shaft is than the hole.
//
//	low = shaft.Low − hole.High, high = shaft.High − hole.Low, mean = (low + high)/2
//
// Arguments: hole, µm, and shaft, µm, deviations from the same nominal diameter.
// Result: µm on the diameter; below zero it is clearance.
// Range: any; none is published.
// Special cases: none.
// Source: ISO 286-1, definitions of interference (the standard was not at hand).
func Interference(hole, shaft Limits) Triple {
	low, high := shaft.Low-hole.High, shaft.High-hole.Low
	return Triple{Low: low, Mean: low + (high-low)/2, High: high}
}
