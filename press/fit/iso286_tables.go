package fit

import (
	"fmt"
	"math"
	"slices"
)

// The tables of ISO 286-1 for sizes up to 500 mm. They are used as they stand:
// the formulas from which they once came miss them by up to 9 µm at small
// sizes. A row holds for sizes above that of the row before, up to and
// including its own.
//
// Source: ISO 286-1, tables as given in two to four public transcriptions that
// agree (the standard was not at hand); testdata/published holds them, and a
// test compares every figure.

// none marks a deviation that the standard leaves empty.
const none = math.MinInt16

// tAbove is the diameter, mm, above which t and T are defined.
const tAbove = 24.0

// gradeRow holds, for one main step of sizes, µm.
type gradeRow struct {
	upTo  float64    // mm
	it    [4]float64 // standard tolerance of grades 5 to 8
	delta [4]float64 // Δ of grades 5 to 8
	clear [2]float64 // upper deviations es of the shafts f and g
}

// gradeTable is the table of standard tolerances, the Δ columns of the table of
// hole deviations, and the deviations of f and g, which change at the main steps.
var gradeTable = []gradeRow{
	{3, [4]float64{4, 6, 10, 14}, [4]float64{0, 0, 0, 0}, [2]float64{-6, -2}},
	{6, [4]float64{5, 8, 12, 18}, [4]float64{1, 3, 4, 6}, [2]float64{-10, -4}},
	{10, [4]float64{6, 9, 15, 22}, [4]float64{2, 3, 6, 7}, [2]float64{-13, -5}},
	{18, [4]float64{8, 11, 18, 27}, [4]float64{3, 3, 7, 9}, [2]float64{-16, -6}},
	{30, [4]float64{9, 13, 21, 33}, [4]float64{3, 4, 8, 12}, [2]float64{-20, -7}},
	{50, [4]float64{11, 16, 25, 39}, [4]float64{4, 5, 9, 14}, [2]float64{-25, -9}},
	{80, [4]float64{13, 19, 30, 46}, [4]float64{5, 6, 11, 16}, [2]float64{-30, -10}},
	{120, [4]float64{15, 22, 35, 54}, [4]float64{5, 7, 13, 19}, [2]float64{-36, -12}},
	{180, [4]float64{18, 25, 40, 63}, [4]float64{6, 7, 15, 23}, [2]float64{-43, -14}},
	{250, [4]float64{20, 29, 46, 72}, [4]float64{6, 9, 17, 26}, [2]float64{-50, -15}},
	{315, [4]float64{23, 32, 52, 81}, [4]float64{7, 9, 20, 29}, [2]float64{-56, -17}},
	{400, [4]float64{25, 36, 57, 89}, [4]float64{7, 11, 21, 32}, [2]float64{-62, -18}},
	{500, [4]float64{27, 40, 63, 97}, [4]float64{7, 13, 23, 34}, [2]float64{-68, -20}},
}

// deviationRow holds, for one sub-step of sizes, the lower deviations ei, µm,
// of the shafts k (grades 4 to 7), m, n, p, r, s, t, u, x.
type deviationRow struct {
	upTo float64 // mm
	ei   [9]float64
}

// deviationLetters names the columns of deviationTable.
const deviationLetters = "kmnprstux"

// deviationTable is the table of fundamental deviations of shafts.
var deviationTable = []deviationRow{
	{3, [9]float64{0, 2, 4, 6, 10, 14, none, 18, 20}},
	{6, [9]float64{1, 4, 8, 12, 15, 19, none, 23, 28}},
	{10, [9]float64{1, 6, 10, 15, 19, 23, none, 28, 34}},
	{14, [9]float64{1, 7, 12, 18, 23, 28, none, 33, 40}},
	{18, [9]float64{1, 7, 12, 18, 23, 28, none, 33, 45}},
	{24, [9]float64{2, 8, 15, 22, 28, 35, none, 41, 54}},
	{30, [9]float64{2, 8, 15, 22, 28, 35, 41, 48, 64}},
	{40, [9]float64{2, 9, 17, 26, 34, 43, 48, 60, 80}},
	{50, [9]float64{2, 9, 17, 26, 34, 43, 54, 70, 97}},
	{65, [9]float64{2, 11, 20, 32, 41, 53, 66, 87, 122}},
	{80, [9]float64{2, 11, 20, 32, 43, 59, 75, 102, 146}},
	{100, [9]float64{3, 13, 23, 37, 51, 71, 91, 124, 178}},
	{120, [9]float64{3, 13, 23, 37, 54, 79, 104, 144, 210}},
	{140, [9]float64{3, 15, 27, 43, 63, 92, 122, 170, 248}},
	{160, [9]float64{3, 15, 27, 43, 65, 100, 134, 190, 280}},
	{180, [9]float64{3, 15, 27, 43, 68, 108, 146, 210, 310}},
	{200, [9]float64{4, 17, 31, 50, 77, 122, 166, 236, 350}},
	{225, [9]float64{4, 17, 31, 50, 80, 130, 180, 258, 385}},
	{250, [9]float64{4, 17, 31, 50, 84, 140, 196, 284, 425}},
	{280, [9]float64{4, 20, 34, 56, 94, 158, 218, 315, 475}},
	{315, [9]float64{4, 20, 34, 56, 98, 170, 240, 350, 525}},
	{355, [9]float64{4, 21, 37, 62, 108, 190, 268, 390, 590}},
	{400, [9]float64{4, 21, 37, 62, 114, 208, 294, 435, 660}},
	{450, [9]float64{5, 23, 40, 68, 126, 232, 330, 490, 740}},
	{500, [9]float64{5, 23, 40, 68, 132, 252, 360, 540, 820}},
}

// size is the two rows that hold for one nominal diameter.
type size struct {
	grades     gradeRow
	deviations deviationRow
}

// sizeOf finds the rows of a diameter, mm.
func sizeOf(diameter float64) (size, error) {
	if !(diameter > 0 && diameter <= MaxDiameter) {
		return size{}, fmt.Errorf("fit: diameter %v mm is not above 0 and up to %v mm", diameter, MaxDiameter)
	}
	g := slices.IndexFunc(gradeTable, func(r gradeRow) bool { return diameter <= r.upTo })
	d := slices.IndexFunc(deviationTable, func(r deviationRow) bool { return diameter <= r.upTo })
	return size{grades: gradeTable[g], deviations: deviationTable[d]}, nil
}

// grade is the standard tolerance IT of a grade, µm.
func (s size) grade(grade int) float64 { return s.grades.it[grade-lowestGrade] }

// deviation is ei of a shaft letter, µm, and whether the standard defines it.
func (s size) deviation(letter string) (float64, bool) {
	for i, l := range deviationLetters {
		if string(l) == letter {
			return s.deviations.ei[i], s.deviations.ei[i] != none
		}
	}
	panic("fit: no deviation column for letter " + letter)
}

// clearance is es of the shafts f and g, µm; ok is false for any other letter.
func (s size) clearance(letter string) (es float64, ok bool) {
	switch letter {
	case "f":
		return s.grades.clear[0], true
	case "g":
		return s.grades.clear[1], true
	}
	return 0, false
}

// delta is what a hole of a class gains over the mirrored shaft, µm: Δ for
// K, M, N of all grades here, and for P to U up to grade 7. N up to 3 mm needs
// no exception, since Δ is 0 there.
func (s size) delta(c class) float64 {
	if c.grade > 7 && !slices.Contains([]string{"K", "M", "N"}, c.letter) {
		return 0
	}
	return s.grades.delta[c.grade-lowestGrade]
}
