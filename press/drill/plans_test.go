package drill

import (
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

// example is the plan of the first start. Its data is invented.
func example(t testing.TB, changes ...string) (*press.Plan, *press.Result) {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	d := p.Draft()
	for i := 0; i < len(changes); i += 2 {
		kept := d.Entries[:0]
		for _, e := range d.Entries {
			if e.Path != "window" && e.Path != "faults" {
				kept = append(kept, e)
			}
		}
		d.Entries = kept
		d.Set(changes[i], changes[i+1])
	}
	p, ps = d.Check()
	require.Empty(t, ps)
	return p, press.Evaluate(p)
}

// examplePlan is one of the plans that the program brings. Their data is invented.
func examplePlan(t testing.TB, name string) (*press.Plan, *press.Result) {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/" + name + ".json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	return p, press.Evaluate(p)
}

func drillOf(t testing.TB, p *press.Plan, r *press.Result) *Drill {
	t.Helper()
	d, err := New(words.Printer{}, p, r, words.Reactions(p, r))
	require.NoError(t, err)
	return d
}

// randomPlan varies the example: parts, requirement, spread, joint, and most
// often a window set by hand that leads to an ambiguous table.
func randomPlan(t testing.TB, rng *rand.Rand) (*press.Plan, bool) {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	d := p.Draft()
	kept := d.Entries[:0]
	for _, e := range d.Entries {
		if e.Path != "window" && e.Path != "faults" {
			kept = append(kept, e)
		}
	}
	d.Entries = kept
	num := func(path string, low, high float64, decimals int) {
		d.Set(path, strconv.FormatFloat(low+(high-low)*rng.Float64(), 'f', decimals, 64))
	}
	maybe := func(path string, low, high float64, decimals int) {
		if rng.IntN(2) == 0 {
			num(path, low, high, decimals)
		}
	}
	half := 0.02 + 0.3*rng.Float64()
	num("requirement.height_low", 24.9-half, 25-half/2, 3)
	num("requirement.height_high", 25+half/2, 25.1+half, 3)
	maybe("ram.repeatability", 0, 0.06, 3)
	maybe("station.nest_drift", 0, 0.05, 3)
	maybe("station.reference_uncertainty", 0, 0.06, 3)
	maybe("window.guard_factor", 0, 2, 2)
	maybe("window.setting", 12, 69, 0)
	maybe("faults.chip", 0, 0.3, 3)
	maybe("faults.gap", 0, 0.3, 3)
	maybe("faults.nest_wear", 0, 0.2, 3)
	if rng.IntN(2) == 0 {
		num("window.push_stroke", 7.3, 8.4, 2)
		maybe("window.zone_start", 114.8, 115.2, 2)
		maybe("window.zone_end", 115.21, 115.6, 2)
	}
	if rng.IntN(4) == 0 {
		d.Set("parts[1].insert", "false")
		d.Set("parts[2].insert", "true")
	}
	switch rng.IntN(4) {
	case 0:
		joint(d, "touch")
		d.Set("parts[2].contact", "0")
	case 1:
		joint(d, "measured")
		d.Set("joint.force_low", "200")
		d.Set("joint.force_typical", "900")
		d.Set("joint.force_high", "1900")
	}
	for i := range rng.IntN(3) {
		at := "faults.other[" + strconv.Itoa(i) + "]."
		d.Set(at+"name", "own "+strconv.Itoa(i))
		num(at+"height", -0.3, 0.3, 3)
		d.Set(at+"good", strconv.FormatBool(rng.IntN(3) == 0))
	}
	p, ps = d.Check()
	return p, len(ps) == 0
}

// joint turns a draft to another kind of joint.
func joint(d *press.Draft, kind string) {
	kept := d.Entries[:0]
	for _, e := range d.Entries {
		if !strings.HasPrefix(e.Path, "joint") {
			kept = append(kept, e)
		}
	}
	d.Entries = kept
	d.Set("joint.kind", kind)
}

// judgedPlan draws until a plan has a table of lamps.
func judgedPlan(t *testing.T, rng *rand.Rand) (*press.Plan, *press.Result) {
	t.Helper()
	for {
		if p, ok := randomPlan(t, rng); ok {
			if r := press.Evaluate(p); r.Verdict != nil {
				return p, r
			}
		}
	}
}
