package drill

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/verdict"
)

// proof is the other way to the right answers: the signals from readings and the
// three positions, the table from the drawing's limits, by press/verdict alone.
type proof struct {
	p    *press.Plan
	r    *press.Result
	s    verdict.Signals
	x    verdict.Range
	sure verdict.Range
	u    float64
}

func proofOf(p *press.Plan, r *press.Result) proof {
	q := proof{p: p, r: r, u: 2 * r.Window.Uncertainty}
	q.s = verdict.Signals{Start: r.Travel.ApproachEnd, End: *r.Travel.PushEnd, ZoneStart: *(*r.Window.Zone)[0], ZoneEnd: *(*r.Window.Zone)[1]}
	q.x = verdict.Range{Low: r.Window.GoodRange[0], High: r.Window.GoodRange[1]}
	middle := (q.x.Low + q.x.High) / 2
	q.sure = verdict.Range{Low: middle, High: middle}
	if a := r.Window.Acceptance; a != nil {
		step := p.Station.PositionStep
		low, high := math.Ceil(a[0]/step-1e-9)*step, math.Floor(a[1]/step+1e-9)*step
		if low <= high+1e-9 {
			q.sure = verdict.Range{Low: low, High: high}
		}
	}
	return q
}

func (q proof) table() verdict.Table {
	missing := verdict.Insert{Nowhere: true}
	if at := q.r.Traces(q.p).NoInsert; at != nil {
		missing = verdict.Insert{Reading: *at}
	}
	return verdict.NewTable(q.s, verdict.Judgement{Drawing: q.x, Sure: q.sure}, missing)
}

func (q proof) cells() map[string][]string {
	t := q.table()
	return map[string][]string{"on-on": t.OnOn, "on-off": t.OnOff, "off-on": t.OffOn, "off-off": t.OffOff}
}

func name(arrival, zone bool) string {
	return map[bool]string{true: "on", false: "off"}[arrival] + "-" + map[bool]string{true: "on", false: "off"}[zone]
}

// pairs of a reading, give or take its uncertainty: by trying it every 1/400 of
// the interval and at the places where the signals change.
func (q proof) pairs(reading float64, arrival, zone *bool) []string {
	tries := []float64{reading}
	if q.u > 0 {
		for i := range 401 {
			tries = append(tries, reading-q.u+2*q.u*float64(i)/400)
		}
		for _, x := range []float64{q.s.ZoneStart, q.s.ZoneEnd, q.s.End} {
			if x >= reading-q.u && x <= reading+q.u {
				tries = append(tries, x)
			}
		}
	}
	var out []string
	for _, x := range tries {
		id := "early"
		if !q.s.Early(x) {
			a, z := q.s.At(x)
			if arrival != nil {
				a = *arrival
			}
			if zone != nil {
				z = *zone
			}
			id = name(a, z)
		}
		if !slices.Contains(out, id) {
			out = append(out, id)
		}
	}
	slices.Sort(out)
	return out
}

// TestRightAnswersAreProved goes through every exercise of 1,000 random plans.
// Derived: by press/verdict from the positions, not by the code under test.
func TestRightAnswersAreProved(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 1))
	plans, ambiguous, items, two, unsolved := 0, 0, 0, 0, 0
	for plans < 1000 {
		p, ok := randomPlan(t, rng)
		if !ok {
			continue
		}
		r := press.Evaluate(p)
		if r.Verdict == nil {
			continue
		}
		plans++
		q, d := proofOf(p, r), drillOf(t, p, r)
		require.Equal(t, q.table().Ambiguous(), r.Verdict.Ambiguous)
		if r.Verdict.Ambiguous {
			ambiguous++
		}
		if d.Impossible()[Zone] != "" {
			unsolved++
			q.noZone(t, d)
		}
		for _, key := range d.Keys(Levels) {
			e, ok := d.Exercise(key, uint64(plans))
			require.True(t, ok, key)
			items++
			if len(e.Right) > 1 {
				two++
			}
			sound(t, e)
			q.prove(t, d, e)
			if t.Failed() {
				t.Fatalf("plan %d, item %s", plans, key)
			}
		}
	}
	t.Logf("%d plans, %d of them ambiguous; %d exercises, %d of them with more than one right answer; %d plans where no zone can be set", plans, ambiguous, items, two, unsolved)
	assert.Greater(t, ambiguous, 100)
	assert.Less(t, ambiguous, 900)
	assert.Greater(t, two, 100)
	assert.Greater(t, unsolved, 10)
}

// sound: choices are told apart, every wrong one has a reason, every right one
// none.
func sound(t *testing.T, e Exercise) {
	t.Helper()
	assert.NotEmpty(t, e.Question, e.Key)
	assert.NotEmpty(t, e.Explain, e.Key)
	if e.Zone != nil {
		return
	}
	require.NotEmpty(t, e.Right, e.Key)
	require.GreaterOrEqual(t, len(e.Choices), 3, e.Key)
	ids, texts := map[string]bool{}, map[string]bool{}
	rights := 0
	for _, c := range e.Choices {
		assert.False(t, ids[c.ID] || texts[c.Text], "%s: %s stands twice", e.Key, c.Text)
		ids[c.ID], texts[c.Text] = true, true
		right := slices.Contains(e.Right, c.ID)
		if right {
			rights++
		}
		assert.Equal(t, right, c.Reason == "", "%s: %s: reason %q", e.Key, c.ID, c.Reason)
		for _, s := range []string{c.Text, c.Reason} {
			assert.NotContains(t, s, "NaN")
			assert.NotContains(t, s, "..")
			assert.NotContains(t, s, "  ")
		}
		got := e.Judge(Answer{Choice: c.ID})
		assert.Equal(t, right, got.Right, "%s: %s", e.Key, c.ID)
		assert.NotEmpty(t, got.Reason)
	}
	assert.Equal(t, len(e.Right), rights, "%s: every right answer can be chosen", e.Key)
	assert.Less(t, rights, len(e.Choices), "%s: some answer is wrong", e.Key)
	assert.False(t, e.Judge(Answer{}).Right)
}

// prove finds the right answers of one exercise by the other way.
func (q proof) prove(t *testing.T, d *Drill, e Exercise) {
	t.Helper()
	part := strings.Split(e.Key, "/")
	sorted := slices.Clone(e.Right)
	slices.Sort(sorted)
	switch part[0] {
	case "read":
		list := slices.Clone(q.cells()[part[1]])
		if verdict.Contradict(part[1] == "on-on", list) {
			list = append(list, "unclear")
		}
		if len(list) == 0 {
			list = []string{"fault"}
		}
		slices.Sort(list)
		assert.Equal(t, list, sorted, e.Key)
	case "lamps":
		var list []string
		for id, words := range q.cells() {
			if slices.Contains(words, part[1]) {
				list = append(list, id)
			}
		}
		slices.Sort(list)
		assert.Equal(t, list, sorted, e.Key)
	case "do":
		assert.Equal(t, []string{part[1]}, sorted, e.Key)
	case "height", "height-alone":
		h := *e.Picture.Height
		reading := q.x.High + q.p.Requirement.HeightLow - h
		assert.Equal(t, q.pairs(reading, nil, nil), sorted, "%s: %v", e.Key, h)
	case "predict":
		assert.Equal(t, q.row(e.Picture.Row), sorted, e.Key)
	case "blind":
		q.proveBlind(t, d, e)
	case "react":
		q.proveReact(t, d, e)
	case "zone":
		q.proveZone(t, e)
	default:
		t.Errorf("no proof for %s", e.Key)
	}
}

// row of the catalogue: signals from its reading, stuck ones put over them.
func (q proof) row(i int) []string {
	f := q.r.Faults[i]
	if f.Verdict == press.EarlyContact {
		return []string{"early"}
	}
	on, off := true, false
	var arrival, zone *bool
	if !f.Own {
		switch f.Name {
		case press.RowArrivalStuckOn:
			arrival = &on
		case press.RowArrivalStuckOff:
			arrival = &off
		case press.RowZoneStuckOn:
			zone = &on
		case press.RowZoneStuckOff:
			zone = &off
		}
	}
	if f.Reading != nil {
		return q.pairs(*f.Reading, arrival, zone)
	}
	a, z := false, q.s.InZone(q.s.End)
	if arrival != nil {
		a = *arrival
	}
	if zone != nil {
		z = *zone
	}
	return []string{name(a, z)}
}

func (q proof) proveBlind(t *testing.T, d *Drill, e Exercise) {
	t.Helper()
	state := func(f press.FaultRow) string {
		if f.Detection >= q.p.Faults.SampleProbability {
			return "found"
		}
		good := 0.0 // how often the nominal part is refused: the first row, where there is one
		if n := q.r.Faults[0]; n.Name == "nominal" {
			good = 1 - n.Detection
		}
		if f.Detection <= math.Max(1-q.p.Faults.SampleProbability, good+1e-6) {
			return "unfound"
		}
		return "luck"
	}
	if e.Key != "blind/which" {
		assert.Equal(t, []string{state(q.r.Faults[e.Picture.Row])}, e.Right, e.Key)
		return
	}
	for _, c := range e.Choices {
		var i int
		for _, digit := range c.ID {
			i = 10*i + int(digit-'0')
		}
		assert.Equal(t, state(q.r.Faults[i]) == "unfound", slices.Contains(e.Right, c.ID), e.Key)
	}
}

func (q proof) proveReact(t *testing.T, d *Drill, e Exercise) {
	t.Helper()
	part := strings.Split(e.Key, "/")
	step := map[string]int{"first": 0, "next": 1}[part[3]]
	for _, x := range d.list {
		if PairID(x.Pair) != part[1] || string(x.Situation) != part[2] {
			continue
		}
		for _, c := range e.Choices {
			assert.Equal(t, c.Text == x.Checks[step], slices.Contains(e.Right, c.ID), "%s: %s", e.Key, c.Text)
		}
	}
}

// works tells whether a zone judges the parts of a task rightly.
func (q proof) works(task *ZoneTask, z1, z2 float64) bool {
	s := q.s
	s.ZoneStart, s.ZoneEnd = z1, z2
	cells := map[string][]string{}
	for _, x := range task.Parts {
		a, z := s.At(x.Reading)
		cells[name(a, z)] = append(cells[name(a, z)], x.Word)
	}
	for id, list := range cells {
		if verdict.Contradict(id == "on-on", list) {
			return false
		}
	}
	return true
}

func (q proof) proveZone(t *testing.T, e Exercise) {
	t.Helper()
	task := e.Zone
	for _, x := range task.Parts {
		word := press.Good
		switch {
		case x.Height > q.p.Requirement.HeightHigh:
			word = press.Long
		case x.Height < q.p.Requirement.HeightLow:
			word = press.Short
		}
		assert.Equal(t, word, x.Word, "%s: %v mm high", e.Key, x.Height)
	}
	assert.True(t, q.works(task, task.Solution[0], task.Solution[1]), "%s: the solution %v", e.Key, task.Solution)
	for _, by := range []float64{-0.4, -0.1, -0.03, 0, 0.03, 0.1, 0.4} {
		for _, to := range []float64{-0.4, -0.1, 0, 0.1} {
			zone := press.Pair{task.Solution[0] + by, task.Solution[1] + to}
			want := zone[0] < zone[1] && q.works(task, zone[0], zone[1])
			got := e.Judge(Answer{Zone: &zone})
			assert.Equal(t, want, got.Right, "%s: zone %v: %s", e.Key, zone, got.Reason)
		}
	}
	assert.False(t, e.Judge(Answer{}).Right)
}

// noZone: where the drill says that no zone can be set, none of all that differ
// for its parts can.
func (q proof) noZone(t *testing.T, d *Drill) {
	t.Helper()
	for n := range zoneTasks {
		task, why := d.zoneTask(n)
		if why == "" || task == nil || len(task.Parts) == 0 {
			continue
		}
		if !slices.ContainsFunc(task.Parts, func(x ZonePart) bool { return x.Word == press.Good }) {
			continue
		}
		edges := []float64{q.s.End - 1e-6, q.s.End + 1e-6, q.s.Start - 1}
		for _, x := range task.Parts {
			edges = append(edges, x.Reading-1e-6, x.Reading+1e-6)
		}
		for _, z1 := range edges {
			for _, z2 := range edges {
				if z1 < z2 && q.works(task, z1, z2) {
					t.Fatalf("task %d is called impossible (%s), but %v to %v does it", n, why, z1, z2)
				}
			}
		}
	}
}
