package drill

import (
	"math"
	"slices"
	"strings"

	"ramplan/press/words"
)

// rowFacts tell what a learner needs to work out a row of the catalogue: what it
// is, of what size, and where the ram would be stopped; not how it is found.
func (d *Drill) rowFacts(i int) []string {
	f := d.r.Faults[i]
	what, _, more := strings.Cut(d.say.Fault(f).Meaning, ". ")
	if more {
		what += "."
	}
	out := []string{what}
	if size := d.size(i); size != "" {
		out = append(out, size)
	}
	if where := d.stopped(i); where != "" {
		out = append(out, where)
	}
	return append(out, d.figures(), d.off())
}

// size is how large a fault is in this plan; empty where the row says it.
func (d *Drill) size(i int) string {
	f, sizes := d.r.Faults[i], d.p.Faults
	if f.Own {
		own := 0 // rows before it
		for _, other := range d.r.Faults[:i] {
			if other.Own {
				own++
			}
		}
		way := d.say.TallerThanNominal()
		by := sizes.Other[own].Height
		if by < 0 {
			way = d.say.ShorterThanNominal()
		}
		return d.say.StandsBy(math.Abs(by), way)
	}
	return d.say.FaultSize(d.p, f)
}

// stopped says where the ram would be stopped, or where it would meet what comes
// too early; empty where nothing does.
func (d *Drill) stopped(i int) string {
	f := d.r.Faults[i]
	if words.RefusedFirst(f) {
		return "" // no push, and where the probe ends would tell the answer
	}
	if f.Reading != nil {
		return d.say.RamWouldStopAt(d.at(*f.Reading))
	}
	if c, ok := d.r.CourseOf(i); ok && c.Early && c.Touch != nil {
		return d.say.ToolWouldMeetAt(*c.Touch, d.s.Start)
	}
	return ""
}

// off says how far a reading may be off.
func (d *Drill) off() string { return d.say.ReadingUnsure(d.unsure()) }

// Reordered is an exercise with its choices in another order, for who is asked
// again: an answer is not to be known by its place.
func (e Exercise) Reordered(seed uint64, times int) Exercise {
	rng := random(seed+uint64(times), "again "+e.Key)
	e.Choices = shuffled(rng, slices.Clone(e.Choices))
	return e
}
