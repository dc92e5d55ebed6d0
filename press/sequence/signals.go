package sequence

import (
	"math"
	"slices"
)

// A Row is a moment at which the movement changes: values just after it.
type Row struct {
	Time, Position, Speed, Accel float64
	Step                         int
}

// Timeline lists where the step or the acceleration changes or the speed jumps, and the
// end of the run, at rest.
func (r *Run) Timeline() []Row {
	out := make([]Row, 0, len(r.Segments)+1)
	var speed float64
	for i, g := range r.Segments {
		if i == 0 || g.Step != r.Segments[i-1].Step || g.Accel != r.Segments[i-1].Accel || math.Abs(g.Speed-speed) > Slack {
			out = append(out, Row{g.Begin, g.Position, g.Speed, g.Accel, g.Step})
		}
		_, speed = g.At(g.Time)
	}
	last := Row{Time: r.Total, Position: r.End}
	if n := len(r.Passes); n > 0 {
		last.Step = r.Passes[n-1].Step
	}
	return append(out, last)
}

// A Stretch is a time in which a signal does not change, and the pass in which it began.
type Stretch struct {
	On         bool
	From, To   float64 // s
	Step, Pass int
}

// A Signal names one of the signals.
type Signal string

// The signals of a station.
const (
	Arrival     Signal = "arrival"      // from settling in a push until the next command
	StepZone    Signal = "step_zone"    // of the last command, while the ram is in its zone
	StationZone Signal = "station_zone" // of the place alone
)

// Brief is how long a signal must last to be told, s.
const Brief = 1e-6

// Stretches follows a signal through the run. Zones are closed; what lasts less than
// [Brief] is left out.
//
// Arguments: the signal; the station's own zone, mm, nil for none.
// Result: stretches without gaps from 0 to the end of the run; none where the run takes
// no time.
func (r *Run) Stretches(signal Signal, station *[2]float64) []Stretch {
	var out []Stretch
	for _, g := range r.Segments {
		zone := g.Zone
		switch signal {
		case Arrival:
			out = joined(out, Stretch{g.Arrival, g.Begin, g.Begin + g.Time, g.Step, g.Pass})
			continue
		case StationZone:
			zone = station
		}
		if zone == nil {
			out = joined(out, Stretch{false, g.Begin, g.Begin + g.Time, g.Step, g.Pass})
			continue
		}
		cuts := append(g.crossings(*zone), g.Time)
		from := 0.0
		for _, to := range cuts {
			x, _ := g.At((from + to) / 2)
			on := x >= zone[0]-Slack && x <= zone[1]+Slack
			out = joined(out, Stretch{on, g.Begin + from, g.Begin + to, g.Step, g.Pass})
			from = to
		}
	}
	return lasting(out)
}

// joined adds a stretch, to the last one where nothing changes.
func joined(out []Stretch, s Stretch) []Stretch {
	if n := len(out); n > 0 && out[n-1].On == s.On {
		out[n-1].To = s.To
		return out
	}
	return append(out, s)
}

// lasting leaves out what is too brief: its time goes to the stretch before; at the very
// beginning, to the one after.
func lasting(all []Stretch) []Stretch {
	var out []Stretch
	begin := 0.0
	for _, s := range all {
		switch n := len(out); {
		case s.To-s.From < Brief && n > 0:
			out[n-1].To = s.To
		case s.To-s.From < Brief:
		case n == 0:
			s.From = begin
			out = append(out, s)
		default:
			out = joined(out, s)
		}
	}
	return out
}

// crossings are the times inside a segment at which the ram passes an end of a zone, in
// their order.
func (g Segment) crossings(zone [2]float64) []float64 {
	var out []float64
	for _, edge := range zone {
		for _, t := range g.reaches(edge) {
			if t > 0 && t < g.Time {
				out = append(out, t)
			}
		}
	}
	slices.Sort(out)
	return out
}

// reaches gives the times at which x₀ + v₀t + at²/2 is at a place.
func (g Segment) reaches(x float64) []float64 {
	way := x - g.Position
	if g.Accel == 0 {
		if g.Speed == 0 {
			return nil
		}
		return []float64{way / g.Speed}
	}
	d := g.Speed*g.Speed + 2*g.Accel*way
	if d < 0 {
		return nil
	}
	// q has the sign of the speed, so that nothing cancels.
	q := math.Copysign(math.Sqrt(d), g.Speed)
	if g.Speed == 0 {
		return []float64{math.Sqrt(d) / math.Abs(g.Accel)}
	}
	return []float64{2 * way / (g.Speed + q), -(g.Speed + q) / g.Accel}
}
