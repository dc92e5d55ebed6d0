package words

import (
	"strconv"
	"time"
)

// A Printer writes for one reader: in these units and this language. It is a value that is
// made for each request; the zero value writes metric English, and is what a file on disk
// and the command line are written by.
//
// What hangs on a figure, a code or a choice is a method of it, or of the [Positions] of a
// plan, which hold it; so is what a drill, a page or a verb says, in the packages below
// this one. Rooms hand typed figures in, in the units that are computed in, and put no
// sentence together.
type Printer struct {
	Units    Units
	Language Language
}

// A Language that sentences are written in.
type Language uint8

// English is the only one so far: another one is a case beside it in each sentence.
const English Language = 0

// Units are what lengths and forces are shown in; the zero value is metric. Everything is
// computed in mm, N and s whatever is shown.
type Units struct {
	Length, Velocity, Finest, Force, Stress Scale
}

// A Scale shows one quantity in a unit of its own. Its zero value leaves the figure and the
// unit that it is computed in.
type Scale struct {
	Unit   string  // its sign
	PerOne float64 // how many of it there are to one that is computed with
	Digits int     // decimals more, or fewer, than the figure has in the computed unit
}

// in gives a figure, its decimals and its unit as they are shown.
func (s Scale) in(x float64, decimals int, computed string) (float64, int, string) {
	if s.Unit == "" {
		return x, decimals, computed
	}
	return x * s.PerOne, max(0, decimals+s.Digits), s.Unit
}

// back gives the computed figure of one that is shown.
func (s Scale) back(x float64) float64 {
	if s.Unit == "" {
		return x
	}
	return x / s.PerOne
}

func (s Scale) fixed(x float64, decimals int, computed string) string {
	x, decimals, unit := s.in(x, decimals, computed)
	return Unit(Fixed(x, decimals), unit)
}

func (s Scale) trimmed(x float64, decimals int, computed string) string {
	x, decimals, unit := s.in(x, decimals, computed)
	return Unit(Trimmed(x, decimals), unit)
}

// Stress writes a stress or a pressure to 1 MPa.
func (say Printer) Stress(mpa float64) string { return say.Units.Stress.fixed(mpa, 0, "MPa") }

// UnitOfLength is the sign of the unit that positions are shown in.
func (say Printer) UnitOfLength() string {
	_, _, unit := say.Units.Length.in(0, 0, "mm")
	return unit
}

// Lasting writes how long something takes: seconds, from a minute on minutes and seconds.
func (say Printer) Lasting(d time.Duration) string {
	s := int(d.Round(time.Second).Seconds())
	if s < 60 {
		return Unit(strconv.Itoa(s), "s")
	}
	return say.Minutes(d)
}

// Minutes writes a time as minutes and seconds.
func (say Printer) Minutes(d time.Duration) string {
	s := int(d.Round(time.Second).Seconds())
	return Unit(strconv.Itoa(s/60), "min") + " " + Unit(strconv.Itoa(s%60), "s")
}
