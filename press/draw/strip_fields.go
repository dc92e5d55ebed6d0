package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
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
func (f fate) ink() canvas.Ink {
	return [...]canvas.Ink{fateGood: canvas.Good, fateLong: canvas.Long, fateShort: canvas.Short, fateFault: canvas.Black}[f]
}

func (f fate) hatch() canvas.Hatch {
	return [...]canvas.Hatch{fateGood: canvas.NoHatch, fateLong: canvas.RisingHatch, fateShort: canvas.FallingHatch, fateFault: canvas.CrossHatch}[f]
}

// tint is how much of its ink fills the fields of a fate.
func (f fate) tint() float64 {
	if f == fateFault {
		return canvas.QuietTint / 2
	}
	return canvas.FillTint
}

// hatchInk is the ink of its hatch.
func (f fate) hatchInk() canvas.Ink {
	if f == fateFault {
		return f.ink().Tint(0.4)
	}
	return f.ink().Tint(0.75)
}

// swatch fills a rectangle the way a fate is drawn everywhere.
func swatch(p *canvas.Pen, f fate, r canvas.Rectangle) {
	p.Fill(f.ink().Tint(f.tint()), r)
	p.Hatch(f.hatchInk(), f.hatch(), r)
}
