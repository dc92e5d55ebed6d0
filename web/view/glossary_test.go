package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// TestGlossary wants every word and every field of the table once, each with a
// place of its own that links find.
func TestGlossary(t *testing.T) {
	g := Glossary(page.Assets{})
	ids := map[string]bool{}
	take := func(id string) {
		assert.NotContains(t, id, " ")
		assert.False(t, ids[id], "%s twice", id)
		ids[id] = true
	}
	terms := 0
	for _, e := range g.Words {
		take(e.ID)
		for _, w := range e.Terms {
			terms++
			take(w.ID)
			assert.NotEmpty(t, w.Meaning, w.Word)
		}
	}
	assert.Equal(t, len(words.Glossary)+len(words.Signals)+len(words.Verdicts()), terms)
	byPath := map[string]page.FieldEntry{}
	for _, s := range g.Sections {
		take(s.ID)
		for _, f := range s.Fields {
			take(f.ID)
			byPath[f.Path] = f
		}
	}
	require.Len(t, byPath, len(press.Fields))
	for _, f := range press.Fields {
		got := byPath[f.Path]
		assert.Equal(t, []string{f.Label, f.Help}, []string{got.Label, got.Help}, f.Path)
		for _, s := range []string{got.Unit, got.Takes, got.Empty} {
			assert.NotEmpty(t, s, f.Path)
		}
		assert.True(t, ids[strings.TrimPrefix(FieldLink(press.RowPath(f.Path, 3)), "/glossary#")], "%s: no place", f.Path)
	}
	for _, w := range words.Glossary {
		assert.True(t, ids[strings.TrimPrefix(WordLink(w.Word), "/glossary#")], w.Word)
	}
	assert.Empty(t, WordLink("nothing like it"))
	assert.Empty(t, FieldLink("nothing.like.it"))
}

// TestFieldEntries compares a few fields with the plan-format page of the
// project's own design (ranges and defaults as written there).
func TestFieldEntries(t *testing.T) {
	byPath := map[string]page.FieldEntry{}
	for _, s := range Glossary(page.Assets{}).Sections {
		for _, f := range s.Fields {
			byPath[f.Path] = f
		}
	}
	for path, want := range map[string][]string{
		"title.name":                  {"–", "Text of at most 200 characters", "Needed"},
		"title.notes":                 {"–", "Text of at most 4000 characters", "Nothing"},
		"ram.stroke":                  {"mm", "More than 0", "Needed"},
		"ram.force_tolerance":         {"%", "0 or more, less than 100", "15"},
		"ram.inertia_mass":            {"kg", "0 or more", "The moving mass"},
		"ram.direction":               {"–", "down, up, level", "down"},
		"station.nest":                {"mm", "Any number", "Needed"},
		"ram.curve.points":            {"–", "2 to 500 rows", "Needed"},
		"parts[].insert":              {"–", "A tick", "Not ticked"},
		"joint.hub.poisson":           {"–", "0 or more, less than 0.5", "Needed"},
		"faults.other":                {"–", "0 to 50 rows", "No rows"},
		"faults.sample_probability":   {"–", "0.5 or more, less than 1", "0.999"},
		"targets.conforming_share":    {"–", "0 to 1", "0.9973"},
		"window.edge_margin":          {"mm", "0 or more", "Four repeatabilities or two scans of slow travel, the larger"},
		"ram.curve.interpolation":     {"–", "monotone, linear", "monotone"},
		"requirement.height_low":      {"mm", "Any number", "Needed"},
		"station.presence_check":      {"–", "Text of at most 200 characters", "Nothing"},
		"joint.service_change[0]":     {"K", "Any number", "0"},
		"motion.scan_time":            {"s", "More than 0", "0.01"},
		"joint.smoothing_most":        {"–", "0 to 1", "0.8"},
		"joint.insert.expansion":      {"1/K", "0 to 0.001", "Not stated"},
		"ram.setting_continuous":      {"%", "More than 0", "Not stated"},
		"targets.false_accept_ppm":    {"ppm", "0 to 1000000", "100"},
		"station.position_step":       {"mm", "More than 0", "0.01"},
		"joint.diameter":              {"mm", "More than 0, at most 10000", "Needed"},
		"joint.fit":                   {"–", "Text of at most 200 characters", "Give hole and shaft instead"},
		"faults.other[].good":         {"–", "A tick", "Not ticked"},
		"motion.confirm_time":         {"s", "0 or more", "0.05"},
		"station.stiffness":           {"N/mm", "More than 0", "Needed"},
		"window.guard_factor":         {"–", "0 or more", "1"},
		"parts[].shape":               {"–", "uniform, triangular, normal", "uniform"},
		"parts[].sigmas":              {"–", "More than 0", "3"},
		"joint.holding_safety":        {"–", "1 or more", "1"},
		"joint.kind":                  {"–", "touch, measured, interference", "Needed"},
		"joint.friction_high":         {"–", "0 to 2", "Needed"},
		"targets.early_contact_ppm":   {"ppm", "0 to 1000000", "1"},
		"ram.repeatability":           {"mm", "0 or more", "0.02"},
		"joint.stop":                  {"–", "shoulder, none", "shoulder"},
		"station.stiffness_tolerance": {"%", "0 or more, less than 100", "10"},
	} {
		f := byPath[path]
		assert.Equal(t, want, []string{f.Unit, f.Takes, f.Empty}, path)
	}
	assert.Equal(t, "For joints of kind measured or interference.", byPath["joint.stop"].For)
	assert.Empty(t, byPath["ram.stroke"].For)
}

// TestGlossaryFromTheBench: every field, column, section and setpoint leads to a
// place that the glossary has.
func TestGlossaryFromTheBench(t *testing.T) {
	places := map[string]bool{}
	g := Glossary(page.Assets{})
	for _, e := range g.Words {
		for _, term := range e.Terms {
			places[glossaryPath+"#"+term.ID] = true
		}
	}
	for _, s := range g.Sections {
		places[glossaryPath+"#"+s.ID] = true
		for _, f := range s.Fields {
			places[glossaryPath+"#"+f.ID] = true
		}
	}
	p, r := evaluated(t, example(t))
	b := Bench{Typed: Take(p.Draft().Entries, nil), Plan: p, Result: r}.Page(page.Assets{})
	seen := 0
	check := func(what, link string) {
		seen++
		assert.True(t, places[link], "%s leads to %q", what, link)
	}
	for _, s := range b.Form.Sections {
		check(s.Label, s.Word)
		for _, g := range s.Groups {
			for _, f := range g.Fields {
				check(f.Name, f.Word)
			}
			if g.Rows != nil {
				for _, c := range g.Rows.Columns {
					check(c.Label, c.Word)
				}
			}
		}
	}
	for _, f := range b.Result.Setpoints {
		check(f.Label, f.Word)
	}
	assert.Greater(t, seen, 90)
}
