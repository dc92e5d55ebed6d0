package proving

import (
	"math"

	"ramplan/press"
	"ramplan/press/model"
)

// asFound computes the promise again for the station as its latest master found it; nil
// without such a study, or where nothing is accepted. A restart study that counts tells what
// a new start moves in place of what the plan says.
func (a *shelf) asFound(kinds map[string]KindState) *AsFound {
	master := kinds[Master]
	if master.Study == nil {
		return nil
	}
	m, ok := a.judged[*master.Study].Result.(*MasterResult)
	if !ok || m.Repeatability == nil || m.Repeatability.Upper == nil {
		return nil
	}
	st := &a.plan.Plan.Station
	start := st.ReferenceUncertainty
	if r := kinds[Restart]; r.Study != nil {
		if found, ok := a.judged[*r.Study].Result.(*RestartResult); ok && found.Supported != nil {
			start = *found.Supported
		}
	}
	bend := (a.plan.Force.Typical - st.NestForce) / st.Stiffness * st.StiffnessTolerance / 100
	law := model.FoundError{Bias: m.Bias.Value, SD: root(*m.Repeatability.Upper/2, bend/2, start/2)}
	found, ok := a.plan.AsFound(law)
	if !ok {
		return nil
	}
	return &AsFound{
		Bias: law.Bias, SD: law.SD,
		ConsumerPPM: found.ConsumerPPM, ProducerPPM: found.ProducerPPM,
		Long: &found.Samples.Long, Short: &found.Samples.Short,
		TallestGood: found.Samples.TallestGood, ShortestGood: found.Samples.ShortestGood,
		Met: met(a.plan, found),
	}
}

// met tells whether both shares are within their targets; nil where they are not known.
func met(plan *press.Result, found model.AsFound) *bool {
	if found.ConsumerPPM == nil || found.ProducerPPM == nil {
		return nil
	}
	target := &plan.Plan.Targets
	m := *found.ConsumerPPM <= target.FalseAcceptPPM && *found.ProducerPPM <= target.FalseRejectPPM
	return &m
}

// root is the root of the sum of squares.
func root(xs ...float64) float64 {
	var s float64
	for _, x := range xs {
		s += x * x
	}
	return math.Sqrt(s)
}

// A Mend is a correction of the nest and what the station as found then promises.
type Mend struct {
	Steps                    int     // of the position
	Nest                     float64 // mm
	ConsumerPPM, ProducerPPM float64
	Met                      bool
}

// Mend tells what entering the nest where the station was found to have it does to the
// promise; false where the bias is not worth a step, or nothing is accepted then. Where the
// window is set by hand it stays, and nothing is mended by it.
func (a *AsFound) Mend(plan *press.Result) (Mend, bool) {
	st := &plan.Plan.Station
	m := Mend{Steps: int(math.Round(a.Bias / st.PositionStep))}
	if m.Steps == 0 {
		return m, false
	}
	moved := float64(m.Steps) * st.PositionStep
	m.Nest = tidy(st.Nest + moved)
	after, ok := WithNest(plan, m.Nest).AsFound(model.FoundError{Bias: a.Bias - moved, SD: a.SD})
	kept := met(plan, after)
	if !ok || kept == nil {
		return m, false
	}
	m.ConsumerPPM, m.ProducerPPM, m.Met = *after.ConsumerPPM, *after.ProducerPPM, *kept
	return m, true
}

// kept tells whether both targets are known to be met.
func (a *AsFound) kept() bool { return a != nil && a.Met != nil && *a.Met }
