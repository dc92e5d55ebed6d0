package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// The names of the rows, by hand from what the model lets each of them be, and what the
// station says of it on the example: a fit that is too tight sticks on its way and stands
// too tall, a loose one slides to its seat, and so on. Two rows of one verdict are told
// apart by where they rest.
func TestFaultNamesSayWhatIsPressed(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	nominal := r.Nominal()
	want := map[string]struct{ name, verdict string }{
		press.RowNominal: {"Nominal part", "good"}, press.RowTallest: {"Tallest accepted", "good"}, press.RowShortest: {"Shortest accepted", "good"},
		press.RowLong: {"Just refused, tall side", "too tall"}, press.RowShort: {"Just refused, short side", "too short or no insert"},
		press.RowMissing: {"Missing insert", "too short or no insert"}, press.RowTwoInserts: {"Two inserts", "early contact"}, press.RowAlreadyPressed: {"Pressed before", "good"},
		press.RowTight: {"Too tight", "too tall"}, press.RowLoose: {"Loose fit", "good"}, press.RowChip: {"Chip under the part", "too tall"}, press.RowGap: {"Not fully seated", "good"},
		press.RowSettingLow: {"Setting one step low", "good"}, press.RowSettingHigh: {"Setting one step high", "good"}, press.RowNestWorn: {"Worn nest", "good"},
		press.RowArrivalStuckOn: {"Arrival stuck on, no insert", "good"}, press.RowArrivalStuckOff: {"Arrival stuck off", "too short or no insert"},
		press.RowZoneStuckOn: {"Zone stuck on", "good"}, press.RowZoneStuckOff: {"Zone stuck off", "too tall"},
	}
	reading := map[string]float64{}
	for _, f := range r.Faults {
		w, known := want[f.Name]
		require.True(t, known, f.Name)
		assert.Equal(t, w.name, Fault(f).Word, f.Name)
		assert.Equal(t, w.verdict, SayVerdict(p, f), w.name)
		if f.Reading != nil {
			reading[w.name] = *f.Reading
		}
	}
	require.Len(t, want, len(r.Faults))
	below := func(names ...string) {
		for _, name := range names {
			require.Contains(t, reading, name)
			assert.Less(t, reading[name], nominal-1e-6, name)
		}
	}
	below("Tallest accepted", "Just refused, tall side", "Too tight", "Chip under the part", "Not fully seated", "Setting one step low")
	for _, name := range []string{"Shortest accepted", "Setting one step high", "Worn nest"} {
		assert.Greater(t, reading[name], nominal+1e-6, name)
	}
	assert.Less(t, reading["Too tight"], nominal-1, "a fit that sticks stops far from its seat")
	assert.InDelta(t, nominal, reading["Loose fit"], 1e-9, "a loose one does not")
}
