package press

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/strict"
)

// bases are plans that together hold every field of the table.
func bases(t *testing.T) []*Plan {
	t.Helper()
	full := example(t).Draft()
	for _, f := range Fields {
		if path := RowPath(f.Path, 0); f.Default != nil && f.For == nil && f.Steps == nil && !strings.HasPrefix(f.Path, "sequence.") {
			if _, given := full.Get(path); !given {
				full.Set(path, fmt.Sprint(f.Default))
			}
		}
	}
	for _, e := range []Entry{
		{"joint.pilot", "0.5"}, {"joint.smoothing_most", "0.8"}, {"joint.smoothing_least", "0.1"}, {"joint.hub.expansion", "2e-5"}, {"joint.insert.expansion", "1e-5"},
		{"joint.service_change[0]", "-5"}, {"joint.service_change[1]", "5"}, {"joint.stop", "shoulder"},
		{"ram.curve.taken", "down"}, {"parts[0].datum", "true"}, {"parts[0].datum_count", "1"},
		{"window.setting", "66"}, {"window.approach_end", "107"}, {"window.push_stroke", "8.19"}, {"window.zone_start", "115.08"}, {"window.zone_end", "115.35"},
		{"window.edge_margin", "0.16"}, {"faults.other[0].name", "own"}, {"faults.other[0].height", "0.1"}, {"faults.other[0].good", "true"},
		{"quality.reactions[0].lamps", "on-off"}, {"quality.reactions[0].check", "look"}, {"controller.words[0].setpoint", "setting"}, {"controller.words[0].name", "I max"},
	} {
		full.Set(e.Path, e.Text)
	}
	coded, ps := full.Check()
	require.Empty(t, ps)
	d := coded.Draft()
	d.dropJoint()
	for path, text := range map[string]string{"kind": Measured, "force_low": "10", "force_typical": "20", "force_high": "30"} {
		d.Set("joint."+path, text)
	}
	measured, ps := d.Check()
	require.Empty(t, ps)
	d = coded.Draft()
	d.Set("joint.hole[0]", "0")
	d.Set("joint.hole[1]", "18")
	d.Set("joint.shaft[0]", "33")
	d.Set("joint.shaft[1]", "44")
	kept := d.Entries[:0]
	for _, e := range d.Entries {
		if e.Path != "joint.fit" {
			kept = append(kept, e)
		}
	}
	d.Entries = kept
	deviations, ps := d.Check()
	require.Empty(t, ps)
	return []*Plan{coded, measured, deviations, stepped(t, coded)}
}

// stepped is a plan with every field of probe and sequence.
func stepped(t *testing.T, p *Plan) *Plan {
	full := p.Draft()
	for _, e := range []Entry{
		{"probe.use", "true"}, {"probe.setting", "12"}, {"probe.end", "115"}, {"probe.confirm_time", "0.1"}, {"probe.zone_live", "true"},
		{"sequence.relative_from", "actual"}, {"sequence.station_zone[0]", "0"}, {"sequence.station_zone[1]", "5"},
		{"sequence.hold.step", "0"}, {"sequence.hold.pass", "1"}, {"sequence.hold.at", "20"}, {"sequence.hold.time", "1"},
	} {
		full.Set(e.Path, e.Text)
	}
	step := func(i int, entries ...string) {
		for k := 0; k < len(entries); k += 2 {
			full.Set(stepPath(i, entries[k]), entries[k+1])
		}
	}
	going := []string{"speed", "100", "accel", "1000", "decel", "1000", "hand_over", "false", "on_hold", GoOn, "zone[0]", "1", "zone[1]", "2"}
	step(0, append([]string{"kind", StepMove, "name", "there", "to", "50"}, going...)...)
	step(1, append([]string{"kind", StepShift, "by", "3", "times", "2", "pause", "0.1"}, going...)...)
	step(2, "kind", StepWait, "time", "0.2")
	step(3, "kind", StepProbe)
	step(4, "kind", StepPress)
	out, ps := full.Check()
	require.Empty(t, ps)
	return out
}

// givenAt is the path at which a plan holds a field of the table, in whatever row.
func (p *Plan) givenAt(path string) (string, bool) {
	for row := range 4 {
		if at := RowPath(path, row); p.Given(at) {
			return at, true
		}
	}
	return "", false
}

// wrong lists texts that a field must refuse, with the JSON that says the same.
func (f *Field) wrong() map[string]string {
	quoted := func(s string) string { q, _ := json.Marshal(s); return string(q) }
	out := map[string]string{}
	number := func(x float64) { out[strict.PlainNumber(x)] = strict.PlainNumber(x) }
	switch f.Kind {
	case Number:
		out["here"] = quoted("here")
		out["1.2.3"] = quoted("1.2.3")
		out["NaN"] = quoted("NaN")
		out["-Inf"] = quoted("-Inf")
		out["0x10"] = quoted("0x10")
		out["1e10"] = "1e10"
		out["-1e10"] = "-1e10"
		out["1e400"] = "1e400"
		if f.Low != nil {
			number(f.Low.Value - 1)
			if f.Low.Open {
				number(f.Low.Value)
			}
		}
		if f.Whole {
			number(1.5)
		}
		if f.High != nil {
			number(f.High.Value + 1)
			if f.High.Open {
				number(f.High.Value)
			}
		}
	case Text:
		long := strings.Repeat("ü", f.MaxRunes+1)
		out[long] = quoted(long)
		if f.Required {
			out[" "] = quoted(" ")
		}
	case Choice:
		out["something"] = quoted("something")
		out[strings.ToUpper(f.Choices[0])] = quoted(strings.ToUpper(f.Choices[0]))
	case Flag:
		out["perhaps"] = quoted("perhaps")
	case Rows:
		out["many"] = quoted("many")
	}
	return out
}

// Typed into a field and written into a file, the same fault gives the same
// Problems: for every field its limits and a wrong type.
func TestFormAndFileSayTheSame(t *testing.T) {
	plans := bases(t)
	for i := range Fields {
		f := &Fields[i]
		tried := 0
		for _, p := range plans {
			path, given := p.givenAt(f.Path)
			if !given || p.Sequence != nil && !strict.Below(f.Path, "probe") && !strict.Below(f.Path, "sequence") { // the others have it
				continue
			}
			for typed, written := range f.wrong() {
				tried++
				d := p.Draft()
				if f.Kind == Rows {
					d.cut(path)
				}
				d.Set(path, typed)
				_, byForm := d.Check()
				_, byFile := Decode(p.replaced(t, path, written))
				name := fmt.Sprintf("%s = %s", path, strict.Clip(typed, 20))
				if assert.NotEmpty(t, byForm, name) {
					assert.Contains(t, byForm.Error(), path+": ", name)
				}
				assert.Equal(t, byForm, byFile, name)
			}
		}
		assert.Positive(t, tried, "%s is in none of the plans", f.Path)
	}
}

// cut takes the entries below a path out of a draft.
func (d *Draft) cut(path string) {
	kept := d.Entries[:0]
	for _, e := range d.Entries {
		if !strict.Below(e.Path, path) {
			kept = append(kept, e)
		}
	}
	d.Entries = kept
}

// replaced writes the plan with other JSON text at a path.
func (p *Plan) replaced(t *testing.T, path, written string) []byte {
	t.Helper()
	again, ps := Decode(p.JSON())
	require.Empty(t, ps)
	n := again.doc.At(path)
	require.NotNil(t, n, path)
	*n = strict.Node{Shape: strict.Number, Text: written}
	return again.JSON()
}

// What a field takes at its limits is taken.
func TestLimitsThemselvesAreTaken(t *testing.T) {
	for i := range Fields {
		f := &Fields[i]
		for _, end := range []*Limit{f.Low, f.High} {
			if end != nil {
				assert.Equal(t, !end.Open, f.within(end.Value), "%s at %v", f.Path, end.Value)
			}
		}
	}
}
