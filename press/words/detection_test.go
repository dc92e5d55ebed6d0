package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestJudged: the words are of this project; they change at the probability of
// the limit samples, at one half, and at the bound of what is computed.
func TestJudged(t *testing.T) {
	p := &press.Plan{}
	p.Faults.SampleProbability = 0.999
	for _, c := range []struct {
		row  press.FaultRow
		want string
	}{
		{press.FaultRow{Name: press.RowChip, Detection: 1}, ""},
		{press.FaultRow{Name: press.RowChip, Detection: 0.999}, ""},
		{press.FaultRow{Name: press.RowChip, Detection: 0.9989}, "not always detected"},
		{press.FaultRow{Name: press.RowChip, Detection: 0.5}, "not always detected"},
		{press.FaultRow{Name: press.RowChip, Detection: 0.4999}, "mostly not detected"},
		{press.FaultRow{Name: press.RowChip, Detection: 0.0009}, "hardly ever detected"},
		{press.FaultRow{Name: press.RowChip, Detection: 1e-7}, "never detected"},
		{press.FaultRow{Name: press.RowNominal, Good: true, Detection: 0.9989}, "refused now and then"},
		{press.FaultRow{Name: press.RowNominal, Good: true, Detection: 0.49}, "mostly refused"},
		{press.FaultRow{Name: press.RowNominal, Good: true, Detection: 0.0009}, "nearly always refused"},
		{press.FaultRow{Name: press.RowNominal, Good: true, Detection: 0}, "always refused"},
		{press.FaultRow{Name: press.RowLong, Detection: 0.52}, "a toss-up by nature: it reads at the edge"},
		{press.FaultRow{Name: press.RowLong, Detection: 0.9}, "not always detected"},
		{press.FaultRow{Name: press.RowLong, Own: true, Detection: 0.52}, "not always detected"},
		{press.FaultRow{Name: press.RowTwoInserts, Verdict: press.EarlyContact}, "not judged by these signals: the approach strikes it"},
	} {
		assert.Equal(t, c.want, Judged(p, nil, c.row), "%+v", c.row)
	}
}

// TestLacking says what is missing, and the finding that tells why.
func TestLacking(t *testing.T) {
	end, start := 115.2, 115.1
	why := []press.Finding{{Code: press.OverYield, Message: "no"}, {Code: press.NoAcceptance, Message: "Nothing is left."}}
	none := &press.Result{Outcome: press.Outcome{Findings: why}}
	assert.Equal(t, []string{"There is no verdict, so there is neither a fault catalogue nor a limit sample: zone start, zone end and push end are not known.", "Nothing is left."}, say.Lacking(none))
	some := &press.Result{Outcome: press.Outcome{Findings: why, Travel: press.Travel{PushEnd: &end}, Window: press.Readings{Zone: &[2]*float64{&start, nil}}}}
	assert.Contains(t, say.Lacking(some)[0], ": zone end is not known.")
	never := &press.Result{Outcome: press.Outcome{Verdict: &press.Verdict{}, Findings: []press.Finding{{Code: press.NeverGood, Message: "No reading."}}}}
	assert.Equal(t, []string{"No part is accepted, so the rows at the edges of the window and the limit samples do not exist.", "No reading."}, say.Lacking(never))
	assert.Empty(t, say.Lacking(&press.Result{Outcome: press.Outcome{Verdict: &press.Verdict{}, Samples: &press.Samples{}}}))
}
