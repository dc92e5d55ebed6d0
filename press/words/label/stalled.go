package label

import (
	"strconv"

	"ramplan/press/words"
)

// StalledLabel names the readings of parts that stall, in a line or two: how many of a
// million there are, and how many times as high as the seated ones they are drawn; 0: none
// is seen.
func (say Words) StalledLabel(ppm, times float64, before bool) []string {
	text := "stalled " + words.Unit(words.SimulatedPPM(ppm), "ppm")
	if before {
		text = "← " + text
	}
	switch {
	case times == 0:
		return []string{text, "before this"}
	case times > 1:
		return []string{text, "drawn × " + words.Trimmed(times, 0)}
	}
	return []string{text}
}

// StalledText says the same in sentences.
func (say Words) StalledText(ppm, accepted float64, before bool, seed uint64) string {
	s := "Simulated with seed " + strconv.FormatUint(seed, 10) + ": " + words.SimulatedPPM(ppm) + " in a million parts stall before their seat"
	if before {
		s += ", most of them further up than the magnified stretch"
	}
	if accepted > 0 {
		return s + "; of all parts " + words.Unit(words.SimulatedPPM(accepted), "ppm") + " stall and yet give both signals. The seated readings are those of the others."
	}
	return s + "; none of these gives both signals. The seated readings are those of the others."
}
