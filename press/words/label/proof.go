package label

import (
	"strconv"
	"strings"

	"ramplan/press/words"
)

// What the drawings of studies share.

// ProofDrawing names a drawing of a study.
func (say Words) ProofDrawing(name string) string {
	switch name {
	case "forces":
		return "Measured force"
	case "block":
		return "Pushes on a block"
	case "master":
		return "Run chart of the master"
	case "starts":
		return "Starts side by side"
	case "trial":
		return "Trial on the lens"
	case "seen":
		return "Shares seen"
	case "lamps":
		return "Limit samples on the lens"
	}
	return name
}

func (say Words) NoProofDrawing(name, there string) string {
	return "no drawing of a study is called " + strconv.Quote(name) + "; there are " + there
}

func (say Words) NothingToDraw(what string) string {
	return what + ": this study has nothing that could be drawn"
}

func (say Words) OutlierRows(rows []int) string { return "Stands out: " + rowsOf(rows) + "." }

// rowsOf lists rows by their numbers.
func rowsOf(rows []int) string {
	const most = 12
	var out []string
	for i, n := range rows {
		if i == most {
			out = append(out, "and "+strconv.Itoa(len(rows)-most)+" more")
			break
		}
		out = append(out, strconv.Itoa(n))
	}
	if len(rows) == 1 {
		return "row " + out[0]
	}
	return "rows " + strings.Join(out, ", ")
}

// whole writes a count.
func whole(n int) string { return words.Fixed(float64(n), 0) }

// counting counts things: 1 push, 2 pushes.
func counting(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return whole(n) + " " + many
}

func (say Words) StandsOut() string { return "stands out" }

func (say Words) ReadingAxis() string { return "reading, mm" }

func (say Words) OrderAxis(n int) string {
	return counting(n, "push", "pushes") + ", in their order"
}

func (say Words) EachPush(n int) string { return "each of " + counting(n, "push", "pushes") }

func (say Words) EachReading(n int) string { return "each of " + counting(n, "reading", "readings") }

func (say Words) ReadingsReach(n, stretches int) string {
	return whole(n) + " readings, drawn as " + whole(stretches) + " stretches from lowest to highest; line: mean of each"
}

func (say Words) MeanIs(pos words.Positions, at float64) string { return "mean " + pos.Bare(at) }

func (say Words) PredictedIs(pos words.Positions, at float64) string {
	return "predicted " + pos.Bare(at)
}

// signed writes a difference with its sign.
func signed(pos words.Positions, mm float64) string {
	if mm > 0 {
		return "+" + pos.At(mm)
	}
	return pos.At(mm)
}
