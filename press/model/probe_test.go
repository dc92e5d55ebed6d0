package model

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The highest probe setting is the one that is found by looking at every step.
// Derived: the same condition, without leaving any step out.
func TestHighestProbeSettingByLookingAtAll(t *testing.T) {
	same := func(t assert.TestingT, p *Input) (possible bool) {
		w := evaluated(p)
		var want *float64
		if w.p.Joint.Kind == Interference && w.zone.z1 != nil && w.zone.e != nil {
			all := p.Ram.steps()
			for k := all.last; k >= all.first && want == nil; k-- {
				if c := all.at(k); c < w.r.Force.Setting-slack && w.probeAt(c, nil).serves() {
					want = &c
				}
			}
		}
		assert.Equal(t, want, w.r.Probe.HighestSetting)
		assert.Equal(t, want != nil, w.r.Probe.Possible)
		return want != nil
	}
	rapid.Check(t, func(t *rapid.T) { same(t, randomInput(t)) })
	assert.True(t, same(t, example()), "the example has one")
}

// At the proposed probe a loose part runs past the end and a sound one stalls
// before it, in a station that is simulated: forces, fits, lengths and positions at
// random within what the plan says. Two in a hundred thousand of each may differ:
// both conditions leave two standard deviations and more.
func TestProbeTellsALoosePartAtTheStation(t *testing.T) {
	p := example()
	s := simulate(p, 5)
	w := s.w
	require.True(t, w.r.Probe.Possible)
	q := w.probeAt(*w.r.Probe.HighestSetting, nil)
	require.Greater(t, q.end, w.zone.a)
	assert.Less(t, q.end, *w.zone.z1, "the probe ends before the zone")
	r := rand.New(rand.NewPCG(9, 9))
	const parts = 200_000
	passed, refused := 0, 0
	for range parts {
		contact, seat, _ := s.lengths()
		force := q.force.typical + q.force.scatter/2*r.NormFloat64()
		offset := s.position()
		sound := w.joint.push[low]
		sound.rise += r.Float64() * (w.joint.push[high].rise - sound.rise)
		loose := push{drag: p.Joint.Drag, travel: w.parts.travel}
		at := func(d push) float64 {
			depth := contact - seat
			if z, stalled := d.stall(force); stalled {
				depth = z
			}
			return p.Station.Nest - contact + depth + w.p.Station.under(force) + offset
		}
		if at(loose) <= q.end {
			passed++
		}
		if at(sound) > q.end {
			refused++
		}
	}
	assert.LessOrEqual(t, passed, parts/50_000)
	assert.LessOrEqual(t, refused, parts/50_000)
}
