package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Where the rows of the catalogue rest, by hand from the model's section 11: the seat reads
// nest less stack plus the bend of the frame under the typical push, 140 − 25 + F/18000. A
// gap is told from the seat, also where the nominal part stalls before it; chip, own rows
// and worn nest are told from where the nominal part rests. Two inserts lie 3.0 + 6.4 mm
// higher than one, which the approach ends before here.
func TestCatalogueRowsAreToldFromTheirPlace(t *testing.T) {
	for name, entries := range map[string][]string{
		"seats":  nil,
		"stalls": {"window.setting", "30", "window.zone_start", "90", "window.approach_end", "85"},
	} {
		p := with(t, example(t), append(entries, "faults.other[0].name", "shim", "faults.other[0].height", "0.07", "faults.chip", "0.1", "faults.gap", "0.05", "faults.nest_wear", "0.04")...)
		r := Evaluate(p)
		read := map[string]float64{}
		for _, f := range r.Faults {
			if f.Reading != nil {
				read[f.Name] = *f.Reading
			}
		}
		seat := 140 - 25 + r.Force.Typical/18000
		nominal, there := read[RowNominal]
		require.True(t, there, name)
		if name == "stalls" {
			require.Less(t, nominal, seat-0.1, "it sticks on its way")
		} else {
			require.InDelta(t, seat, nominal, 1e-9)
		}
		assert.InDelta(t, seat-0.05, read[RowGap], 1e-9, "%s: the gap is off the seat", name)
		assert.InDelta(t, nominal-0.1, read[RowChip], 1e-9, name)
		assert.InDelta(t, nominal-0.07, read["shim"], 1e-9, name)
		assert.InDelta(t, nominal+0.04, read[RowNestWorn], 1e-9, name)
		assert.InDelta(t, seat, read[RowAlreadyPressed], 1e-9, name)
		assert.InDelta(t, seat, read[RowLoose], 1e-9, "%s: nothing holds it up", name)
		if name == "stalls" {
			assert.InDelta(t, seat-9.4, read[RowTwoInserts], 1e-9)
		}
	}
}

// What is needed at the seat is what the tightest fit demands and what has to be left on
// the seat: 150 N in the example. The setting is judged by a weak ram, the cap by a strong
// one. Derived: by hand from the model's section 5.
func TestNeedIsOfTheTightestFit(t *testing.T) {
	r := Evaluate(example(t))
	d := r.Joint.Demand
	require.Less(t, d[0], d[1])
	require.Less(t, d[1], d[2])
	assert.InDelta(t, d[2]+150, r.Force.Need, 1e-9)
	assert.Greater(t, r.Force.Need, d[1]+150)
	assert.InDelta(t, 2900, r.Force.Cap, 0)
}
