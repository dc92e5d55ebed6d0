package simulate

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The points of Sobol's sequence are those that SciPy makes, in its order and to its 30
// binary digits (testdata/derived/sobol.csv says how they were made).
func TestSobolPoints(t *testing.T) {
	f, err := os.Open("../../testdata/derived/sobol.csv")
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 512)
	s := newSobol(mostSobol)
	for i, row := range rows {
		require.Len(t, row, mostSobol)
		for d, text := range row {
			want, err := strconv.ParseUint(text, 10, 64)
			require.NoError(t, err)
			require.Equal(t, want, uint64(s.at[d])>>2, "point %d, dimension %d", i, d+1)
		}
		s.step()
	}
}

// Scrambled points stay a net: of 2^k in any one dimension each interval of 2^−k holds
// one, and any two of the first dimensions that were one in a box still are (Owen 1995).
func TestScrambledPointsStayANet(t *testing.T) {
	const k = 12
	p := newPoints(5, newStream(7, 1<<32))
	var ones [5][1 << k]int
	boxes := map[[2]int]int{}
	for range 1 << k {
		at := p.next()
		for d, u := range at {
			require.True(t, u > 0 && u < 1)
			ones[d][int(u*(1<<k))]++
		}
		boxes[[2]int{int(at[0] * 64), int(at[1] * 64)}]++
	}
	for d := range ones {
		for _, n := range ones[d] {
			require.Equal(t, 1, n, "dimension %d", d+1)
		}
	}
	assert.Len(t, boxes, 1<<k, "the first two dimensions are a (0, 2) sequence")
}
