package view

import (
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words/screen"
	"ramplan/web/page"
)

// stepRows are the steps of the ram's cycle.
const stepRows = "sequence.steps"

// stepHas tells whether a row shows a field: one of some kinds of step only stands in a
// row of these, and where something is typed in it, so that it can be taken away.
func (f *form) stepHas(c *press.Field, i int) bool {
	if c.Steps == nil {
		return true
	}
	if f.text[press.RowPath(c.Path, i)] != "" {
		return true
	}
	return slices.Contains(c.Steps, strings.TrimSpace(f.text[rowPath(stepRows, i)+".kind"]))
}

// opened tells whether the entries of a section are asked for: of a probe only whether
// there is one until there is, of a sequence only its steps until it has some.
func (f *form) opened(section string) bool {
	switch section {
	case "probe":
		return f.probing() || f.typedIn(section, "probe.use")
	case "sequence":
		return f.count[stepRows] > 0 || f.typedIn(section, stepRows)
	}
	return true
}

// opens tells whether a field opens its section.
func opens(f *press.Field) bool { return f.Path == "probe.use" || f.Path == stepRows }

func (f *form) probing() bool { return strings.TrimSpace(f.text["probe.use"]) == "true" }

// typedIn tells whether anything in a section has a text, one field left aside.
func (f *form) typedIn(section, but string) bool {
	for path, text := range f.text {
		if text != "" && path != section && within(path, section) && !within(path, but) {
			return true
		}
	}
	return false
}

// A template is a sequence to start from.
type template struct {
	name  string
	label func(screen.Words) string
	steps func(text func(path, otherwise string) string) [][]string // key and text in turn

	over float64 // mm over what is done over the part, that it needs beside
}

// templates fill the steps from the plan's own entries: home, the speeds, and a place on
// the way. Figures that no entry gives are left open, for the planner to fill in.
var templates = []template{
	{name: "plain", label: screen.Words.PlainCycle, steps: func(t func(string, string) string) [][]string {
		return [][]string{push(), home(t)}
	}},
	{name: "picture", label: screen.Words.PictureOnTheWay, steps: func(t func(string, string) string) [][]string {
		return [][]string{{"kind", "move", "name", say.ToThePicture(), "to", t(overThePartKey, "")}, {"kind", "wait", "name", "picture", "time", "0.2"}, push(), home(t)}
	}},
	{name: "stack", label: screen.Words.StackShakenOn, over: overThePart, steps: func(t func(string, string) string) [][]string {
		return [][]string{push(), {"kind", "move", "name", say.ClearOfThePart(), "to", t(overThePartKey, "")}, {"kind", "shift", "name", say.ShakeTheStackOn(), "by", "-10", "times", "3", "pause", "0.1"}, home(t)}
	}},
	{name: "two", label: screen.Words.TwoSpeeds, steps: func(t func(string, string) string) [][]string {
		return [][]string{{"kind", "move", "name", "fast", "to", t(overThePartKey, ""), "hand_over", "true"}, push(), {"kind", "move", "name", say.OffThePartGently(), "to", t(overThePartKey, ""), "speed", t("motion.slow_speed", ""), "hand_over", "true"}, home(t)}
	}},
}

func push() []string { return []string{"kind", "press"} }

func home(t func(string, string) string) []string {
	return []string{"kind", "move", "name", "home", "to", t("station.home", "0"), "speed", t("motion.retract_speed", "")}
}

// overThePartKey is no entry: the place over the part that a template asks for.
const overThePartKey = "overthepart"

// DoSteps starts the command that fills the steps from a template.
const DoSteps = "steps"

// Steps puts the steps of a template in place of those that are there, and says where it
// placed what is done over the part. A probe that is in use comes before the press.
func Steps(t Typed, name string) (filled Typed, said string, ok bool) {
	i := slices.IndexFunc(templates, func(m template) bool { return m.name == name })
	if i < 0 {
		return t, "", false
	}
	over := overPart(t, templates[i].over)
	typed := func(path, otherwise string) string {
		if path == overThePartKey {
			return over
		}
		for _, e := range t.Draft.Entries {
			if e.Path == path && strings.TrimSpace(e.Text) != "" {
				return e.Text
			}
		}
		return otherwise
	}
	rows := templates[i].steps(typed)
	if strings.TrimSpace(typed("probe.use", "")) == "true" {
		at := slices.IndexFunc(rows, func(s []string) bool { return s[1] == press.StepPress })
		rows = slices.Insert(rows, at, []string{"kind", press.StepProbe})
	}
	out := reordered(t.Draft.Entries, stepRows, nil)
	for row, s := range rows {
		for k := 0; k+1 < len(s); k += 2 {
			if s[k+1] != "" {
				out = append(out, press.Entry{Path: rowPath(stepRows, row) + "." + s[k], Text: s[k+1]})
			}
		}
	}
	t.Draft.Entries = out
	switch {
	case name == "plain":
	case over != "":
		said = say.OverThePart(overThePart, over)
	default:
		said = say.OverThePartOpen()
	}
	return t, said, true
}

// starts are the buttons of the templates, while there are no steps, and of what the steps
// lack of the probe.
func (f *form) starts(base string) []page.Start {
	if base != stepRows {
		return nil
	}
	if f.count[base] > 0 {
		return f.probeStep()
	}
	var out []page.Start
	for _, m := range templates {
		out = append(out, page.Start{Do: DoSteps + " " + m.name, Label: m.label(say)})
	}
	return out
}
