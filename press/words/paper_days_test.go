package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// Each row of the page of the worst day has the figures that its name says.
func TestDaysAreOfTheirFigures(t *testing.T) {
	for name, c := range keyedPlans {
		p := example(t, c)
		r := press.Evaluate(p)
		d := r.WorstDay()
		page, ok := Paper(DaysPaper, p, r)
		require.True(t, ok)
		if d == nil || d.Average == nil {
			assert.Empty(t, page.Rows, name)
			assert.NotEmpty(t, page.Lacking, name)
			continue
		}
		want := map[string][2]float64{
			"Average":   {d.Average.ConsumerPPM, d.Average.ProducerPPM},
			"Worst day": {d.Worst.ConsumerPPM, d.Worst.ProducerPPM},
		}
		off := map[string]float64{"Worst day": d.Limit}
		for i, label := range []string{"Nest drift alone at its limit", "Reference alone at its limit", "Stiffness alone at its limit", "Push force alone at its limit"} {
			if x := d.Terms[i]; x.Limit > 0 { // in the order of the design
				want[label], off[label] = [2]float64{*x.ConsumerPPM, *x.ProducerPPM}, x.Limit
			}
		}
		require.Len(t, page.Rows, len(want), name)
		for _, row := range page.Rows {
			shares := want[row[0]]
			assert.Equal(t, []string{PPM(shares[0]), PPM(shares[1])}, row[2:], "%s, %s", name, row[0])
			if x, is := off[row[0]]; is {
				assert.Contains(t, row[1], "off by "+Printer{}.Positions(p).Fine().Length(x), "%s, %s", name, row[0])
			}
		}
		assert.Contains(t, page.Notes[0], PPM(d.UnseatedWeakDayPPM), name)
	}
}

// The messages of the drawings, by hand from made-up rows.
func TestDayTitles(t *testing.T) {
	p := example(t, nil)
	p.Targets.FalseAcceptPPM, p.Targets.FalseRejectPPM = 100, 1000
	d := &press.WorstDay{}
	say := Printer{}
	assert.Contains(t, say.SpreadTitle(p, d), "missed")
	assert.Contains(t, say.ShiftTitle(p, d), "missed")
	for _, c := range []struct {
		kept          press.Kept
		shift, spread string
	}{ // never more than keeps them: rounded down
		{press.Kept{Lower: 0.0307, Taller: 0.0509, Wider: 1.299}, "kept with parts up to 0.030\u202fmm lower or 0.050\u202fmm taller on average", "up to 1.29 times as wide"},
		{press.Kept{Lower: 0.09, Taller: 0.09, Wider: 2}, "off by up to 0.090\u202fmm to either side", "up to 2.00 times as wide"},
		{press.Kept{Lower: 0.0004, Taller: 0.0125, Wider: 1.009}, "parts less than 0.001\u202fmm lower or up to 0.012\u202fmm taller", "not with tolerances 1.01 times as wide"},
		{press.Kept{Lower: 0.0004, Taller: 0.0009, Wider: 1}, "and not with the mean height off by 0.001\u202fmm", "not with tolerances 1.01 times as wide"},
	} {
		d.Kept = &c.kept
		assert.Contains(t, say.ShiftTitle(p, d), c.shift)
		assert.Contains(t, say.SpreadTitle(p, d), c.spread)
	}
	for _, c := range []struct {
		accept, reject float64 // below 0: never
		want           string
	}{{0.02, 0.01, "good parts are refused"}, {0.01, 0.02, "wrong heights are accepted"}, {-1, 0.01, "good parts are refused"}, {0.01, -1, "wrong heights are accepted"}, {0, 0.01, "without any wear"}, {-1, -1, "No wear"}} {
		d.Wear = &press.Wear{}
		if c.accept >= 0 {
			d.Wear.FalseAccept = &c.accept
		}
		if c.reject >= 0 {
			d.Wear.FalseReject = &c.reject
		}
		assert.True(t, strings.Contains(say.WearTitle(p, d), c.want), "%v: %s", c, say.WearTitle(p, d))
	}
}
