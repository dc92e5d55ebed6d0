package draw

import (
	"math"
	"slices"
	"sort"

	"ramplan/press"
	"ramplan/press/words"
)

// A RunWay is one way of the ram through its steps, as a script plays it on the run that
// [NewRun] makes with the same options.
type RunWay struct {
	Name     string    `json:"name"`
	Decimals int       `json:"decimals"` // of a position
	Poses    []RunPose `json:"poses"`
}

// A RunPose is one moment: between two of them the ram runs straight, and what is said
// stays.
type RunPose struct {
	Time float64 `json:"time"` // s
	X    float64 `json:"x"`    // px
	Y    float64 `json:"y"`    // px
	At   float64 `json:"at"`   // mm
	Says string  `json:"says"`
}

// WaysOfRun are the nominal cycle, the hold case where it has figures, and the cycle
// without an insert: what the result's timelines tell and nothing else.
func WaysOfRun(p *press.Plan, r *press.Result, o Options) []RunWay {
	if p.Sequence == nil || r.Sequence == nil {
		return nil
	}
	d, s := layRun(newRunModel(p, r), o), r.Sequence
	out := []RunWay{d.played(p, say.NominalWay(), s.Nominal)}
	if s.Hold != nil {
		out = append(out, d.played(p, say.HoldWay(), s.Hold.RunTrace))
	}
	return append(out, d.played(p, words.UpperFirst(withoutPart), s.Missing))
}

func (d *runDrawing) played(p *press.Plan, name string, t press.RunTrace) RunWay {
	way := RunWay{Name: name, Decimals: say.Positions(p).Decimals()}
	spots := sampled(t.Timeline, math.Inf(-1), 12)
	// A lamp changes between two corners of the way too.
	for _, at := range slices.Concat(t.Signals.Arrival.Changes, t.Signals.StepZone.Changes, stationChanges(t)) {
		spots = append(spots, [2]float64{at, placeAt(t.Timeline, at)})
	}
	sort.SliceStable(spots, func(i, j int) bool { return spots[i][0] < spots[j][0] })
	for _, q := range spots {
		at := d.at(q[0], q[1])
		var station *bool
		if z := t.Signals.StationZone; z != nil {
			on := onAt(*z, q[0])
			station = &on
		}
		says := say.RunMoment(p, stepAt(t.Timeline, q[0]), onAt(t.Signals.Arrival, q[0]), onAt(t.Signals.StepZone, q[0]), station)
		way.Poses = append(way.Poses, RunPose{q[0], math.Round(at[0]*100) / 100, math.Round(at[1]*100) / 100, q[1], says})
	}
	return way
}

func stationChanges(t press.RunTrace) []float64 {
	if t.Signals.StationZone == nil {
		return nil
	}
	return t.Signals.StationZone.Changes
}

// onAt tells whether a signal is on from a time on.
func onAt(c press.Changes, at float64) bool {
	on := c.First
	for _, t := range c.Changes {
		if t <= at+1e-9 {
			on = !on
		}
	}
	return on
}

// instantAt is the row of a timeline that holds at a time.
func instantAt(way []press.Instant, at float64) press.Instant {
	q := way[0]
	for _, next := range way[1:] {
		if next.Time <= at+1e-9 {
			q = next
		}
	}
	return q
}

func stepAt(way []press.Instant, at float64) int { return instantAt(way, at).Step }

func placeAt(way []press.Instant, at float64) float64 {
	q := instantAt(way, at)
	t := math.Max(0, at-q.Time)
	return q.Position + t*(q.Speed+q.Acceleration*t/2)
}
