package view

import (
	"math"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/words"
	"ramplan/web/page"
)

// onRun is what lies over the drawing of the run; nil where it has no places.
func (w writer) onRun(d draw.RunPlaces) *page.OnRun {
	if len(d.Steps) == 0 {
		return nil
	}
	out := &page.OnRun{Box: "0 0 " + plain(d.Width) + " " + plain(d.Height), Top: plain(d.Top), Height: plain(d.Bottom - d.Top)}
	for _, s := range d.Steps {
		out.Steps = append(out.Steps, page.RunGround{
			ID: "run-step-" + strconv.Itoa(s.Step), Link: w.places.link(rowPath(stepRows, s.Step)), Left: plain(s.From), Width: plain(s.To - s.From),
			Name: words.UpperFirst(words.Step(w.p, s.Step)),
		})
	}
	switch h := w.p.Sequence.Hold; {
	case h == nil:
		if _, _, found := heldFirst(w.p, w.r); found {
			out.Start = &page.Start{Do: DoHold, Label: say.TryAHold()}
		}
	case len(d.Held) > 1:
		out.Hold, out.Hint = w.runHold(d.Held, h.At), say.DragTheSquare()
	}
	return out
}

func (w writer) runHold(way []draw.RunSpot, at float64) *page.RunHold {
	var places []string
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range way {
		places = append(places, plain(round2(q.X))+" "+plain(round2(q.Y))+" "+plain(q.At))
		low, high = min(low, q.At), max(high, q.At)
	}
	return &page.RunHold{
		Way: strings.Join(places, " "), Field: holdAt, Step: plain(w.p.Station.PositionStep),
		Low: plain(low), High: plain(high), At: plain(at), Name: say.HoldInputGoesOff(), Decimals: strconv.Itoa(w.pos.Decimals()),
	}
}

func round2(x float64) float64 { return math.Round(x*100) / 100 }

// DoHold is the command that begins a hold case.
const DoHold = "hold"

// holdAt is the position of the hold case.
const holdAt = "sequence.hold.at"

// heldFirst is a hold case to start from: in the longest move or shift, half way.
func heldFirst(p *press.Plan, r *press.Result) (step int, at float64, found bool) {
	most := p.Station.PositionStep
	for _, s := range r.Sequence.Steps {
		way := math.Abs(s.End[1] - s.Start[1])
		if (s.Kind == press.StepMove || s.Kind == press.StepShift) && s.Pass == 1 && way > most {
			most, step, found = way, s.Step, true
			at = math.Round((s.Start[1]+s.End[1])/2/p.Station.PositionStep) * p.Station.PositionStep
		}
	}
	return step, at, found
}

// Hold begins a hold case; false where no step can be held in.
func Hold(t Typed) (Typed, bool) {
	p, _ := t.Draft.Check()
	if p == nil || p.Sequence == nil || p.Sequence.Hold != nil {
		return t, false
	}
	r := press.Evaluate(p)
	if r.Sequence == nil {
		return t, false
	}
	step, at, found := heldFirst(p, r)
	if !found {
		return t, false
	}
	t.Draft.Set(holdStep, strconv.Itoa(step))
	t.Draft.Set(holdAt, words.Trimmed(at, 6))
	t.Draft.Set("sequence.hold.time", "1")
	return t, true
}
