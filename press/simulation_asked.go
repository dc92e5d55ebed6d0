package press

import (
	"math"
	"strconv"
)

// mostParts is how many parts a simulation may count.
const mostParts = 1e12

// PartsFrom reads how many parts are to be counted, written out or as 1e7: a whole number
// from 1 to 1e12, else it is not ok.
func PartsFrom(text string) (parts int64, ok bool) {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || x != math.Trunc(x) || x < 1 || x > mostParts {
		return 0, false
	}
	return int64(x), true
}
