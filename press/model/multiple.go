package model

import (
	"math"
	"strconv"
	"strings"

	"ramplan/press/verdict"
)

// multiple gives k·step as the number that people would write: the multiple of
// the step's own decimals that is nearest, so 11535 steps of 0.01 are 115.35.
func multiple(k, step float64) float64 {
	mantissa, power, ok := decimals(step)
	n := k * mantissa
	if !ok || math.Abs(n) >= 1<<53 {
		return k * step
	}
	return n / power
}

// decimals writes a step as mantissa / power, both whole and power of ten
// exact; ok is false where that is not possible.
func decimals(step float64) (mantissa, power float64, ok bool) {
	digits := strconv.FormatFloat(step, 'f', -1, 64)
	whole, frac, _ := strings.Cut(digits, ".")
	if len(frac) > 22 {
		return 0, 0, false
	}
	mantissa, err := strconv.ParseFloat(whole+frac, 64)
	return mantissa, math.Pow10(len(frac)), err == nil && mantissa < 1<<53
}

// roundUp gives the least multiple of step that is not below x.
func roundUp(x, step float64) float64 { return multiple(math.Ceil((x-slack)/step), step) }

// roundDown gives the greatest multiple of step that is not above x.
func roundDown(x, step float64) float64 { return multiple(math.Floor((x+slack)/step), step) }

// tidy takes binary noise off a sum of positions.
func tidy(x float64) float64 {
	if math.Abs(x) > 1e6 {
		return x
	}
	return math.Round(x*1e9) / 1e9
}

// slack is what comparisons of positions (mm) and settings (%) forgive: binary
// noise is no fault of the input.
const slack = verdict.Slack
