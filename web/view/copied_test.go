package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/web/page"
)

// copiedOf is what the copy button of a plan carries, and its page.
func copiedOf(t *testing.T, data []byte, faults press.Problems) ([]string, page.Bench) {
	t.Helper()
	p, r := evaluated(t, data)
	b := Bench{Typed: Take(p.Draft().Entries, nil), Plan: p, Result: r, Faults: faults}.Page(page.Assets{})
	require.Contains(t, b.Result.Copy, "Plan\t"+p.Digest()[:len("sha256:")+12]+"\n", "the first 12 digits")
	return strings.Split(b.Result.Copy, "\n"), b
}

func TestCopiedSound(t *testing.T) {
	lines, b := copiedOf(t, example(t), nil)
	assert.Equal(t, "Bearing sleeve into anemometer hub\tWS-210\tDraft, nothing issued", lines[0])
	assert.Equal(t, "Setpoint\tFigure\tUnit\tNote", lines[1])
	assert.Equal(t, "Setting\t66\t%", lines[2])
	assert.Empty(t, b.Result.NotReady)
}

func TestCopiedOlder(t *testing.T) {
	lines, b := copiedOf(t, example(t), press.Problems{{Path: "station.nest", Code: press.CodeRequired, Message: "not given"}})
	assert.Equal(t, "older than the entries", lines[0])
	assert.NotEmpty(t, b.Result.Older)
}

// TestCopiedBlocked asks for more force than any setting gives: the setpoints do
// not look fit to be typed in, on the page and where they are pasted.
func TestCopiedBlocked(t *testing.T) {
	few := func(window string) []byte {
		return example(t, `"max_force": 2900`, `"max_force": 900`, `"window": {}`, window)
	}
	p, r := evaluated(t, few(`"window": {}`))
	require.False(t, r.Force.SettingFeasible, "max_force %v", p.Station.MaxForce)
	lines, b := copiedOf(t, few(`"window": {}`), nil)
	assert.Contains(t, lines[0], "NOT READY: no setting seats every part and overloads none")
	assert.Contains(t, lines[3], "nearest, will not do")
	assert.Equal(t, "nearest, will not do", b.Result.Setpoints[0].Note)
	assert.Equal(t, "not for use before the blocker is mended", b.Result.Setpoints[1].Note)
	assert.Contains(t, b.Result.NotReady, "no setting seats every part")
	_, b = copiedOf(t, few(`"window": {"setting": 60}`), nil)
	assert.Equal(t, "by hand, will not do", b.Result.Setpoints[0].Note)
	assert.Contains(t, b.Result.NotReady, "the setting leaves parts unseated and overloads others")
}

// TestPerfectInTheLead wants what is taken as perfect beside the headline.
func TestPerfectInTheLead(t *testing.T) {
	settled := []string{`"confirm_time"`, `"settle_time": 0.3, "confirm_time"`}
	_, b := copiedOf(t, example(t, settled...), nil)
	assert.Empty(t, b.Perfect)
	_, b = copiedOf(t, example(t, append(settled, `"nest_drift": 0.01,`, ``)...), nil)
	assert.Equal(t, "Taken as perfect, because not given: nest drift.", b.Perfect)
	assert.Equal(t, "Up to date with the entries. Saved.", b.State.Text)
}

// TestCopiedIsNoFormula: what is pasted into a spreadsheet is text, and no number has
// a narrow blank in it. Derived by hand: 115.08 mm are 11 508 of 1/100 mm.
func TestCopiedIsNoFormula(t *testing.T) {
	data := example(t, `"window": {}`, `"window": {}, "controller": {"words": [{"setpoint": "zone_start", "name": "=P1", "unit": "1/100 mm", "factor": 100}]}`, `"name": "Bearing`, `"name": "=Bearing`)
	lines, b := copiedOf(t, data, nil)
	assert.Equal(t, "'=Bearing sleeve into anemometer hub\tWS-210\tDraft, nothing issued", lines[0])
	assert.Equal(t, "Setpoint\tFigure\tUnit\tThe controller calls it\tTo be entered\tIn its unit\tNote", lines[1])
	assert.Equal(t, "Setting\t66\t%", lines[2])
	assert.Contains(t, lines, "Zone start\t115.08\tmm\t'=P1\t11508\t1/100 mm")
	assert.NotContains(t, b.Result.Copy, "\u202f")
}
