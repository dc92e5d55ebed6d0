package fit

// Smoothing is the interference that is lost when the roughness peaks of a
// press fit are flattened. The sources of one and the same standard give
// different factors (0.8, and 0.4 for a later edition), so that it is a range.
type Smoothing struct {
	Least, Most float64 // factors, –
	RzSum       float64 // µm, Rz of the hole and Rz of the shaft together
}

// Apply takes the smoothing off an interference, and cuts the rest at zero.
//
//	effective = max(0, i − factor·RzSum), factor = Most for the low end,
//	Least for the high end, their middle for the mean
//
// Smoothing costs grip, so that the low end loses most; counting on it must
// not flatter the force, so that the high end loses least.
//
// Arguments: i, µm on the diameter.
// Result: µm on the diameter, none below 0.
// Range: 0 ≤ Least ≤ Most; factors of 0.4 and 0.8 are in use, none beyond is
// published.
// Special cases: an interference that is lost altogether gives 0; see
// [Smoothing.Raw] for by how much.
// Source: DIN 7190-1 in the form of Roloff/Matek eq. 12.14, as quoted in public
// texts (neither was at hand).
func (s Smoothing) Apply(i Triple) Triple {
	raw := s.Raw(i)
	return Triple{Low: max(0, raw.Low), Mean: max(0, raw.Mean), High: max(0, raw.High)}
}

// Raw takes the smoothing off an interference, and lets it fall below zero.
//
//	i − factor·RzSum
//
// Arguments: i, µm on the diameter.
// Result: µm on the diameter; below zero there is no grip.
// Range: as for [Smoothing.Apply].
// Special cases: none.
// Source: as for [Smoothing.Apply].
func (s Smoothing) Raw(i Triple) Triple {
	return Triple{
		Low:  i.Low - s.Most*s.RzSum,
		Mean: i.Mean - (s.Least+s.Most)/2*s.RzSum,
		High: i.High - s.Least*s.RzSum,
	}
}
