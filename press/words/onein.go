package words

import (
	"math"
	"regexp"
	"strconv"
)

// rare is under which share a person grasps one in so many more easily than a
// percentage: 1 %.
const rare = 0.01

// OneIn writes how often something happens so that one can picture it: in 41 % of the
// cases, in 1 of 14 000, never in a million.
func (say Printer) OneIn(share float64) string {
	switch {
	case math.IsNaN(share):
		return say.Share(share)
	case share <= 0:
		return "no case"
	case share < leastShare:
		return "fewer than 1 of " + million + " cases"
	case share < rare:
		return "about 1 of " + cases(share) + " cases"
	case share > 1-leastShare:
		return "every case, as far as can be computed"
	case share > 1-rare:
		return "all but about 1 of " + cases(1-share) + " cases"
	}
	return say.Share(share) + " of the cases"
}

// Found says how often a fault is found.
func (say Printer) Found(share float64) string { return "Found in " + say.OneIn(share) }

// million is written as every number is: grouped.
var million = grouped("1000000")

// cases are how many there are to one, with two significant digits.
func cases(share float64) string { return ppmDigits(1/share, 2) }

// Rarely is a share in a table: as OneIn where it is small, else as a percentage.
func (say Printer) Rarely(share float64) string {
	if share >= leastShare && share < rare {
		return "1 in " + cases(share)
	}
	return say.Share(share)
}

// oneOf is what [Rarely] writes of a small share.
var oneOf = regexp.MustCompile(`^1 in (` + aNumber + `)$`)

// percentOf is that share as a figure in %, for other programs; the text tells how
// finely it is known.
func percentOf(text string) string {
	n, err := strconv.ParseFloat(plainNumber(oneOf.FindStringSubmatch(text)[1]), 64)
	if err != nil || n <= 0 {
		return ""
	}
	return Trimmed(100/n, 1+int(math.Ceil(math.Log10(n/100))))
}
