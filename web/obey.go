package web

import (
	"net/http"
	"strconv"
	"strings"

	"ramplan/press/words"
	"ramplan/web/page"
	"ramplan/web/view"
)

// verb is the first word of what the pressed button wants.
func (p *posted) verb() string {
	verb, _, _ := strings.Cut(p.do, " ")
	return verb
}

// shown tells whether the entries that were sent are those that are shown.
func (p *posted) shown() bool {
	switch p.verb() {
	case "undo", "redo", "ram", "go", "copy", "bin":
		return false
	}
	return true
}

// rest is what follows the verb.
func (p *posted) rest() string {
	_, rest, _ := strings.Cut(p.do, " ")
	return rest
}

// obey does what the pressed button wants of the entries.
func (p *posted) obey() (*bench, error) {
	b := &bench{typed: p.typed, window: p.window, growth: p.growth}
	if p.paste != "" { // typed and not read yet
		b.paste = &page.Paste{Text: p.paste, Do: view.DoPaste, Open: true}
	}
	what, rest, _ := strings.Cut(p.do, " ")
	switch what {
	case "", "recompute", "undo", "redo", "go", "copy", "bin", "choose", "ram":
		return b, nil
	case "paste":
		p.pasteInto(b)
		return b, nil
	case "swap", "hundredfold", "sort":
		mended, said, ok := view.MendCurve(b.typed, p.do)
		if !ok {
			return nil, unknownCommand(p.do)
		}
		b.typed, b.doubts = mended, view.CurveDoubts(mended)
		b.say(said)
		return b, nil
	case view.DoGrowth:
		filled, said, faults := view.Grow(b.typed, p.growth)
		if len(faults) > 0 {
			b.growth.Faults, b.refused = faults, true
			return b, nil
		}
		b.typed, b.growth = filled, view.Growth{}
		b.say(said)
		return b, nil
	case view.DoRule, view.DoTry:
		take := view.Choose
		if what == view.DoTry {
			take = view.Try
		}
		taken, said, ok := take(b.typed, rest)
		if !ok {
			b.notices = append(b.notices, page.Notice{Kind: "refused", Text: words.Printer{}.NotTried()})
			b.refused = true
			return b, nil
		}
		b.typed = taken
		b.notices = append(b.notices, page.Notice{Kind: "done", Text: said, Back: true})
		return b, nil
	case "unshelve":
		b.typed = view.Unshelve(b.typed)
		return b, nil
	case "forget":
		n, _ := strconv.Atoi(rest)
		b.typed = view.Forget(b.typed, n)
		return b, nil
	case view.DoSteps:
		filled, said, ok := view.Steps(b.typed, rest)
		if !ok {
			return nil, unknownCommand(p.do)
		}
		b.typed = filled
		if said != "" {
			b.say(said)
		}
		return b, nil
	case view.DoProbeStep:
		changed, ok := view.ProbeStep(b.typed, rest)
		if !ok {
			return nil, unknownCommand(p.do)
		}
		b.typed = changed
		return b, nil
	case view.DoZone:
		row, err := strconv.Atoi(rest)
		if err != nil {
			return nil, unknownCommand(p.do)
		}
		moved, said, ok := view.MoveZone(b.typed, row)
		if !ok {
			b.refused = true
			b.say(say.NoZoneMoved())
			return b, nil
		}
		b.typed = moved
		b.notices = append(b.notices, page.Notice{Kind: "done", Text: said, Back: true})
		return b, nil
	case view.DoHold:
		held, ok := view.Hold(b.typed)
		if !ok {
			b.refused = true
			b.say(say.NoHoldBegun())
			return b, nil
		}
		b.typed = held
		return b, nil
	case "add", "remove", "repeat", "up", "down":
		base, digits, _ := strings.Cut(rest, " ")
		row, err := strconv.Atoi(digits)
		if err != nil && what != "add" {
			return nil, unknownCommand(p.do)
		}
		moved, ok := view.Move(b.typed, what, base, row)
		if !ok {
			return nil, unknownCommand(p.do)
		}
		if what == "remove" {
			b.say(say.RowRemoved(view.RowName(base, row)))
			if base == "sequence.steps" && view.HeldIn(b.typed, row) {
				b.say(view.HoldLost())
			}
		}
		b.typed = moved
		return b, nil
	}
	return nil, unknownCommand(p.do)
}

func unknownCommand(do string) error {
	if len(do) > 60 {
		do = do[:60] + " …"
	}
	return refusal{http.StatusBadRequest, say.FormAsksUnknown(strings.ToValidUTF8(do, "\uFFFD")), []string{say.PressAgain()}}
}

// say tells on the page what was done.
func (b *bench) say(text string) {
	b.notices = append(b.notices, page.Notice{Kind: "done", Text: text})
}
