package drill

import (
	"math"
	"math/rand/v2"
	"slices"
	"strconv"

	"ramplan/press"
	"ramplan/press/words"
)

// plainRows are the rows that a beginner is asked about.
var plainRows = []string{press.RowNominal, press.RowMissing, press.RowTwoInserts}

// edgeRows lie at the very edge of the window: what the lamps show is a toss-up.
var edgeRows = []string{press.RowTallest, press.RowShortest, press.RowLong, press.RowShort}

// rowKey names a row of the catalogue for good: own rows by their number.
func (d *Drill) rowKey(i int) string {
	f := d.r.Faults[i]
	if !f.Own {
		return f.Name
	}
	n := 0
	for _, other := range d.r.Faults[:i+1] {
		if other.Own {
			n++
		}
	}
	return "own-" + strconv.Itoa(n)
}

func (d *Drill) predictItems() {
	for i, f := range d.r.Faults {
		if !f.Own && slices.Contains(edgeRows, f.Name) {
			continue
		}
		level := 3
		if !f.Own && slices.Contains(plainRows, f.Name) {
			level = 2
		}
		d.add(Predict, level, "predict/"+d.rowKey(i), func(rng *rand.Rand) Exercise { return d.predictRow(rng, i) })
	}
	for n, h := range d.heights() {
		d.add(Predict, 2, "height/"+strconv.Itoa(n+1), func(rng *rand.Rand) Exercise { return d.predictHeight(rng, h, true) })
		d.add(Predict, 4, "height-alone/"+strconv.Itoa(n+1), func(rng *rand.Rand) Exercise { return d.predictHeight(rng, h, false) })
	}
}

// unsure is how far a reading may be off, mm: two standard uncertainties.
func (d *Drill) unsure() float64 { return 2 * d.r.Window.Uncertainty }

// heights are heights of parts, above the datum, that the lamps judge in
// different ways: one in the middle of each stretch of readings, and beyond the
// push end. All lie where the push is on, and are written as they are meant.
func (d *Drill) heights() []float64 {
	var out []float64
	put := func(reading float64) {
		h := math.Round(d.r.HeightOf(d.p, reading)*1000) / 1000
		back := d.r.ReadingOf(d.p, h)
		if !d.s.Early(back-d.unsure()) && !d.struck(back) && !slices.Contains(out, h) {
			out = append(out, h)
		}
	}
	width := d.r.Window.GoodRange[1] - d.r.Window.GoodRange[0]
	for _, s := range d.r.Verdict.Segments {
		put((math.Max(s.From, s.To-3*width) + s.To) / 2)
	}
	put(d.s.End + 2*d.unsure() + width/4)
	put(d.s.End + 2*d.unsure() + width)
	return out
}

// struck tells whether a part that reads so is met before the push begins,
// because it is taller than the nominal one, which is not.
func (d *Drill) struck(reading float64) bool {
	contact := d.r.Travel.Contact
	return !d.s.Early(contact) && d.s.Early(contact+reading-d.r.Nominal())
}

func (d *Drill) predictHeight(rng *rand.Rand, h float64, told bool) Exercise {
	ev := event{reading: d.r.ReadingOf(d.p, h)}
	e := Exercise{
		Question: "This part is " + at(h) + " high above the datum. What will the lamps show?",
		Facts:    []string{"The drawing asks for " + d.pos.Bare(d.p.Requirement.HeightLow) + " to " + d.pos.At(d.p.Requirement.HeightHigh) + "."},
		Picture:  &Picture{Height: &h},
	}
	if told {
		e.Facts = append(e.Facts, "It would stop the ram at "+at(ev.reading)+", if the push went so far.", d.figures())
	} else {
		nominal := d.r.HeightOf(d.p, d.r.Nominal())
		e.Facts = append(e.Facts, "A nominal part is "+at(nominal)+" high and stops the ram at "+at(d.r.Nominal())+".", d.figures())
	}
	d.predict(rng, &e, ev)
	return e
}

// figures are the positions that decide.
func (d *Drill) figures() string {
	return "Push end " + d.pos.At(d.s.End) + ", zone " + d.pos.Bare(d.s.ZoneStart) + " to " + d.pos.At(d.s.ZoneEnd) + "."
}

func (d *Drill) predictRow(rng *rand.Rand, i int) Exercise {
	t := words.Fault(d.r.Faults[i])
	e := Exercise{Question: "What will the lamps show for: " + t.Word + "?", Facts: []string{t.Meaning}, Picture: &Picture{Row: i}}
	if f := d.r.Faults[i]; f.Reading != nil {
		e.Facts = append(e.Facts, "The ram would be stopped at "+at(*f.Reading)+".")
	}
	e.Facts = append(e.Facts, d.figures())
	d.predict(rng, &e, d.eventOf(i))
	return e
}

// predict fills in the answers: every pair that the event can lead to within the
// uncertainty of a reading is right.
func (d *Drill) predict(rng *rand.Rand, e *Exercise, ev event) {
	possible := d.possible(ev)
	is := d.shows(ev)
	var choices []Choice
	for _, on := range words.AllPairs {
		c := Choice{ID: PairID(on), Text: upper(on.String())}
		if ev.early {
			c.Reason = d.story(ev)
		} else {
			c.Reason = differs(on, is) + " " + d.story(ev)
		}
		choices = append(choices, c)
	}
	early := Choice{ID: earlyID, Text: "Nobody knows: the part is met before the push begins"}
	switch {
	case ev.early:
	case ev.nowhere:
		early.Reason = "Nothing is met before the push begins at " + d.pos.At(d.s.Start) + ". " + d.story(ev)
	default:
		early.Reason = "The push begins at " + d.pos.At(d.s.Start) + ", and the ram is not stopped before " + at(math.Min(ev.reading, d.s.End)) + ". " + d.story(ev)
	}
	e.Right = possible
	e.Choices = unreasoned(append(shuffled(rng, choices), early), possible)
	e.Explain = d.story(ev)
	if len(possible) > 1 {
		e.Explain += " This lies within the " + d.pos.Length(d.unsure()) + " by which a reading may be off: on another day the lamps may show something else, and those answers count too."
	}
}

// possible are the ids of all that the lamps may show.
func (d *Drill) possible(ev event) []string {
	if ev.early {
		return []string{earlyID}
	}
	out := []string{PairID(d.shows(ev))}
	if ev.nowhere {
		return out
	}
	u := d.unsure()
	low, high := ev.reading-u, ev.reading+u
	tries := []float64{low, high}
	for _, x := range []float64{d.s.ZoneStart, d.s.ZoneEnd, d.s.End} {
		const beside = 1e-6
		for _, y := range []float64{x - beside, x, x + beside} {
			if y >= low && y <= high {
				tries = append(tries, y)
			}
		}
	}
	for _, x := range tries {
		id := earlyID
		if !d.s.Early(x) {
			next := ev
			next.reading = x
			id = PairID(d.shows(next))
		}
		if !slices.Contains(out, id) {
			out = append(out, id)
		}
	}
	return out
}
