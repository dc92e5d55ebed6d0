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
	require.Contains(t, b.Result.Copy, "Plan\t"+strings.TrimPrefix(p.Digest(), "sha256:")[:12]+"\n", "the first 12 digits")
	return strings.Split(b.Result.Copy, "\n"), b
}

func TestCopiedSound(t *testing.T) {
	lines, b := copiedOf(t, example(t), nil)
	assert.Equal(t, "Bearing sleeve into anemometer hub\tWS-210\tDraft, nothing issued", lines[0])
	assert.Equal(t, "Setting\t66\t%", lines[1])
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
	assert.Contains(t, lines[2], "nearest, will not do")
	assert.Equal(t, "nearest, will not do", b.Result.Setpoints[0].Note)
	assert.Equal(t, "proposed; holds only once the blocker is mended", b.Result.Setpoints[1].Note)
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
