package fit_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/fit"
	"ramplan/press/presstest"
)

var (
	holes  = []string{"H", "JS", "K", "M", "N", "P", "R", "S", "T", "U"}
	shafts = []string{"h", "js", "k", "m", "n", "p", "r", "s", "t", "u", "x"}
)

// chart is where the tables of ready limits come from: put together from the
// tables of ISO 286-1, and about 4,150 of their cells compared with a handbook
// chart; four differences, all slips of typing in the copy of the chart.
var chart = presstest.Source{
	ID: "iso286-limits", Status: presstest.Computed,
	Cite: "limits put together from the tables of ISO 286-1, then compared with a handbook chart",
}

// TestEveryLimit compares every cell of both charts for the allowed letters,
// at three diameters of each size step: just above the step before, in the
// middle, and at its end, which belongs to it.
func TestEveryLimit(t *testing.T) {
	for _, c := range []struct {
		table, upper, lower string
		letters             []string
		limits              func(string, float64) (fit.Limits, error)
		cells               int // figures to be found in the table
	}{
		// 25 steps, 4 grades, upper and lower; T and t miss the first 6 steps.
		{"iso286_hole_limits", "_ES_um", "_EI_um", holes, fit.Hole, 25*10*8 - 6*8},
		{"iso286_shaft_limits", "_es_um", "_ei_um", shafts, fit.Shaft, 25*11*8 - 6*8},
	} {
		t.Run(c.table, func(t *testing.T) {
			cells := 0
			for _, row := range presstest.Read(t, c.table) {
				over, upTo := row.Number("over_mm"), row.Number("up_to_mm")
				for _, letter := range c.letters {
					for grade := 5; grade <= 8; grade++ {
						class := letter + strconv.Itoa(grade)
						for _, d := range []float64{math.Nextafter(over, math.Inf(1)), (over + upTo) / 2, upTo} {
							what := fmt.Sprintf("%v %s", d, class)
							got, err := c.limits(class, d)
							if row.Empty(class + c.upper) {
								assert.EqualError(t, err, fmt.Sprintf("fit: class %q is not defined at diameter %v mm, only above 24 mm", class, d))
								continue
							}
							require.NoError(t, err, what)
							presstest.Equal(t, what, got.High, presstest.Exact(chart, row.Number(class+c.upper)))
							presstest.Equal(t, what, got.Low, presstest.Exact(chart, row.Number(class+c.lower)))
						}
						if !row.Empty(class + c.upper) {
							cells += 2
						}
					}
				}
			}
			assert.Equal(t, c.cells, cells)
		})
	}
}

// TestExceptions holds the exceptions of the standard by name, so that nobody
// smooths them away. Source: ISO 286-1, table of hole deviations, from memory.
func TestExceptions(t *testing.T) {
	for _, c := range []struct {
		class     string
		diameter  float64
		low, high float64
	}{
		{"M6", 250, -37, -8}, {"M6", 251, -41, -9}, {"M6", 315, -41, -9}, {"M6", 316, -46, -10},
		{"M5", 280, -36, -13}, {"M7", 280, -52, 0},
		{"N6", 3, -10, -4}, {"N8", 3, -18, -4}, {"N8", 3.001, -20, -2},
		{"P7", 25, -35, -14}, {"P8", 25, -55, -22},
		{"K8", 25, -23, 10},
	} {
		got, err := fit.Hole(c.class, c.diameter)
		require.NoError(t, err)
		assert.Equal(t, fit.Limits{Low: c.low, High: c.high}, got, "%v %s", c.diameter, c.class)
	}
	for class, want := range map[string]fit.Limits{"k7": {Low: 2, High: 23}, "k8": {Low: 0, High: 33}} {
		got, err := fit.Shaft(class, 25)
		require.NoError(t, err)
		assert.Equal(t, want, got, class)
	}
}

// TestCodeRefuses holds what each refusal says.
func TestCodeRefuses(t *testing.T) {
	const (
		holeList  = "F, G, H, JS, K, M, N, P, R, S, T, U"
		shaftList = "f, g, h, js, k, m, n, p, r, s, t, u, x"
		order     = "; the hole class comes first, in capital letters, the shaft class second, in small ones"
	)
	for _, c := range []struct {
		code     string
		diameter float64
		want     string
	}{
		{"", 20, `fit: code "" is not a hole class, a slash and a shaft class, such as H7/s6`},
		{"H7", 20, `fit: code "H7" is not a hole class, a slash and a shaft class, such as H7/s6`},
		{"H7/s6/s6", 20, `fit: code "H7/s6/s6" is not a hole class, a slash and a shaft class, such as H7/s6`},
		{"H7-s6", 20, `fit: code "H7-s6" is not a hole class, a slash and a shaft class, such as H7/s6`},
		{"/s6", 20, `fit: hole class "" is not a letter and a grade`},
		{"H/s6", 20, `fit: hole class "H" is not a letter and a grade`},
		{"7H/s6", 20, `fit: hole class "7H" is not a letter and a grade`},
		{"H7/", 20, `fit: shaft class "" is not a letter and a grade`},
		{"s6/H7", 20, `fit: hole letter "s" of class "s6" is not one of ` + holeList + order},
		{"h7/s6", 20, `fit: hole letter "h" of class "h7" is not one of ` + holeList + order},
		{"H7/S6", 20, `fit: shaft letter "S" of class "S6" is not one of ` + shaftList + order},
		{"E7/s6", 20, `fit: hole letter "E" of class "E7" is not one of ` + holeList},
		{"Js7/s6", 20, `fit: hole letter "Js" of class "Js7" is not one of ` + holeList},
		{"H7/z6", 20, `fit: shaft letter "z" of class "z6" is not one of ` + shaftList},
		{"H7 / s6", 20, `fit: grade "7 " of hole class "H7 " is not 5 to 8`},
		{"H4/s6", 20, `fit: grade "4" of hole class "H4" is not 5 to 8`},
		{"H9/s6", 20, `fit: grade "9" of hole class "H9" is not 5 to 8`},
		{"H11/s6", 20, `fit: grade "11" of hole class "H11" is not 5 to 8`},
		{"H7/s06", 20, `fit: grade "06" of shaft class "s06" is not 5 to 8`},
		{"H7/s6x", 20, `fit: grade "6x" of shaft class "s6x" is not 5 to 8`},
		{"H7/t6", 24, `fit: class "t6" is not defined at diameter 24 mm, only above 24 mm`},
		{"T7/h6", 3, `fit: class "T7" is not defined at diameter 3 mm, only above 24 mm`},
		{"H7/s6", 0, `fit: diameter 0 mm is not above 0 and up to 500 mm`},
		{"H7/s6", -20, `fit: diameter -20 mm is not above 0 and up to 500 mm`},
		{"H7/s6", 500.001, `fit: diameter 500.001 mm is not above 0 and up to 500 mm`},
		{"H7/s6", math.NaN(), `fit: diameter NaN mm is not above 0 and up to 500 mm`},
		{"H7/s6", math.Inf(1), `fit: diameter +Inf mm is not above 0 and up to 500 mm`},
	} {
		t.Run(c.code, func(t *testing.T) {
			hole, shaft, err := fit.Code(c.code, c.diameter)
			assert.EqualError(t, err, c.want)
			assert.Zero(t, hole)
			assert.Zero(t, shaft)
		})
	}
}

// FuzzCode holds that no text breaks the reader, and that what it takes is one
// of the allowed classes, twice, with limits as far apart as the same grade of
// a basic hole and a basic shaft.
func FuzzCode(f *testing.F) {
	for _, seed := range []string{"H7/s6", "F8/s6", "G7/f6", "JS5/x8", "N8/js6", "T6/t5", "", "/", "H7/", "h7/S6", "H7/s6/", "H10/s6", "\xff7/s6", "Hß7/s6"} {
		f.Add(seed, 24.0)
		f.Add(seed, 3.0000001)
	}
	f.Add("H7/s6", math.NaN())
	f.Add("M6/k8", 315.0)
	f.Fuzz(func(t *testing.T, code string, d float64) {
		hole, shaft, err := fit.Code(code, d)
		if err != nil {
			require.Zero(t, hole)
			require.Zero(t, shaft)
			require.True(t, strings.HasPrefix(err.Error(), "fit: "))
			return
		}
		require.True(t, d > 0 && d <= 500)
		h, s, _ := strings.Cut(code, "/")
		require.Contains(t, append([]string{"F", "G"}, holes...), h[:len(h)-1])
		require.Contains(t, append([]string{"f", "g"}, shafts...), s[:len(s)-1])
		basicHole, basicShaft, err := fit.Code("H"+h[len(h)-1:]+"/h"+s[len(s)-1:], d)
		require.NoError(t, err)
		require.Equal(t, basicHole.High-basicHole.Low, hole.High-hole.Low)
		require.Equal(t, basicShaft.High-basicShaft.Low, shaft.High-shaft.Low)
	})
}

// TestLettersTighten holds that at one diameter and grade each further letter
// of a shaft sits higher and of a hole lower; js and JS, which lie about zero,
// are left out.
func TestLettersTighten(t *testing.T) {
	for _, d := range []float64{25, 60, 130, 500} {
		for _, grade := range []string{"5", "6", "7"} {
			last := math.Inf(-1)
			for _, letter := range slices.DeleteFunc(slices.Clone(shafts), func(l string) bool { return l == "js" }) {
				got, err := fit.Shaft(letter+grade, d)
				require.NoError(t, err)
				require.Greater(t, got.Low, last, "%v %s%s", d, letter, grade)
				last = got.Low
			}
			last = math.Inf(1)
			for _, letter := range slices.DeleteFunc(slices.Clone(holes), func(l string) bool { return l == "JS" }) {
				got, err := fit.Hole(letter+grade, d)
				require.NoError(t, err)
				require.Less(t, got.High, last, "%v %s%s", d, letter, grade)
				last = got.High
			}
		}
	}
}
