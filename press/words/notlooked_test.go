package words

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// unmarked is the example without a row that goes away with the insert.
var unmarked = changes{"parts[1].insert": "false", "parts[2].insert": "false"}

// TestMissingInsertNotLookedAt: where no row is marked, no page gives a figure for
// a missing insert, and all say why.
func TestMissingInsertNotLookedAt(t *testing.T) {
	p := example(t, unmarked)
	r := press.Evaluate(p)
	cells := func(name string) string {
		var out []string
		for _, row := range paperOf(t, name, p).Rows {
			out = append(out, strings.Join(row, "|"))
		}
		return strings.Join(out, "\n")
	}
	for _, f := range r.Faults {
		if f.Name == press.RowMissing || f.Name == press.RowArrivalStuckOn {
			assert.Equal(t, "not looked at", Detected(p, r, f))
			assert.Equal(t, "no row of the parts is marked as insert", Judged(p, r, f))
			assert.NotEqual(t, "not looked at", Detected(example(t, nil), r, f))
		} else if f.Name != press.RowNestWorn {
			assert.Equal(t, Rarely(f.Detection), Detected(p, r, f))
		}
	}
	for _, name := range []string{"faults", "failures"} {
		assert.Contains(t, cells(name), "not looked at", name)
	}
	assert.Contains(t, cells("control"), "Not looked at")
	assert.True(t, slices.ContainsFunc(r.Findings, func(f press.Finding) bool { return f.Code == press.InsertNotMarked && f.Severity == press.Caution }))

	named := example(t, with(unmarked, changes{"station.presence_check": "light barrier"}))
	for _, f := range press.Evaluate(named).Findings {
		assert.NotEqual(t, press.InsertNotMarked, f.Code, "the other check looks for it")
	}
}

// TestSettingByHandSaysWhichWay tells too weak from too strong.
func TestSettingByHandSaysWhichWay(t *testing.T) {
	for setting, want := range map[string]string{"50": "the setting leaves parts unseated", "70": ""} {
		assert.Equal(t, want, cut(NotReady(press.Evaluate(example(t, changes{"window.setting": setting})))), setting)
	}
	assert.Equal(t, "the setting overloads part or tool", cut(NotReady(press.Evaluate(example(t, changes{"window.setting": "66", "station.max_force": "2600"})))))
}

// cut leaves the gravest blocker.
func cut(s string) string { first, _, _ := strings.Cut(s, ","); return first }

// TestRefusedPartsUnderBlockers: only a blocker that has a say in which parts are
// refused comes first.
func TestRefusedPartsUnderBlockers(t *testing.T) {
	refused := func(c changes) string {
		r := press.Evaluate(example(t, with(c, changes{"targets.false_reject_ppm": "1"})))
		Explain(r)
		for _, f := range r.Findings {
			if f.Code == press.FalseReject {
				return f.Message
			}
		}
		require.Fail(t, "no part is refused")
		return ""
	}
	assert.Contains(t, refused(changes{"ram.max_speed": "150"}), "make the reading surer")
	assert.Contains(t, refused(changes{"window.setting": "50"}), "mend the blockers first")
}
