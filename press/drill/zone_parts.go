package drill

import (
	"math"
	"math/rand/v2"

	"ramplan/press"
)

// zoneTasks is how many ways there are to ask for a zone: on a deeper nest with
// the readings told, and on a higher one with the heights alone.
const zoneTasks = 2

// A setOfParts is drawn until the plan's own zone does not judge it rightly any
// more, so that no figure of another item answers it.
const mostDraws = 40

// zoneTask makes a set of parts for a nest that was moved: good ones between the
// guard bands, the others outside the drawing, as close to the limits as the error
// of a reading lets a zone tell them apart.
func (d *Drill) zoneTask(rng *rand.Rand, n int) (task *ZoneTask, why string) {
	for range mostDraws {
		if task, why = d.drawZone(rng, n); why != "" {
			return task, why
		}
		if own := (press.Pair{d.s.ZoneStart, d.s.ZoneEnd}); !task.judge(&own).Right {
			return task, ""
		}
	}
	return task, d.say.TooWideForExercise()
}

func (d *Drill) drawZone(rng *rand.Rand, n int) (*ZoneTask, string) {
	good := d.r.Window.GoodRange
	low, high := good[0], good[1]
	if a := d.r.Window.Acceptance; a != nil {
		low, high = a[0], a[1]
	} else {
		low, high = (low+high)/2, (low+high)/2
	}
	low, high = math.Max(low, d.s.Start), math.Min(high, d.s.End)
	if low > high {
		return nil, d.say.NoGoodReading(d.s.Start, d.s.End)
	}
	first, last, passes := d.s.Overlap()
	if !passes {
		return nil, d.say.NoPartPasses()
	}
	// A part is asked to pass only where the plan's own window, moved, lets it pass.
	low, high = math.Max(low, first), math.Min(high, last)
	if low > high {
		return nil, d.say.NoSurelyGoodPasses()
	}
	task := &ZoneTask{d: d, Told: n == 0, Shift: d.shift(rng, n)}
	task.s = d.s
	for _, x := range []*float64{&task.s.Start, &task.s.End, &task.s.ZoneStart, &task.s.ZoneEnd} {
		*x += task.Shift
	}
	// What reads at the push end is judged by chance, whatever the zone is.
	high = math.Max(low, math.Min(high, d.s.End-d.unsure()))
	width, room := good[1]-good[0], math.Max(2*d.unsure(), 2*d.p.Station.PositionStep)+d.grain()/2
	near := func() float64 { return (0.02 + 0.1*rng.Float64()) * width }
	task.add(low+0.1*(high-low)*rng.Float64(), press.Good)
	task.add(high-0.1*(high-low)*rng.Float64(), press.Good)
	task.add(low+(high-low)*(0.2+0.6*rng.Float64()), press.Good)
	tall, short := math.Min(math.Min(good[0], first), low-room), math.Max(good[1], d.s.End+d.unsure())
	for _, further := range []float64{0, width * (0.2 + rng.Float64())} {
		task.add(tall-near()-further, press.Long)
		task.add(short+near()+further, press.Short)
	}
	rng.Shuffle(len(task.Parts), func(i, j int) { task.Parts[i], task.Parts[j] = task.Parts[j], task.Parts[i] })
	return task, d.solve(task)
}

// shift is by how far the nest was moved: more than the parts differ that are to
// be told apart, in steps that can be set.
func (d *Drill) shift(rng *rand.Rand, n int) float64 {
	width := d.r.Window.GoodRange[1] - d.r.Window.GoodRange[0]
	step := math.Max(d.p.Station.PositionStep, finest)
	by := math.Ceil((0.4+1.6*rng.Float64())*width/step) * step
	by = math.Round(by/finest) * finest
	if n > 0 {
		by = -by
	}
	return by
}

// add adds a part by what it would read on the plan's own nest, as the station shows
// it: what is to be told apart is moved further apart by that.
func (t *ZoneTask) add(reading float64, word string) {
	d := t.d
	switch word {
	case press.Long:
		reading = d.grains(math.Floor, reading)
	case press.Short:
		reading = d.grains(math.Ceil, reading)
	default:
		reading = d.onGrain(reading)
	}
	h := d.heightAt(reading)
	if d.s.Early(reading) || d.r.Window.Word(reading) != word || d.wordOf(h) != word {
		return
	}
	if arrival, zone := d.s.At(reading); (arrival && zone) != (word == press.Good) {
		return // the plan itself judges it otherwise
	}
	for _, x := range t.Parts {
		if x.Height == h {
			return
		}
	}
	t.Parts = append(t.Parts, ZonePart{h, reading + t.Shift, word})
}
