package words

import (
	"math"
	"strconv"
	"strings"

	"ramplan/press"
)

// Positions writes positions and lengths of one plan: to 0.01 mm, or finer where
// the plan's positions can be set finer.
type Positions struct {
	Printer
	decimals int
}

// leastDecimals of a position in mm.
const leastDecimals = 2

// Positions reads the decimals off the plan's position step.
func (say Printer) Positions(p *press.Plan) Positions {
	_, fraction, _ := strings.Cut(strconv.FormatFloat(p.Station.PositionStep, 'f', -1, 64), ".")
	return Positions{say, min(max(leastDecimals, len(fraction)), 6)}
}

// positionsIn reads the decimals off the positions that can be set, where only
// the result is at hand.
func (say Printer) positionsIn(r *press.Result) Positions {
	set := []*float64{&r.Travel.ApproachEnd, r.Travel.PushEnd}
	if z := r.Window.Zone; z != nil {
		set = append(set, z[0], z[1])
	}
	d := leastDecimals
	for _, x := range set {
		for x != nil && d < 4 && !whole(*x*math.Pow10(d)) {
			d++
		}
	}
	return Positions{say, d}
}

// Set writes a position that is typed in, finer where it was set finer than the
// station can take: rounding it would say another one.
func (f Positions) Set(mm float64) string {
	d := f.decimals
	for d < 6 && !whole(mm*math.Pow10(d)) {
		d++
	}
	x, d, _ := f.Units.Length.in(mm, d, "mm")
	return Fixed(x, d)
}

func whole(x float64) bool {
	return math.Abs(x-math.Round(x)) <= 1e-9*math.Max(1, math.Abs(x))
}

// fineDecimals tell limit samples and the rows of the fault catalogue apart, of
// which some lie 0.001 mm from the next.
const fineDecimals = 3

// Fine writes what is measured with an instrument of its own, or lies close to
// something else: to 0.001 mm, whatever the station's positions can be set to.
func (f Positions) Fine() Positions { return Positions{f.Printer, max(fineDecimals, f.decimals)} }

// With writes with another number of decimals.
func (f Positions) With(decimals int) Positions { return Positions{f.Printer, decimals} }

// Decimals of a position.
func (f Positions) Decimals() int { return f.decimals }

// Bare writes a position without its unit.
func (f Positions) Bare(mm float64) string {
	x, d, _ := f.Units.Length.in(mm, f.decimals, "mm")
	return Fixed(x, d)
}

// At writes a position.
func (f Positions) At(mm float64) string { return f.Units.Length.fixed(mm, f.decimals, "mm") }

// SetAt is a position that is typed in, with its unit.
func (f Positions) SetAt(mm float64) string { return Unit(f.Set(mm), f.UnitOfLength()) }

// Length writes a length: to two significant digits where the decimals of a
// position would hide it.
func (f Positions) Length(mm float64) string {
	d := significant(mm, 2, f.decimals)
	for d > f.decimals && whole(mm*math.Pow10(d-1)) {
		d--
	}
	return f.Units.Length.fixed(mm, d, "mm")
}

// Above writes a length rounded up to the decimals of a position, Below rounded
// down: for statements that hold from there on.
func (f Positions) Above(mm float64) string { return f.At(f.up(mm)) }

// Below: see Above.
func (f Positions) Below(mm float64) string { return f.At(f.down(mm)) }

func (f Positions) up(mm float64) float64   { return f.toward(mm, 1) }
func (f Positions) down(mm float64) float64 { return f.toward(mm, -1) }

// toward is the next length, this way, that can be written with these decimals in the
// unit that is shown.
func (f Positions) toward(mm, way float64) float64 {
	x, d, _ := f.Units.Length.in(mm, f.decimals, "mm")
	scale := way * math.Pow10(d)
	return f.Units.Length.back(math.Ceil(x*scale-1e-6) / scale)
}

// both writes two positions with as many decimals as tell them apart.
func (f Positions) both(a, b float64) (string, string) {
	d := apart(a, b, f.decimals)
	return f.Units.Length.fixed(a, d, "mm"), f.Units.Length.fixed(b, d, "mm")
}

// between writes an interval, the unit once.
func (f Positions) between(a, b float64) string { return f.Bare(a) + " to " + f.At(b) }
