package view

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/drill"
	"ramplan/press/words"
	"ramplan/web/page"
)

// Lamps is the page that tells what two lamps mean; typed is what stands in its
// form, by name.
func (v Drill) Lamps(h page.DrillHead, typed func(string) string) page.LampsPage {
	out := page.LampsPage{DrillHead: h, When: say.WhenReadIn(v.R), Arrival: typed("arrival"), Zone: typed("zone"), Reading: typed("reading")}
	when := words.One
	for _, s := range words.Situations {
		if string(s) == typed("when") {
			when = s
		}
	}
	for _, s := range words.Situations {
		out.Situations = append(out.Situations, page.Pick{Value: string(s), Text: s.Title(), Chosen: s == when})
	}
	first, chosen := v.looks(&out, typed("look"))
	if out.Arrival == "" && out.Zone == "" {
		return out
	}
	states := []string{"on", "off"}
	if !slices.Contains(states, out.Arrival) || !slices.Contains(states, out.Zone) {
		out.Trouble = say.SayBothLamps()
		return out
	}
	if !chosen {
		out.Trouble = say.SayWhichLook()
		return out
	}
	var reading *float64
	if text := strings.TrimSpace(out.Reading); text != "" {
		if x, ok := TypedLength(text); ok {
			reading = &x
		} else {
			out.ReadingFault = say.ReadingNotUnderstood()
		}
	}
	on := words.Pair{Arrival: out.Arrival == "on", Zone: out.Zone == "on"}
	if a, ok := drill.AtFirstLook(say.Printer, v.P, v.R, on, when); ok && first {
		out.ReadingFault = ""
		out.Advice = &page.LampsAdvice{
			Lamps: say.FirstLookShown(on), Verdict: words.UpperFirst(a.Verdict), Meaning: a.Meaning, Why: words.GoOnOnly, Part: a.Part, Checks: a.Checks, Note: a.Note,
		}
		return out
	}
	a, err := drill.AtStation(say.Printer, v.P, v.R, say.Reactions(v.P, v.R), on, when, reading)
	if err != nil {
		return out
	}
	out.Advice = &page.LampsAdvice{
		Lamps: words.UpperFirst(on.String()), Verdict: words.UpperFirst(a.Verdict), Meaning: a.Meaning, Why: a.Why, Height: a.Height,
		Doubt: a.Doubt, Edge: a.Edge, Part: a.Part, Checks: a.Checks, Note: a.Note,
	}
	if out.ReadingFault != "" {
		out.Advice.Alone = say.FromLampsAlone()
	}
	if a.Doubt != "" {
		if a.Verdict != press.FaultWord { // which no reading makes less of
			out.Advice.Verdict, out.Advice.Meaning = say.InDoubt(), say.ByLampsAlone(a.Verdict)
		}
		return out
	}
	if list := v.R.Verdict.Table.Words(on.Arrival, on.Zone); a.Clear && len(list) == 1 && list[0] != press.Missing {
		out.Advice.Fate = list[0]
	}
	return out
}

// looks lets it be said at which look the lamps were seen, where a plan has two; it tells
// whether the first one is chosen, and whether one is: none stands there by itself, as lamps
// of the one are another thing at the other.
func (v Drill) looks(out *page.LampsPage, typed string) (first, chosen bool) {
	if !words.TwoLooks(v.R) {
		return false, true
	}
	first, second := typed == firstLook, typed == secondLook
	if !first && !second {
		out.Looks = []page.Pick{{Text: say.WhichLook(), Chosen: true}}
	}
	out.Looks = append(out.Looks, page.Pick{Value: firstLook, Text: say.FirstLookIs(), Chosen: first}, page.Pick{Value: secondLook, Text: say.SecondLookIs(), Chosen: second})
	return first, first || second
}

// How an address names the two looks.
const firstLook, secondLook = "first", "second"

// NotInMotion says what of a plan's cycle the station in motion leaves out, and of a row
// of the catalogue that the push shown does not take place; row -1 is a part by its height.
func NotInMotion(r *press.Result, row int) string {
	s := say.StepsNotDrawn(r)
	if row >= 0 && words.RefusedFirst(r.Faults[row]) {
		s += say.OnlyWithoutProbe()
	}
	return s
}
