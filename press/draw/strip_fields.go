package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
)

// fieldsOf cuts the readings, from before the approach end to past the push end,
// into stretches with one state of the signals.
func fieldsOf(r *press.Result) []field {
	v := r.Verdict
	if v == nil {
		return nil
	}
	begin := r.Travel.ApproachEnd
	out := []field{{from: math.Inf(-1), to: begin, early: true, verdict: press.EarlyContact, fate: fateFault}}
	for _, s := range v.Segments {
		if last := &out[len(out)-1]; !last.early && last.arrival == s.Arrival && last.zone == s.Zone {
			last.to = s.To
			continue
		}
		out = append(out, newField(v, s.From, s.To, s.Arrival, s.Zone))
	}
	rest := newField(v, math.Max(out[len(out)-1].to, v.End.Position), math.Inf(1), false, v.End.Zone)
	rest.past = true
	return append(out, rest)
}

func newField(v *press.Verdict, from, to float64, arrival, zone bool) field {
	list := v.Table.Words(arrival, zone)
	f := field{from: from, to: to, arrival: arrival, zone: zone, verdict: words.SayAll(list), fate: fateFault}
	if len(list) == 0 {
		f.verdict = press.FaultWord
		return f
	}
	if v.Table.Contradicts(arrival, zone) {
		return f
	}
	if f.fate = fateOfWord(list[0]); f.fate == fateGood && len(list) > 1 { // settled by another check
		f.verdict = words.GoodIfThere
	}
	return f
}

func fateOfWord(word string) fate {
	switch word {
	case press.Good:
		return fateGood
	case press.Long:
		return fateLong
	case press.Short:
		return fateShort
	}
	return fateFault
}

// inks and hatches of the fates.
func (f fate) ink() ink {
	return [...]ink{fateGood: good, fateLong: long, fateShort: short, fateFault: black}[f]
}

func (f fate) hatch() hatch {
	return [...]hatch{fateGood: noHatch, fateLong: risingHatch, fateShort: fallingHatch, fateFault: crossHatch}[f]
}

// tint is how much of its ink fills the fields of a fate.
func (f fate) tint() float64 {
	if f == fateFault {
		return quietTint / 2
	}
	return fillTint
}

// hatchInk is the ink of its hatch.
func (f fate) hatchInk() ink {
	if f == fateFault {
		return f.ink().tint(0.4)
	}
	return f.ink().tint(0.75)
}

// swatch fills a rectangle the way a fate is drawn everywhere.
func (p *pen) swatch(f fate, r rect) {
	p.fill(f.ink().tint(f.tint()), r)
	p.hatch(f.hatchInk(), f.hatch(), r)
}
