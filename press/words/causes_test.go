package words

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// Every blocker has its cause in a headline, and nothing else has one; of several the
// gravest is named, whatever their order.
func TestEveryBlockerHasItsCause(t *testing.T) {
	var blockers []press.Rule
	for _, r := range press.Rules {
		if r.Severity == press.Blocker {
			blockers = append(blockers, r)
			assert.NotEmpty(t, causes[r.Code], r.Code)
		} else {
			assert.NotContains(t, causes, r.Code)
		}
	}
	assert.Len(t, causes, len(blockers))
	slices.SortFunc(blockers, func(a, b press.Rule) int { return a.Gravity - b.Gravity })
	// By hand: first what nothing can be pressed in with, last what yields or slips.
	assert.Equal(t, press.NothingStopsIt, blockers[0].Code)
	assert.Equal(t, press.HoldingShort, blockers[len(blockers)-1].Code)
	for i := range blockers {
		r := &press.Result{}
		for k := len(blockers) - 1; k >= i; k-- {
			r.Findings = append(r.Findings, press.Finding{Code: blockers[k].Code, Severity: press.Blocker})
		}
		for _, c := range blockers[:i] { // which are no blockers here
			r.Findings = append(r.Findings, press.Finding{Code: c.Code, Severity: press.Caution})
		}
		if blockers[i].Code != press.SettingNotFeasible { // told by the figures
			assert.Equal(t, causes[blockers[i].Code], say.cause(r))
		}
	}
	assert.Equal(t, "a blocker was found", say.cause(&press.Result{}))
}
