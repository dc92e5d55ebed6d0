package press_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// TestMisesBesideUtilisation holds the stress beside the share of the elastic
// limit. Derived by hand from the two formulas of the model, with Q = d/D and
// b/d: σ_v/(u·R_e) is √((3+Q⁴)/3) at the hub's bore and 2/√3 at that of a hollow
// insert.
func TestMisesBesideUtilisation(t *testing.T) {
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	for _, change := range []press.Pair{{0, 0}, {-40, 60}} { // service raises or lowers both alike
		p.Joint.ServiceChange = change
		j := press.Evaluate(p).Joint
		q := p.Joint.Diameter / p.Joint.Hub.OutsideDiameter
		assert.InEpsilon(t, math.Sqrt((3+math.Pow(q, 4))/3), *j.HubMises/(*j.HubUtilisation*p.Joint.Hub.Yield), 1e-12)
		require.Positive(t, p.Joint.Insert.Bore)
		assert.InEpsilon(t, 2/math.Sqrt(3), *j.InsertMises/(*j.InsertUtilisation*p.Joint.Insert.Yield), 1e-12)
	}
}
