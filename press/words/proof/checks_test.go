package proof

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/model"
	"ramplan/press/proving"
)

// Every check that a study of any kind makes has a name, a question, advice where it does not
// pass, and a sentence with its figures, in the units of the reader.
func TestEveryCheckIsSaid(t *testing.T) {
	var say Words
	r := station(t, nil)
	seen := map[string]map[string]bool{}
	for _, list := range met(t, r) {
		for _, x := range list {
			j := proving.Judged{Kind: x.study.Kind, Result: x.result}
			if x.result == nil {
				j = proving.Assess(r, []*proving.Study{x.study}, "2026-11-28").Studies[0]
			} else { // its figures are put together by hand, so its checks are as well
				for name := range checksOf[x.study.Kind] {
					for _, a := range []proving.Answer{proving.Pass, proving.Fail, proving.Open} {
						j.Checks = append(j.Checks, proving.Check{Name: name, Outcome: a})
					}
				}
			}
			for _, c := range j.Checks {
				if seen[j.Kind] == nil {
					seen[j.Kind] = map[string]bool{}
				}
				seen[j.Kind][c.Name] = true
				assert.NotEmpty(t, say.CheckName(j.Kind, c.Name))
				assert.Regexp(t, `\?$`, say.CheckAsks(j.Kind, c.Name))
				said := say.CheckSaid(r, x.study, &j, c)
				holds(t, said)
				assert.NotRegexp(t, metricUnit, inches.CheckSaid(r, x.study, &j, c), said)
				if c.Outcome != proving.Pass && x.result == nil {
					holds(t, say.CheckAdvice(j.Kind, c))
				}
			}
			if lead := say.LeadOf(r, x.study, &j); j.Result != nil {
				holds(t, lead)
				assert.NotRegexp(t, metricUnit, inches.LeadOf(r, x.study, &j), lead)
			}
		}
	}
	for kind, checks := range checksOf {
		for name, c := range checks {
			assert.True(t, seen[kind][name] || name == proving.CheckRange, "%s %s", kind, name)
			assert.NotEmpty(t, c.open)
		}
	}
	assert.Panics(t, func() { say.CheckName(proving.Master, "none") })
}

// What the sentences of checks say, of one sound master: by hand from its figures.
func TestWhatAMasterSays(t *testing.T) {
	var say Words
	r := station(t, nil)
	// The example predicts 140 − 40 + 2467.547/18000 = 100.137086; 30 readings, 4 µm on both sides.
	s := master(alternating(30, 100.139, 0.004)...)
	j := proving.Assess(r, []*proving.Study{s}, "2026-11-28").Studies[0]
	var said []string
	for _, c := range j.Checks {
		said = append(said, say.CheckSaid(r, s, &j, c))
	}
	require.Len(t, said, 4)
	assert.Equal(t, "30 pushes.", said[0])
	assert.Equal(t, "It reads 0.0019\u202fmm past the predicted 100.137\u202fmm, ±\u202f0.0015\u202fmm; the plan allows ±\u202f0.019\u202fmm.", said[1])
	assert.Contains(t, said[2], "0.0041\u202fmm found, 0.011\u202fmm planned, one standard deviation")
	assert.Equal(t, "No more than chance makes.", said[3])
}

// Readings that are all the same show no station without scatter.
func TestReadingsThatAreAllTheSame(t *testing.T) {
	var say Words
	r := station(t, nil)
	s := master(100.14, 100.14, 100.14)
	j := proving.Assess(r, []*proving.Study{s}, "2026-11-28").Studies[0]
	assert.Contains(t, say.LeadOf(r, s, &j), "all the same: a finer reading")
	assert.Contains(t, say.CheckSaid(r, s, &j, proving.Check{Name: proving.CheckSpread}), "hides how they scatter")
}

// Every state of a station says what stands in its way.
func TestRevisionState(t *testing.T) {
	var say Words
	kinds := func(changes map[string]string) map[string]proving.KindState {
		m := map[string]proving.KindState{proving.Restart: {State: proving.StateMissing}, proving.Trial: {State: proving.StateMissing}}
		for _, k := range proving.Needed {
			m[k] = proving.KindState{State: "pass"}
		}
		for k, s := range changes {
			m[k] = proving.KindState{State: s}
		}
		return m
	}
	for want, p := range map[string]proving.Proved{
		"Revision A is proved until 2027-11-20.":                                                                 {State: proving.StateProved, Until: of("2027-11-20"), Kinds: kinds(nil)},
		"Revision A is not proved: the plan itself has a blocker.":                                               {State: proving.StateNotProved, PlanBlocked: true, Kinds: kinds(nil)},
		"Revision A is not proved: load cell and stiffness missing.":                                             {State: proving.StateNotProved, Kinds: kinds(map[string]string{proving.LoadCell: proving.StateMissing, proving.Stiffness: proving.StateMissing})},
		"Revision A is not proved: master still open; limit samples shown to another plan.":                      {State: proving.StateNotProved, Kinds: kinds(map[string]string{proving.Master: "open", proving.Samples: proving.StateOtherPlan})},
		"Revision A is not proved: refuted by trial.":                                                            {State: proving.StateNotProved, Kinds: kinds(map[string]string{proving.Trial: "fail"})},
		"Revision A is not proved: master taken with another ram.":                                               {State: proving.StateNotProved, Kinds: kinds(map[string]string{proving.Master: proving.StateOtherRam})},
		"Revision A is no longer proved: something happened since to the station, which withdrew limit samples.": {State: proving.StateWithdrawn, Kinds: kinds(map[string]string{proving.Samples: proving.StateWithdrawn})},
		"Revision A is no longer proved: more than a year has gone by since load cell.":                          {State: proving.StateExpired, Kinds: kinds(map[string]string{proving.LoadCell: proving.StateExpired})},
		"Revision A is not proved: as it was found, the station misses a target of the plan.":                    {State: proving.StateNotProved, AsFound: &proving.AsFound{}, Kinds: kinds(nil)},
		"Revision A is not proved: what the station promises as it was found is not known.":                      {State: proving.StateNotProved, Kinds: kinds(nil)},
	} {
		assert.Equal(t, want, say.RevisionState("A", &p))
	}
	assert.Equal(t, "The plan is proved until 2027-11-20.", say.RevisionState("", &proving.Proved{State: proving.StateProved, Until: of("2027-11-20")}))
}

// The station as found: which target it misses, and what mends it.
func TestAsFoundIsSaid(t *testing.T) {
	var say Words
	r := station(t, nil)
	found := func(r *press.Result, bias float64) (*proving.AsFound, string) {
		sd := 0.0105
		f, ok := r.AsFound(model.FoundError{Bias: bias, SD: sd})
		require.True(t, ok)
		a := &proving.AsFound{Bias: bias, SD: sd, ConsumerPPM: f.ConsumerPPM, ProducerPPM: f.ProducerPPM}
		a.Met = of(*f.ConsumerPPM <= 50 && *f.ProducerPPM <= 2000)
		s := say.AsFoundOf(r, a)
		holds(t, s)
		assert.NotRegexp(t, metricUnit, inches.AsFoundOf(r, a))
		return a, s
	}
	a, s := found(r, 0.001)
	assert.True(t, *a.Met)
	assert.Contains(t, s, "0.001\u202fmm past the planned places and keeps both targets")

	// 0.024 past is two steps of 0.01, and 0.004 are left.
	a, s = found(r, 0.024)
	assert.False(t, *a.Met)
	m, ok := a.Mend(r)
	require.True(t, ok)
	assert.Equal(t, 2, m.Steps)
	assert.Equal(t, 140.02, m.Nest)
	assert.Contains(t, s, "misses the target for refused parts")
	assert.Contains(t, s, "140.02\u202fmm, 2 steps of 0.01\u202fmm past the plan's")
	assert.Equal(t, m.Met, strings.Contains(s, "mends it: "))

	// Where the window is set by hand another nest moves nothing.
	hand := station(t, map[string]string{"window.zone_start": "115.08", "window.zone_end": "115.35", "window.push_stroke": "7.73", "window.approach_end": "107.46"})
	a, s = found(hand, 0.024)
	m, _ = a.Mend(hand)
	assert.InDelta(t, *a.ProducerPPM, m.ProducerPPM, 1e-3)
	assert.Contains(t, s, "that alone does not mend it")
	assert.Empty(t, say.AsFoundOf(r, nil))
}

// What is offered is written as the plan has it and as the study offers it.
func TestOfferedEntriesAreSaid(t *testing.T) {
	var say Words
	p := station(t, nil).Plan
	a := &proving.Adopt{
		CurvePoints: [][2]float64{{10, 196.5}, {70, 2570}}, ForceTolerance: of(2.62), ForceScatter: of(5.6), Repeatability: of(0.016),
		Nest: of(140.008), Stiffness: of(16936.0), StiffnessTolerance: of(7.3), Reference: of(0.012),
	}
	want := map[string][2]string{
		"ram.curve.points":              {"7 points, 10\u202f% 200.0\u202fN to 70\u202f% 2620.0\u202fN", "2 points, 10\u202f% 196.5\u202fN to 70\u202f% 2570.0\u202fN"},
		"ram.force_tolerance":           {"±\u202f7\u202f%", "±\u202f2.62\u202f%"},
		"ram.force_scatter":             {"±\u202f15.0\u202fN", "±\u202f5.6\u202fN"},
		"ram.repeatability":             {"±\u202f0.020\u202fmm", "±\u202f0.016\u202fmm"},
		"station.nest":                  {"140.000\u202fmm", "140.008\u202fmm"},
		"station.stiffness":             {"18\u202f000\u202fN/mm", "16\u202f936\u202fN/mm"},
		"station.stiffness_tolerance":   {"±\u202f5\u202f%", "±\u202f7.3\u202f%"},
		"station.reference_uncertainty": {"±\u202f0.010\u202fmm", "±\u202f0.012\u202fmm"},
	}
	changes := a.Changes(p)
	require.Len(t, changes, len(want))
	for _, c := range changes {
		was, is := say.AdoptValues(p, c)
		assert.Equal(t, want[c.Path], [2]string{was, is})
		assert.NotEqual(t, c.Path, say.AdoptName(c.Path))
		holds(t, say.AdoptDoes(c.Path))
		_, is = inches.AdoptValues(p, c)
		assert.NotRegexp(t, metricUnit, is)
	}
	// By hand: 16936 N/mm is 16936/4.4482216·25.4 lbf/in.
	assert.Equal(t, "96\u202f707\u202flbf/in", inches.Stiffness(16936))

	for _, role := range []*string{nil, of("long"), of("short"), of("good"), of("empty")} {
		assert.NotEmpty(t, say.RoleName(role))
		holds(t, say.RoleSays(role))
	}
}
