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
	for j := -10; j <= 10; j++ { // from 0.03 mm lower and 0.05 mm taller on, good parts are refused
		ppm := 10.0
		if j < -3 || j > 5 {
			ppm = 2000
		}
		d.Shift = append(d.Shift, [3]float64{float64(j) / 100, 0, ppm})
	}
	for k := 5; k <= 20; k++ {
		ppm := 0.0
		if k > 12 {
			ppm = 101
		}
		d.Spread = append(d.Spread, [3]float64{float64(k) / 10, ppm, 1000})
	}
	say := Printer{}
	assert.Equal(t, "Both targets are kept with parts up to 0.030\u202fmm lower or 0.050\u202fmm taller on average", say.ShiftTitle(p, d))
	assert.Equal(t, "Both targets are kept with tolerances up to 1.2 times as wide", say.SpreadTitle(p, d))
	p.Targets.FalseRejectPPM = 999
	assert.Contains(t, say.SpreadTitle(p, d), "missed")
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
