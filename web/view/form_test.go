package view

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// inputs gives every field of a form by its name.
func inputs(f page.Form) map[string]page.Field {
	out := map[string]page.Field{}
	for _, s := range f.Sections {
		for _, g := range s.Groups {
			for _, field := range g.Fields {
				out[field.Name] = field
			}
			if g.Rows != nil {
				for _, r := range g.Rows.Rows {
					for _, field := range r.Fields {
						out[field.Name] = field
					}
				}
			}
		}
	}
	return out
}

// withRows is a draft of one kind of joint with one empty row in every list.
func withRows(kind string) Typed {
	t := Take([]press.Entry{{Path: "joint.kind", Text: kind}}, nil)
	for _, base := range []string{"parts", "ram.curve.points", "faults.other", "quality.reactions", "controller.words", "sequence.steps"} {
		t, _ = Move(t, "add", base, 0)
	}
	t.Draft.Set("probe.use", "true")
	for i, kind := range stepKinds {
		t.Draft.Set(fmt.Sprintf("sequence.steps[%d].kind", i), kind)
	}
	return t
}

var stepKinds = []string{press.StepMove, press.StepShift, press.StepWait, press.StepProbe, press.StepPress}

// TestStepsShowTheirOwnFields: a row has the entries of its kind of step and no others,
// but what is typed in one of another kind is shown, so that it can be taken away. A probe
// that is not in use asks for nothing but that.
func TestStepsShowTheirOwnFields(t *testing.T) {
	typed := withRows(press.Touch)
	got := inputs(newForm(typed, nil).page())
	for i := range press.Fields {
		field := &press.Fields[i]
		if !strings.HasPrefix(field.Path, "sequence.steps[].") {
			continue
		}
		for row, kind := range stepKinds {
			_, there := got[press.RowPath(field.Path, row)]
			assert.Equal(t, field.Steps == nil || slices.Contains(field.Steps, kind), there, "%s of a %s", field.Path, kind)
		}
	}
	typed.Draft.Set("sequence.steps[0].time", "2")
	assert.Contains(t, inputs(newForm(typed, nil).page()), "sequence.steps[0].time")

	empty := inputs(newForm(Typed{}, nil).page())
	assert.Contains(t, empty, "probe.use")
	for name := range empty {
		assert.True(t, name == "probe.use" || !strings.HasPrefix(name, "probe.") && !strings.HasPrefix(name, "sequence."), name)
	}
	assert.Contains(t, inputs(newForm(Take([]press.Entry{{Path: "probe.end", Text: "3"}}, nil), nil).page()), "probe.end")
}

// TestStepsForPeople: the step to hold in is picked by the number of its row, and what is
// kept counts from 0; no wait is offered, and a number that is no step is not lost. Choices
// say what they do.
func TestStepsForPeople(t *testing.T) {
	typed := withRows(press.Touch)
	typed, _ = Move(typed, "add", stepRows, 0)
	typed.Draft.Set("sequence.steps[0].name", "to the camera")
	typed.Draft.Set(holdStep, "1.0")
	chosen := func(f page.Field) (out page.Option) {
		for _, o := range f.Options {
			if o.Chosen {
				out = o
			}
		}
		return out
	}
	got := inputs(newForm(typed, nil).page())
	hold := got[holdStep]
	assert.Equal(t, page.Option{Value: "1", Label: "Step 2 shift", Chosen: true}, chosen(hold))
	assert.Contains(t, hold.Options, page.Option{Value: "0", Label: "Step 1 move, to the camera"})
	for _, o := range hold.Options {
		assert.NotContains(t, o.Label, "wait")
	}
	assert.Equal(t, "(goes on to its target)", chosen(got["sequence.steps[0].on_hold"]).Label)
	assert.Contains(t, got["sequence.relative_from"].Options, page.Option{Value: "target", Label: "where it was last sent to"})
	assert.Equal(t, "step 2", shownEntry(holdStep, "1", true))

	typed.Draft.Set(holdStep, "40")
	assert.Equal(t, page.Option{Value: "40", Label: `"40", counted from 0: no such step`, Chosen: true}, chosen(inputs(newForm(typed, nil).page())[holdStep]))
	typed.Draft.Set(holdStep, "")
	assert.Equal(t, page.Option{Label: "none", Chosen: true}, chosen(inputs(newForm(typed, nil).page())[holdStep]))
}

// TestPairFault: a zone that ends before it starts is told at both of its entries.
func TestPairFault(t *testing.T) {
	typed := withRows(press.Touch)
	typed.Draft.Set("window.zone_start", "120")
	typed.Draft.Set("window.zone_end", "115")
	got := inputs(newForm(typed, press.Problems{{Path: "window.zone_end", Code: press.CodeOrder, Message: "found 115"}}).page())
	assert.Equal(t, []string{"less than the 115 of “Zone end” is needed"}, got["window.zone_start"].Messages)
	assert.Equal(t, []string{"found 115"}, got["window.zone_end"].Messages)
	assert.Empty(t, inputs(newForm(typed, nil).page())["window.zone_start"].Messages)
}

// TestStepsFromATemplate: each fills the steps from the entries of the plan, with the
// probe that is in use, and a copied step stands behind its original.
func TestStepsFromATemplate(t *testing.T) {
	for _, m := range templates {
		p, _ := evaluated(t, example(t))
		typed := Take(p.Draft().Entries, nil)
		typed, said, ok := Steps(typed, m.name)
		require.True(t, ok)
		home := ""
		for _, e := range typed.Draft.Entries {
			if strings.HasPrefix(e.Path, "sequence.steps[") && strings.HasSuffix(e.Path, ".to") {
				home = e.Text
			}
		}
		assert.Equal(t, words.Exact(p.Station.Home), home, m.name)
		_, faults := typed.Draft.Check()
		assert.Empty(t, faults, m.name)
		if m.name != "plain" { // 30 mm before the contact at 108.60 mm (derived)
			over, _ := typed.Draft.Get("sequence.steps[0].to")
			if over == "" {
				over, _ = typed.Draft.Get("sequence.steps[1].to")
			}
			assert.Equal(t, "78.6", over, m.name)
			assert.Contains(t, said, "30\u202fmm before the first contact of the nominal part, at 78.6\u202fmm")
		}

		typed.Draft.Entries = slices.DeleteFunc(typed.Draft.Entries, func(e press.Entry) bool { return e.Path == "requirement.height_low" })
		typed, said, _ = Steps(typed, m.name) // no plan yet: left for the planner
		_, faults = typed.Draft.Check()
		for _, fault := range faults {
			assert.Equal(t, press.CodeRequired, fault.Code, "%s: %v", m.name, fault)
		}
		if m.name != "plain" {
			assert.Contains(t, said, "left open")
		}
	}
	typed, _, _ := Steps(Take([]press.Entry{{Path: "probe.use", Text: "true"}}, nil), "plain")
	kinds := func() string {
		var out []string
		for i := range rowsIn(typed.Draft.Entries, "sequence.steps") {
			out = append(out, newForm(typed, nil).text[fmt.Sprintf("sequence.steps[%d].kind", i)])
		}
		return strings.Join(out, " ")
	}
	assert.Equal(t, "probe press move", kinds())
	typed, ok := Move(typed, "repeat", "sequence.steps", 2)
	require.True(t, ok)
	assert.Equal(t, "probe press move move", kinds())
	_, _, ok = Steps(typed, "nothing")
	assert.False(t, ok)
}

// TestProbeAndStepsGoTogether: a probe that is taken into use with steps already there is
// offered its step, before the press, and one that is given up is offered to go; the hold
// case stays with its step.
func TestProbeAndStepsGoTogether(t *testing.T) {
	p, _ := evaluated(t, example(t))
	typed, _, _ := Steps(Take(p.Draft().Entries, nil), "picture") // move, wait, press, move
	offered := func() []page.Start { return newForm(typed, nil).starts(stepRows) }
	assert.Empty(t, offered())
	typed.Draft.Set("probe.use", "true")
	typed.Draft.Set(holdStep, "3")
	typed.Draft.Set("sequence.hold.at", "50")
	typed.Draft.Set("sequence.hold.time", "1")
	require.Len(t, offered(), 1)
	typed, ok := ProbeStep(typed, strings.TrimPrefix(offered()[0].Do, DoProbeStep+" "))
	require.True(t, ok)
	kind, _ := typed.Draft.Get("sequence.steps[2].kind")
	assert.Equal(t, press.StepProbe, kind)
	held, _ := typed.Draft.Get(holdStep)
	assert.Equal(t, "4", held, "the way home")
	_, faults := typed.Draft.Check()
	assert.Empty(t, faults)
	assert.Empty(t, offered())
	_, ok = ProbeStep(typed, probeIn)
	assert.False(t, ok, "there is one")

	typed.Draft.Set("probe.use", "false")
	require.Len(t, offered(), 1)
	typed, ok = ProbeStep(typed, strings.TrimPrefix(offered()[0].Do, DoProbeStep+" "))
	require.True(t, ok)
	_, faults = typed.Draft.Check()
	assert.Empty(t, faults)
	held, _ = typed.Draft.Get(holdStep)
	assert.Equal(t, "3", held)
}

// TestEveryField wants every field of the table on the page, once, for the kinds
// of joint that have it and for no other, with what the table says of it.
func TestEveryField(t *testing.T) {
	for _, kind := range []string{press.Touch, press.Measured, press.Interference, ""} {
		typed := withRows(kind)
		_, faults := typed.Draft.Check()
		f := newForm(typed, faults)
		got := inputs(f.page())
		for i := range press.Fields {
			field := &press.Fields[i]
			if field.Kind == press.Rows {
				continue
			}
			name := press.RowPath(field.Path, 0)
			if field.Steps != nil {
				name = press.RowPath(field.Path, slices.Index(stepKinds, field.Steps[0]))
			}
			in, there := got[name]
			if isShelfField(field) {
				assert.False(t, there, "%s is carried along and not typed", name)
				continue
			}
			delete(got, name)
			if !assert.Equal(t, field.For == nil || slices.Contains(field.For, kind), there, "%s, joint %q", name, kind) || !there {
				continue
			}
			assert.Equal(t, field.Label, in.Label)
			assert.Equal(t, field.Unit, in.Unit)
			assert.True(t, strings.HasPrefix(in.Help, field.Help))
			assert.Equal(t, field.Required, in.Required)
			assert.Equal(t, faults.At(name), in.Messages, name)
			if field.Kind == press.Number && in.Kind == "number" { // a step is picked by its row
				assert.Contains(t, strings.ToLower(in.Range), strings.ToLower(field.Range()))
			}
			if field.Derived != "" {
				assert.Contains(t, in.StandIn+in.Help, field.Derived, "what stands in is said")
			}
			assert.Equal(t, "#"+in.ID, f.places.link(name))
		}
		for name := range got { // of the further steps
			if strings.HasPrefix(name, "sequence.steps[") {
				delete(got, name)
			}
		}
		assert.Empty(t, got, "inputs without a field")
	}
}

// TestFaultsHavePlaces wants every fault of an empty draft to lead somewhere.
func TestFaultsHavePlaces(t *testing.T) {
	for _, kind := range []string{press.Touch, press.Measured, press.Interference, "", "welded"} {
		typed := withRows(kind)
		_, faults := typed.Draft.Check()
		require.NotEmpty(t, faults)
		f := newForm(typed, faults)
		f.page()
		for _, fault := range f.list() {
			assert.NotEmpty(t, fault.Link, fault)
			assert.NotEmpty(t, fault.Where)
		}
	}
}

func TestLabel(t *testing.T) {
	for path, want := range map[string]string{
		"station.nest":            "Station: nest",
		"parts[1].plus":           "Plus, part 2",
		"ram.curve.points[0][1]":  "Force, point 1",
		"parts[4]":                "Part 5",
		"window":                  "Window",
		"joint.hole[0]":           "Joint: hole, lower deviation",
		"faults.other[0].height":  "Taller by, fault 1",
		"nothing.like.it":         "nothing.like.it",
		"motion.approach_speed":   "Motion: approach speed",
		"ram.curve.interpolation": "Ram: between the points",
	} {
		assert.Equal(t, want, label(path))
	}
}

func TestStandIn(t *testing.T) {
	f := newForm(Take([]press.Entry{{Path: "joint.kind", Text: press.Interference}}, nil), nil)
	got := inputs(f.page())
	assert.Equal(t, "0.02", got["ram.repeatability"].StandIn)
	assert.Equal(t, "proposed", got["window.setting"].StandIn)
	assert.Empty(t, got["joint.pilot"].StandIn)
	assert.Contains(t, got["joint.pilot"].Help, "Left empty: press-in travel less engaged length.")
	assert.Equal(t, "down (not given)", got["ram.direction"].Options[0].Label)
	assert.True(t, got["ram.direction"].Options[0].Chosen)
}

// TestCarried holds Carry and Carried to each other.
func TestCarried(t *testing.T) {
	for _, e := range []press.Entry{{}, {Path: "a", Text: "b"}, {Path: "\"\n<", Text: "\x00]"}} {
		got, ok := Carried(Carry(e))
		assert.True(t, ok)
		assert.Equal(t, e, got)
	}
	for _, bad := range []string{"", "x", "{}", `["a"`, `[1,2]`} {
		_, ok := Carried(bad)
		assert.False(t, ok, bad)
	}
}

// TestTakenTwice: of two entries for one field of another kind of joint neither is
// lost, however often the form comes back, and both are there again with their
// kind: one in its field, the other named beside.
func TestTakenTwice(t *testing.T) {
	const path = "joint.diameter"
	twice := []press.Entry{{Path: path, Text: "12"}, {Path: path, Text: "13"}}
	typed := Take(append([]press.Entry{{Path: "joint.kind", Text: "touch"}}, twice...), nil)
	for range 3 {
		require.Equal(t, twice, typed.Parked)
		require.Len(t, typed.Draft.Entries, 1, "the form has no place for them")
		assert.Contains(t, newForm(typed, nil).parked(), "2 entries")
		typed = Take(typed.Draft.Entries, typed.Parked)
	}
	assert.Equal(t, typed, Take(typed.All().Entries, nil), "a saved draft brings both back")
	typed = Take([]press.Entry{{Path: "joint.kind", Text: "interference"}}, typed.Parked)
	assert.Empty(t, typed.Parked)
	form := newForm(typed, nil)
	assert.Equal(t, "12", inputs(form.page())[path].Value)
	others := form.others()
	require.Len(t, others, 1)
	assert.Equal(t, "13", others[0].Text)

	typed = Take([]press.Entry{{Path: "joint.kind", Text: "touch"}, {Path: path, Text: "14"}}, twice)
	assert.Equal(t, []press.Entry{{Path: path, Text: "14"}}, typed.Parked, "what was typed since is newer")
}

// TestMissing: what is only not given keeps its help and is marked; a fault of
// another kind in an empty field is none of these.
func TestMissing(t *testing.T) {
	faults := press.Problems{
		{Path: "station.nest", Code: press.CodeRequired, Message: "not given; a number in mm is needed"},
		{Path: "joint.fit", Code: press.CodeConflict, Message: "give one"},
		{Path: "ram.stroke", Code: press.CodeRequired, Message: "not given"},
		{Path: "ram.stroke", Code: press.CodeConflict, Message: "and more"},
		{Path: "parts[0].nominal", Code: press.CodeRequired, Message: "not given"},
	}
	typed := withRows(press.Interference)
	got := inputs(newForm(typed, faults).page())
	for name, want := range map[string]bool{"station.nest": true, "joint.fit": false, "ram.stroke": false, "parts[0].nominal": true, "ram.moving_mass": false} {
		assert.Equal(t, want, got[name].Missing, name)
	}
	assert.Empty(t, got["station.nest"].Why, "it always is")
	assert.Equal(t, "needed", got["parts[0].nominal"].StandIn)
	entries := []press.Entry{{Path: "joint.kind", Text: press.Interference}, {Path: "joint.hole[0]", Text: "0"}, {Path: "joint.hole[1]", Text: "21"}}
	typed = Take(entries, nil)
	_, faults = typed.Draft.Check()
	shaft := inputs(newForm(typed, faults).page())["joint.shaft[1]"]
	assert.True(t, shaft.Missing)
	assert.Equal(t, "Hole and shaft deviations belong together.", shaft.Why, "what makes it needed is said")
	assert.Empty(t, got["station.nest"].StandIn, "a mark stands beside its label")
}

// TestIdleSigmas: the standard deviations of a part are shown as used with the
// shape normal alone; what is typed there stays.
func TestIdleSigmas(t *testing.T) {
	draft := func(shape, sigmas string) page.Field {
		typed := Take([]press.Entry{{Path: "parts[0].shape", Text: shape}, {Path: "parts[0].sigmas", Text: sigmas}}, nil)
		return inputs(newForm(typed, nil).page())["parts[0].sigmas"]
	}
	assert.Equal(t, "if normal", draft("", "").StandIn)
	assert.Empty(t, draft(press.Uniform, "").ReadAs)
	idle := draft(press.Uniform, "4")
	assert.True(t, idle.Idle)
	assert.Equal(t, "4", idle.Value)
	assert.Equal(t, "used with normal only", idle.ReadAs)
	used := draft(press.Normal, "")
	assert.False(t, used.Idle)
	assert.Equal(t, "3", used.StandIn)
	assert.Empty(t, draft(press.Normal, "4").ReadAs)
}

// TestStanding: faults and what is still needed are told beside each other.
func TestStanding(t *testing.T) {
	need := press.Problem{Path: "ram.stroke", Code: press.CodeRequired, Message: "not given; a number is needed"}
	wrong := press.Problem{Path: "ram.curve.points[1][0]", Code: press.CodeOrder, Message: "found 1"}
	for _, c := range []struct {
		faults press.Problems
		said   string
		wrong  bool
	}{
		{nil, "", false},
		{press.Problems{need}, "1 needed", false},
		{press.Problems{wrong}, "1 fault", true},
		{press.Problems{wrong, need, need, wrong, {Path: "rams", Code: press.CodeRange}}, "2 faults, 2 needed", true},
	} {
		said, isWrong := newForm(Typed{}, c.faults).standing("ram")
		assert.Equal(t, c.said, said)
		assert.Equal(t, c.wrong, isWrong)
	}
}

// TestListNeeded: a list that was not given is needed, and no more wrong than an
// empty field; one that is too short is wrong.
func TestListNeeded(t *testing.T) {
	rows := func(entries ...press.Entry) *page.Rows {
		typed := Take(entries, nil)
		_, faults := typed.Draft.Check()
		for _, s := range newForm(typed, faults).page().Sections {
			for _, g := range s.Groups {
				if g.Rows != nil && g.Rows.Path == "ram.curve.points" {
					return g.Rows
				}
			}
		}
		return nil
	}
	got := rows()
	assert.Equal(t, "A list of 2 to 500 rows is needed.", got.Need)
	assert.Empty(t, got.Messages)
	got = rows(press.Entry{Path: "ram.curve.points[0][0]", Text: "10"}, press.Entry{Path: "ram.curve.points[0][1]", Text: "95"})
	assert.Empty(t, got.Need)
	assert.Equal(t, []string{"found 1 row; a list of 2 to 500 rows is needed"}, got.Messages)
}

// TestStatedBeforehand: what is worked out once of the fields is what each would be worked
// out to be, also after forms were made from it.
func TestStatedBeforehand(t *testing.T) {
	for _, kind := range []string{press.Touch, press.Measured, press.Interference} {
		typed := withRows(kind)
		_, faults := typed.Draft.Check()
		newForm(typed, faults).page()
	}
	for i := range press.Fields {
		f := &press.Fields[i]
		assert.Equal(t, statedOf(f), stated().fields[f], f.Path)
		if f.Kind == press.Rows {
			assert.Equal(t, findColumns(f.Path), columnsOf(f.Path))
			assert.Equal(t, headsOf(findColumns(f.Path)), stated().heads[f.Path])
		}
	}
	for i, s := range press.Sections {
		assert.Equal(t, statedIn(s), stated().sections[i])
	}
}
