package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// constants reads the string constants of a file of the model, name to value.
func constants(t *testing.T, file, prefix string) map[string]string {
	t.Helper()
	parsed, err := parser.ParseFile(token.NewFileSet(), "../model/"+file, nil, 0)
	require.NoError(t, err)
	out := map[string]string{}
	ast.Inspect(parsed, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok {
			return true
		}
		for i, name := range spec.Names {
			if i >= len(spec.Values) || !strings.HasPrefix(name.Name, prefix) {
				continue
			}
			if lit, ok := spec.Values[i].(*ast.BasicLit); ok && lit.Kind == token.STRING {
				value, err := strconv.Unquote(lit.Value)
				require.NoError(t, err)
				out[name.Name] = value
			}
		}
		return true
	})
	require.NotEmpty(t, out)
	return out
}

type changes = map[string]string

// example is the example plan with some typed texts changed. An empty text takes
// an entry away.
func example(t testing.TB, c changes) *press.Plan {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	base, ps := press.Decode(data)
	require.Empty(t, ps)
	d := base.Draft()
	for path, text := range c {
		if text == "" {
			d.Entries = slices.DeleteFunc(d.Entries, func(e press.Entry) bool { return strings.HasPrefix(e.Path, path) })
		}
	}
	for _, path := range slices.Sorted(maps.Keys(c)) {
		text := c[path]
		if text == "" {
			continue
		}
		if strings.HasPrefix(path, "window.") {
			d.Entries = slices.DeleteFunc(d.Entries, func(e press.Entry) bool { return e.Path == "window" })
		}
		d.Set(path, text)
	}
	p, ps := d.Check()
	require.Empty(t, ps)
	return p
}

// touch takes the joint out of the example plan.
var touch = changes{"joint": "", "joint.kind": "touch"}

func with(a, b changes) changes {
	out := changes{}
	for k, v := range a {
		out[k] = v
	}
	for k, v := range b {
		out[k] = v
	}
	return out
}

// plainRun is the plain cycle as steps, and steps makes one of others: kind, key, text, key,
// text; the next kind; and so on.
var plainRun = steps([]string{"press"}, []string{"move", "to", "0"})

func steps(rows ...[]string) changes {
	out := changes{}
	for i, row := range rows {
		at := "sequence.steps[" + strconv.Itoa(i) + "]."
		out[at+"kind"] = row[0]
		for k := 1; k < len(row); k += 2 {
			out[at+row[k]] = row[k+1]
		}
	}
	return out
}

var (
	goHome   = []string{"move", "to", "0"}
	pressing = []string{"press"}
	probing  = changes{"probe.use": "true"}
)

// provoked has, for every code, plans that lead to it; more than one where a
// sentence depends on more than the code.
var provoked = map[string][]changes{
	press.NoSetting: {
		{"station.max_force": "2300"},
		{"requirement.min_seating_force": "900"},
		{"station.max_force": "2200", "requirement.min_seating_force": "700"},
		{"ram.setting_step": "9", "station.max_force": "2400"},
	},
	press.SettingNotFeasible: {{"window.setting": "50"}, {"window.setting": "66", "station.max_force": "2500"}},
	press.NoAcceptance: {{"station.reference_uncertainty": "0.2"}, {"window.rule": "target", "station.position_step": "0.5"},
		{"window.rule": "target", "window.approach_end": "116"}},
	press.NeverGood:       {{"window.zone_start": "115.3", "window.zone_end": "115.4"}},
	press.NominalRejected: {{"window.zone_start": "115.16"}, {"window.zone_start": "114", "window.push_stroke": "7"}, {"window.setting": "12", "window.zone_start": "114"}},
	press.BeyondStroke: {{"ram.stroke": "100"}, {"station.home": "110"},
		steps(pressing, []string{"move", "to", "-5"}), steps([]string{"shift", "by", "151", "name", "far"}, pressing, goHome)},
	press.EarlyContactBlocked: {{"window.approach_end": "108.6"}},
	press.SpeedOverRam: {{"ram.max_speed": "150", "ram.max_accel": "1999.5"},
		steps(pressing, []string{"move", "to", "0", "speed", "500", "accel", "9000"})},
	press.NothingStopsIt:    {{"joint.stop": "none"}},
	press.MissingLooksGood:  {{"parts[1].insert": "false", "parts[2].insert": "true"}},
	press.FaultLooksGood:    {{"window.zone_start": "115"}, {"window.push_stroke": "7.9", "faults.nest_wear": "0.12"}},
	press.OverYield:         {{"joint.hub.yield": "100"}, {"joint.insert.yield": "100"}},
	press.HoldingShort:      {{"joint.holding_required": "300"}},
	press.TravelNegative:    {{"parts[2].contact": "-1"}},
	press.TouchWithTravel:   {touch},
	press.EngagementTooLong: {{"joint.engagement": "8"}},
	press.ProbeNoFit:        {with(touch, probing)},
	press.ProbeNotPossible:  {{"probe.use": "true", "parts[2].minus": "3", "parts[2].plus": "3"}, {"probe.use": "true", "station.reference_uncertainty": "0.2"}},
	press.ProbeCannotTell: {
		{"probe.use": "true", "probe.setting": "66"}, {"probe.use": "true", "probe.setting": "10", "joint.drag": "300"},
		{"probe.use": "true", "probe.setting": "11", "probe.end": "107"}, {"probe.use": "true", "probe.setting": "11", "probe.end": "115.05"},
	},
	press.ProbeRefusesNominal:   {{"probe.use": "true", "probe.setting": "60"}, {"probe.use": "true", "probe.setting": "11", "probe.end": "109"}},
	press.PartMetInMove:         {steps([]string{"move", "to", "110"}, pressing, goHome)},
	press.HandOverImpossible:    {steps([]string{"move", "to", "50", "hand_over", "true"}, []string{"wait", "time", "1"}, pressing, goHome)},
	press.OverlapWider:          {{"window.zone_start": "114.9"}, {"window.zone_start": "114.9", "window.push_stroke": "8"}, {"window.zone_start": "114.95", "parts[0].plus": "0.08", "parts[0].minus": "0.08"}},
	press.EarlyContactWorstCase: {{"motion.clearance": "0", "targets.early_contact_ppm": "1000"}},
	press.SettingOffStep:        {{"window.setting": "65.5"}},
	press.GripMayVanish:         {{"joint.fit": "H7/n6"}},
	press.PartlyEngaged:         {{"joint.pilot": "2"}},
	press.AmbiguousTable: {
		{"window.push_stroke": "8.2"}, {"window.push_stroke": "7.5"}, {"window.zone_start": "115.12"},
		{"window.zone_end": "115.15"}, {"window.push_stroke": "7.5", "window.zone_start": "115.1", "window.zone_end": "115.2"},
	},
	press.InsertNotMarked:    {{"parts[1].insert": "false", "parts[2].insert": "false"}},
	press.OverlapNarrow:      {{"station.reference_uncertainty": "0.06"}},
	press.ConformingShareLow: {{"parts[0].plus": "0.1", "parts[0].minus": "0.1"}},
	press.FalseAccept:        {{"window.zone_start": "115", "parts[0].plus": "0.1", "parts[0].minus": "0.1"}},
	press.FalseReject:        {{"targets.false_reject_ppm": "1"}},
	press.TargetMissed: {
		{"window.rule": "target", "targets.false_accept_ppm": "0.01", "targets.false_reject_ppm": "0.01"},
		{"window.rule": "target", "targets.false_reject_ppm": "10", "window.targets_for": "worst_day", "station.reference_uncertainty": "0.05"},
		{"window.rule": "target", "window.zone_start": "115.12", "window.push_stroke": "7.8"},
	},
	press.ProcessOutside:     {{"window.rule": "process", "parts[0].nominal": "22.3"}},
	press.HeatingOver:        {{"ram.setting_continuous": "20"}},
	press.ZoneTooShort:       {{"window.zone_start": "115.1", "window.zone_end": "115.14"}},
	press.ImpactContact:      {{"motion.slow_speed": "150"}},
	press.ImpactSeat:         {{"motion.slow_speed": "150"}},
	press.PositionOffStep:    {{"window.approach_end": "107.405"}, {"window.push_stroke": "8.005"}, {"window.zone_start": "115.083"}, {"window.zone_end": "115.355"}},
	press.TravelMayVanish:    {{"parts[2].minus": "7"}},
	press.DeflectionUntaught: {nil},
	press.NoForceAsked:       {with(touch, changes{"parts[2].contact": "0", "requirement.min_seating_force": "0"})},
	press.ProbeRefusesSound:  {{"probe.use": "true", "probe.setting": "20"}},
	press.ProbeOverrun:       {{"probe.use": "true", "motion.slow_speed": "60"}},
	press.HandOverSlowed:     {steps([]string{"move", "to", "50", "hand_over", "true"}, []string{"move", "to", "51"}, pressing, goHome)},
	press.RelativeAfterPress: {steps(pressing, []string{"shift", "by", "-20"}, goHome)},
	press.SequenceNotClosed:  {steps(pressing, []string{"move", "to", "5"})},
	press.NotRetracted:       {steps(pressing)},
	press.LampSecondMeaning: {
		steps([]string{"move", "to", "60", "zone[0]", "40", "zone[1]", "50", "name", "to the camera"}, pressing, goHome),
		with(steps([]string{"shift", "by", "10", "times", "3", "zone[0]", "0", "zone[1]", "50"}, pressing, goHome), changes{"sequence.station_zone[0]": "30", "sequence.station_zone[1]": "120"}),
	},
	press.ZonePassedFast:       {steps([]string{"move", "to", "60", "zone[0]", "40", "zone[1]", "40.5"}, pressing, goHome)},
	press.ZonesAlike:           {with(plainRun, changes{"sequence.station_zone[0]": "115.08", "sequence.station_zone[1]": "115.36"})},
	press.HoldInPress:          {with(plainRun, changes{"sequence.hold.step": "0", "sequence.hold.at": "110", "sequence.hold.time": "1"})},
	press.HoldNotMet:           {with(plainRun, changes{"sequence.hold.step": "1", "sequence.hold.at": "150", "sequence.hold.time": "1"})},
	press.LooseFitProbed:       {probing, {"probe.use": "true", "probe.setting": "10", "joint.drag": "150", "ram.force_tolerance": "20"}},
	press.PresenceByProbe:      {{"parts[1].insert": "false", "parts[2].insert": "true", "probe.use": "true"}},
	press.SecondStart:          {probing},
	press.PresenceByOtherCheck: {{"parts[1].insert": "false", "parts[2].insert": "true", "station.presence_check": "light barrier in the nest"}},
	press.ImpactEarly:          {nil},
	press.ClampedHot:           {nil},
	press.TakenAsPerfect:       {{"station.nest_drift": "", "station.reference_uncertainty": "", "ram.force_scatter": ""}, nil},
	press.WarmUpThin:           {nil},
	press.FreeTravel:           {{"joint.pilot": "1.5", "joint.engagement": "4.9"}},
	press.LooseFitUnseen:       {nil, {"joint.drag": "1000"}},
	press.SmoothingLarge:       {{"joint.hub.roughness_rz": "10"}},
	press.PressInSpeed:         {nil},
}

// TestEveryCodeHasItsSentence walks the codes of findings.go, so a new code
// without a sentence, or without a plan that leads to it, fails.
func TestEveryCodeHasItsSentence(t *testing.T) {
	codes := constants(t, "findings.go", "")
	assert.Len(t, sentences, len(codes))
	assert.Len(t, provoked, len(codes))
	for name, code := range codes {
		t.Run(code, func(t *testing.T) {
			require.Contains(t, sentences, code, name)
			require.NotEmpty(t, provoked[code], "no plan leads to %s", name)
			for _, c := range provoked[code] {
				r := press.Evaluate(example(t, c))
				Explain(r)
				found := false
				for _, f := range r.Findings {
					wellFormed(t, f.Message)
					if f.Code == code {
						found = true
						t.Log(string(f.Severity)+":", f.Message)
					}
				}
				assert.True(t, found, "%v does not lead to %s", c, code)
			}
		})
	}
}

// TestSeverities: codes that can have two severities say so in other words.
func TestSeverities(t *testing.T) {
	seen := map[press.Severity]string{}
	for _, c := range provoked[press.OverlapWider] {
		r := press.Evaluate(example(t, c))
		Explain(r)
		for _, f := range r.Findings {
			if f.Code == press.OverlapWider {
				seen[f.Severity] = f.Message
			}
		}
	}
	assert.Contains(t, seen[press.Blocker], "more parts of a wrong height are accepted")
	assert.Contains(t, seen[press.Caution], "no more wrong heights are accepted")
}

// TestUnknownCode: a code without a sentence is a programmer's mistake.
func TestUnknownCode(t *testing.T) {
	assert.PanicsWithValue(t, "words: no sentence for the finding no-such-code", func() {
		Explain(&press.Result{Outcome: press.Outcome{Findings: []press.Finding{{Code: "no-such-code"}}}})
	})
}

// wellFormed: one sentence, no figure missing, nothing that a program would say.
func wellFormed(t testing.TB, s string) {
	t.Helper()
	for _, bad := range []string{"NaN", "Inf", "%!", "map", none, "  ", " .", " ,", ";;", "nil", "<nil>", "-0"} {
		assert.NotContains(t, s, bad)
	}
	assert.NotRegexp(t, `(^|[\s(±])-\d`, s, "a hyphen stands for a minus sign")
	assert.NotRegexp(t, `\d (mm|N|%|s|ppm|µm)\b`, s, "a plain space stands before a unit")
	assert.True(t, strings.HasSuffix(s, "."), "%q", s)
	assert.Equal(t, upperFirst(s), s)
	assert.Less(t, len([]rune(s)), 420, "%q", s)
}
