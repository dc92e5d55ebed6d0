package words

import (
	"time"

	"ramplan/press"
)

func Force(n float64) string                { return Printer{}.Force(n) }
func Setting(percent float64) string        { return Printer{}.Setting(percent) }
func Seconds(s float64) string              { return Printer{}.Seconds(s) }
func SecondsBare(s float64) string          { return Printer{}.SecondsBare(s) }
func Speed(v float64) string                { return Printer{}.Speed(v) }
func Microns(x float64) string              { return Printer{}.Microns(x) }
func PPM(x float64) string                  { return Printer{}.PPM(x) }
func TargetPPM(x float64) string            { return Printer{}.TargetPPM(x) }
func ppmOver(x, limit float64) string       { return Printer{}.ppmOver(x, limit) }
func Share(p float64) string                { return Printer{}.Share(p) }
func TargetShare(p float64) string          { return Printer{}.TargetShare(p) }
func Ratio(x float64) string                { return Printer{}.Ratio(x) }
func After(s float64) string                { return Printer{}.After(s) }
func AfterBare(s float64) string            { return Printer{}.AfterBare(s) }
func OneIn(share float64) string            { return Printer{}.OneIn(share) }
func Found(share float64) string            { return Printer{}.Found(share) }
func Rarely(share float64) string           { return Printer{}.Rarely(share) }
func When(t time.Time) string               { return Printer{}.When(t) }
func Day(t time.Time) string                { return Printer{}.Day(t) }
func Today() string                         { return Printer{}.Today() }
func PositionsOf(p *press.Plan) Positions   { return Printer{}.Positions(p) }
func positionsIn(r *press.Result) Positions { return Printer{}.positionsIn(r) }
