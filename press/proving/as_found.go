package proving

import (
	"math"

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
	if r := kinds[Restart]; counts(r.State) {
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
	target := &a.plan.Plan.Targets
	return &AsFound{
		Bias: law.Bias, SD: law.SD,
		ConsumerPPM: found.ConsumerPPM, ProducerPPM: found.ProducerPPM,
		Long: &found.Samples.Long, Short: &found.Samples.Short,
		TallestGood: found.Samples.TallestGood, ShortestGood: found.Samples.ShortestGood,
		Met: found.ConsumerPPM <= target.FalseAcceptPPM && found.ProducerPPM <= target.FalseRejectPPM,
	}
}

// counts tells whether a study of a kind counts for what it found: its state is its verdict.
func counts(state string) bool {
	switch Answer(state) {
	case Pass, Fail, Open:
		return true
	}
	return false
}

// root is the root of the sum of squares.
func root(xs ...float64) float64 {
	var s float64
	for _, x := range xs {
		s += x * x
	}
	return math.Sqrt(s)
}
