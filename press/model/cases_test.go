package model

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The rows of every catalogue stand in the order of the cases, each is one, and every
// case is met.
func TestRowsAreCasesInTheirOrder(t *testing.T) {
	met := map[string]bool{}
	rapid.Check(t, func(t *rapid.T) {
		in := randomInput(t)
		in.Faults.Other = []OtherFault{{Name: RowLong, Height: 0.01}}
		last := -1
		for _, f := range Evaluate(in).Faults {
			if f.Own {
				assert.Zero(t, f.Case(), "an own row is no case, whatever its name")
				continue
			}
			i := slices.IndexFunc(Cases, func(c Case) bool { return c.Name == f.Name })
			require.Greater(t, i, last, f.Name)
			last = i
			met[f.Name] = true
			assert.Equal(t, f.Case().Good, f.Good)
			if s := f.Case().Stuck; s.Arrival != nil && f.Arrival != nil {
				assert.Equal(t, *s.Arrival, *f.Arrival, f.Name)
			} else if s.Zone != nil && f.Zone != nil {
				assert.Equal(t, *s.Zone, *f.Zone, f.Name)
			}
		}
	})
	for _, c := range Cases {
		assert.True(t, met[c.Name], "no plan has the row %s", c.Name)
	}
}
