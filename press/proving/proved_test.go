package proving

import (
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

func of[T any](v T) *T { return &v }

// plan is the example plan, with entries changed.
func plan(t testing.TB, changes map[string]string) *press.Result {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	d := p.Draft()
	for path, text := range changes {
		d.Set(path, text)
	}
	p, ps = d.Check()
	require.Empty(t, ps)
	return press.Evaluate(p)
}

// proof is a list of studies that were judged, by hand, so that the state alone is tried.
type proof struct {
	studies []*Study
	judged  []Judged
}

func (p *proof) add(kind, at string, v Answer) *Study {
	s := &Study{Kind: kind, TakenAt: at}
	j := Judged{Kind: kind, Verdict: v}
	switch kind {
	case Master:
		j.Result = &MasterResult{Bias: Bias{Value: 0.001}, Repeatability: &Supported{Upper: of(0.012)}}
	case Restart:
		j.Result = &RestartResult{Supported: of(0.008)}
	case Samples:
		s.PlanDigest = "sha256:b74624aea0e6"
	}
	p.studies, p.judged = append(p.studies, s), append(p.judged, j)
	return s
}

func (p *proof) happened(event, at string) {
	p.add(Event, at, "").Event = event
}

func (p *proof) on(t testing.TB, day string) Proved {
	return prove(plan(t, nil), p.studies, p.judged, day)
}

// proofOf are the four studies that are needed, all passed, each on a day of its own.
func proofOf() *proof {
	p := &proof{}
	p.add(LoadCell, "2026-11-20", Pass)
	p.add(Stiffness, "2026-11-21", Pass)
	p.add(Master, "2026-11-22", Pass)
	p.add(Samples, "2026-11-25", Pass)
	return p
}

// Proved, until the first of the four is a year old: 2026-11-20 and 365 days are 2027-11-20.
func TestProved(t *testing.T) {
	got := proofOf().on(t, "2026-11-28")
	assert.Equal(t, StateProved, got.State)
	assert.Equal(t, "2027-11-20", *got.Until)
	require.NotNil(t, got.AsFound)
	assert.True(t, *got.AsFound.Met)
	assert.Equal(t, KindState{State: "pass", Study: of(2)}, got.Kinds[Master])
	assert.Equal(t, KindState{State: StateMissing}, got.Kinds[Trial])
}

// A study counts on its 365th day and not on the next; none counts before it was taken.
func TestProvedByDay(t *testing.T) {
	for day, want := range map[string]string{
		"2026-11-24": StateNotProved, "2026-11-25": StateProved, "2027-11-20": StateProved, "2027-11-21": StateExpired,
	} {
		got := proofOf().on(t, day)
		assert.Equal(t, want, got.State, day)
		assert.Equal(t, day != "2026-11-24", got.Until != nil, day) // one is missing yet
	}
	assert.Equal(t, StateMissing, proofOf().on(t, "2026-11-24").Kinds[Samples].State)
	assert.Nil(t, proofOf().on(t, "2026-11-21").AsFound)
}

// Of a kind the latest counts, by its moment and not by its place; of equal ones the later given.
func TestLatestCounts(t *testing.T) {
	p := proofOf()
	p.add(Master, "2026-11-23T09:00:00+01:00", Fail)
	assert.Equal(t, StateNotProved, p.on(t, "2026-11-28").State)
	p.add(Master, "2026-11-23T08:30:00Z", Pass) // half an hour later
	assert.Equal(t, StateProved, p.on(t, "2026-11-28").State)
	p.add(Master, "2026-11-23T08:29:00Z", Fail) // given later, pushed before
	assert.Equal(t, StateProved, p.on(t, "2026-11-28").State)
	p.add(Master, "2026-11-23T09:30:00+01:00", Fail) // the same moment
	got := p.on(t, "2026-11-28")
	assert.Equal(t, StateNotProved, got.State)
	assert.Equal(t, KindState{State: "fail", Study: of(7)}, got.Kinds[Master])
}

// What was given first does not matter, save for studies of one moment.
func TestOrderDoesNotMatter(t *testing.T) {
	p := proofOf()
	p.add(Master, "2026-11-24", Fail)
	p.add(Trial, "2026-11-24", Pass)
	p.happened(Moved, "2026-11-21")
	p.happened(SetpointsChanged, "2026-11-24")
	want := p.on(t, "2026-11-28")
	r := rand.New(rand.NewPCG(1, 1)) // seeded; any order holds
	for range 50 {
		q := &proof{}
		for _, i := range r.Perm(len(p.studies)) {
			q.studies, q.judged = append(q.studies, p.studies[i]), append(q.judged, p.judged[i])
		}
		got := q.on(t, "2026-11-28")
		assert.Equal(t, want.State, got.State)
		for kind, s := range want.Kinds {
			assert.Equal(t, s.State, got.Kinds[kind].State, kind)
			if s.Study != nil {
				assert.Same(t, p.studies[*s.Study], q.studies[*got.Kinds[kind].Study], kind)
			}
		}
	}
}

// What is not needed stands against a station only where it failed.
func TestBesideTheFour(t *testing.T) {
	for kind, by := range map[string]map[Answer]string{
		Restart: {Pass: StateProved, Open: StateProved, Fail: StateNotProved},
		Trial:   {Pass: StateProved, Open: StateProved, Fail: StateNotProved},
	} {
		for verdict, want := range by {
			p := proofOf()
			p.add(kind, "2026-11-26", verdict)
			assert.Equal(t, want, p.on(t, "2026-11-28").State, "%s %s", kind, verdict)
		}
	}
	for _, kind := range Needed {
		for _, v := range []Answer{Open, Fail} {
			p := proofOf()
			p.add(kind, "2026-11-26", v)
			assert.Equal(t, StateNotProved, p.on(t, "2026-11-28").State, "%s %s", kind, v)
		}
	}
}

// What each event takes back.
func TestEvents(t *testing.T) {
	all := []string{LoadCell, Stiffness, Master, Samples, Restart, Trial}
	for event, lost := range map[string][]string{
		RamExchanged: all, ControllerExchanged: all, Crash: all,
		NestExchanged: all[1:], ToolExchanged: all[1:], Moved: all[1:],
		SetpointsChanged: {Samples, Trial},
	} {
		p := proofOf()
		p.add(Restart, "2026-11-22", Pass)
		p.add(Trial, "2026-11-24", Pass)
		p.happened(event, "2026-11-26")
		got := p.on(t, "2026-11-28")
		assert.Equal(t, StateWithdrawn, got.State, event)
		for _, kind := range all {
			assert.Equal(t, slices.Contains(lost, kind), got.Kinds[kind].State == StateWithdrawn, "%s %s", event, kind)
		}
		assert.Equal(t, StateProved, p.on(t, "2026-11-25").State, event) // not yet
	}
	assert.Len(t, Events, 7)
}

// An event at the very moment of a study, or later, withdraws it. A bare day of an event is
// its last moment, that of a study its first: doubt counts against.
func TestMomentsOfEvents(t *testing.T) {
	for _, c := range []struct {
		study, event string
		withdrawn    bool
	}{
		{"2026-11-25", "2026-11-25", true},
		{"2026-11-25", "2026-11-24", false},
		{"2026-11-25T14:00:00Z", "2026-11-25", true},
		{"2026-11-25T14:00:00Z", "2026-11-25T14:00:00Z", true},
		{"2026-11-25T14:00:00Z", "2026-11-25T13:59:59Z", false},
		{"2026-11-25T14:00:00+02:00", "2026-11-25T12:00:00Z", true}, // the same moment
		{"2026-11-25T14:00:00+02:00", "2026-11-25T13:30:00+02:00", false},
		{"2026-11-25T14:00:00Z", "2026-11-25T14:30:00+01:00", false}, // 13:30 in UTC
		{"2026-11-25", "2026-11-25T00:00:00Z", true},
		{"2026-11-25", "2026-11-24T23:59:59Z", false},
		{"2026-11-26T00:30:00Z", "2026-11-25", false},
		{"2026-11-26T00:30:00+01:00", "2026-11-25", true}, // 23:30 of the day before in UTC
	} {
		p := proofOf()
		p.add(Samples, c.study, Pass)
		p.happened(SetpointsChanged, c.event)
		got := p.on(t, "2026-11-28").Kinds[Samples].State
		assert.Equal(t, c.withdrawn, got == StateWithdrawn, "%s after %s", c.study, c.event)
	}
}

// Withdrawn comes before expired, and a kind's own faults before both.
func TestStateOfAKind(t *testing.T) {
	p := proofOf()
	p.happened(Crash, "2026-11-26")
	assert.Equal(t, StateWithdrawn, p.on(t, "2027-12-24").State)
	p.studies[0].Ram = "another ram"
	p.studies[3].PlanDigest = "sha256:0123456789ab"
	got := p.on(t, "2026-11-28")
	assert.Equal(t, StateOtherRam, got.Kinds[LoadCell].State)
	assert.Equal(t, StateOtherPlan, got.Kinds[Samples].State)
	assert.Equal(t, StateWithdrawn, got.State) // the master still is

	// The samples prove the window as set: they name the plan, in whatever case, or prove nothing.
	p = proofOf()
	p.studies[3].PlanDigest = "sha256:B74624AEA0E690"
	assert.Equal(t, StateProved, p.on(t, "2026-11-28").State)
	p.studies[3].PlanDigest = ""
	assert.Equal(t, StateOtherPlan, p.on(t, "2026-11-28").Kinds[Samples].State)
	p.add(Trial, "2026-11-26", Fail)
	assert.Equal(t, "fail", p.on(t, "2026-11-28").Kinds[Trial].State)
	p.studies[4].PlanDigest = "sha256:0123456789ab"
	assert.Equal(t, StateOtherPlan, p.on(t, "2026-11-28").Kinds[Trial].State)
	// The machine is assessed against any plan, and by the ram that both name.
	p.studies[0].PlanDigest, p.studies[0].Ram = "sha256:0123456789ab", "Ram under test"
	assert.Equal(t, "pass", p.on(t, "2026-11-28").Kinds[LoadCell].State)
}

// A plan that may not be used is not proved, whatever was shown.
func TestBlockedIsNotProved(t *testing.T) {
	p := proofOf()
	blocked := plan(t, map[string]string{"window.setting": "40"})
	require.True(t, blocked.Blocked())
	got := prove(blocked, p.studies, p.judged, "2026-11-28")
	assert.True(t, got.PlanBlocked)
	assert.Equal(t, StateNotProved, got.State)
}

// The promise for the station as it was found: with what its master supports in place of the
// plan's repeatability and force scatter, moved by its bias. With just the plan's own error and no
// bias it is the plan's promise.
func TestAsFound(t *testing.T) {
	r := plan(t, nil)
	p := proofOf()
	m := p.judged[2].Result.(*MasterResult)
	// sd of the plan's own normal error: √(u² − nest_drift²/3), no row is a datum here.
	own := r.Window.Uncertainty*r.Window.Uncertainty - 0.01*0.01/3
	bend := r.Force.Typical / 18000 * 0.05
	m.Bias.Value, m.Repeatability.Upper = 0, of(2*math.Sqrt(own-bend*bend/4-0.005*0.005))
	got := prove(r, p.studies, p.judged, "2026-11-28").AsFound
	assert.InDelta(t, math.Sqrt(own), got.SD, 1e-12)
	assert.InDelta(t, *r.Risk.ConsumerPPM, *got.ConsumerPPM, 1e-3)
	assert.InDelta(t, *r.Risk.ProducerPPM, *got.ProducerPPM, 1e-3)
	assert.InDelta(t, r.Samples.Long, *got.Long, 1e-9)
	assert.InDelta(t, *r.Samples.ShortestGood, *got.ShortestGood, 1e-9)
	assert.True(t, *got.Met)

	// Off by 0.02, which the plan allows, it refuses more than 2000 ppm of the right heights: as
	// many as are then read past the end, and a little.
	m.Bias.Value = 0.02
	off := prove(r, p.studies, p.judged, "2026-11-28")
	c, _ := r.PartChances(0.02)
	assert.InDelta(t, 1e6*(1-c.Of(true, true)), *off.AsFound.ProducerPPM, 1)
	assert.False(t, *off.AsFound.Met)
	assert.Equal(t, StateNotProved, off.State)
	assert.InDelta(t, *got.Long+0.02, *off.AsFound.Long, 1e-9)

	// A restart that counts tells what a new start moves: ± 0.008 in place of ± 0.01.
	m.Bias.Value = 0
	restarted := p.add(Restart, "2026-11-23", Pass)
	less := prove(r, p.studies, p.judged, "2026-11-28").AsFound
	assert.InDelta(t, math.Sqrt(own-0.005*0.005+0.004*0.004), less.SD, 1e-12)
	restarted.TakenAt = "2026-11-29" // after the day asked
	assert.InDelta(t, math.Sqrt(own), prove(r, p.studies, p.judged, "2026-11-28").AsFound.SD, 1e-12)

	m.Repeatability = nil // one push tells of no scatter
	none := prove(r, p.studies, p.judged, "2026-11-28")
	assert.Nil(t, none.AsFound)
	assert.Equal(t, StateNotProved, none.State)
}

// Where the nominal part stalls the shares are not known, and so not kept; the samples are.
func TestAsFoundWhereItStalls(t *testing.T) {
	// 2500 N of drag alone are more than the 2467 N that are there.
	stalling := plan(t, map[string]string{"joint.drag": "2500", "window.setting": "66"})
	require.Nil(t, stalling.Risk.ConsumerPPM)
	require.NotNil(t, stalling.Window.Overlap)
	p := proofOf()
	got := prove(stalling, p.studies, p.judged, "2026-11-28").AsFound
	require.NotNil(t, got)
	assert.Nil(t, got.ConsumerPPM)
	assert.Nil(t, got.Met)
	assert.NotNil(t, got.Long)
}
