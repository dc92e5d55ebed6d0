package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// More force never seats a part less deep.
func TestMoreForceSeatsDeeper(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomInput(t)
		w := evaluated(p)
		before := math.Inf(-1)
		for i := range 40 {
			c := p.Ram.SettingMin + (p.Ram.SettingMax-p.Ram.SettingMin)*float64(i)/39
			r, _ := w.rest(0, w.force.at(c).typical, w.joint.push[mid])
			if r < before-1e-9 {
				t.Fatalf("setting %v rests at %v, a lower one at %v", c, r, before)
			}
			before = r
		}
	})
}

// A wider zone never accepts less.
func TestWiderZoneAcceptsMore(t *testing.T) {
	accepted := func(z1, z2 float64) []float64 {
		in := example()
		in.Window.ZoneStart, in.Window.ZoneEnd = &z1, &z2
		w := evaluated(in)
		var out []float64
		for r := 114.9; r < 115.4; r += 0.01 {
			out = append(out, w.chance.window.Accept(r))
		}
		return out
	}
	narrow, wide, wider := accepted(115.1, 115.15), accepted(115.08, 115.17), accepted(115, 115.4)
	for i := range narrow {
		assert.LessOrEqual(t, narrow[i], wide[i]+1e-12)
		assert.LessOrEqual(t, wide[i], wider[i]+1e-12)
	}
}

// The proposed step is the best of all, found by looking at every one.
func TestProposalIsTheBestStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomInput(t)
		w := evaluated(p)
		f := &w.r.Force
		if f.Need <= 0 {
			return
		}
		margin := func(c float64) float64 {
			at := w.force.at(c)
			strong := math.Inf(1)
			if at.high() > 0 {
				strong = f.Cap / at.high()
			}
			return math.Min(at.low()/f.Need, strong)
		}
		all := p.Ram.steps()
		best := all.at(all.first)
		for k := all.first; k <= all.last; k++ {
			if margin(all.at(k)) > margin(best)+1e-12*math.Abs(margin(best)) {
				best = all.at(k)
			}
		}
		if f.Setting != best {
			t.Fatalf("proposed %v with %v, best is %v with %v", f.Setting, margin(f.Setting), best, margin(best))
		}
	})
}
