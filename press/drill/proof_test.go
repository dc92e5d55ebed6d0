package drill

import (
	"math"
	"math/rand/v2"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/verdict"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
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
	if at := q.r.Traces().NoInsert; at != nil {
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

// share of the readings around one that show an answer: the error is a normal and
// the wander of the nest, which is integrated by Simpson's rule.
func (q proof) share(reading float64, arrival, zone *bool, id string) float64 {
	drift := q.p.Station.NestDrift
	sigma := math.Sqrt(math.Max(0, q.u*q.u/4-drift*drift/3))
	below := func(x float64) float64 { // of the readings lie under x
		normal := func(e float64) float64 {
			if sigma < 1e-9 {
				if x-reading-e < -1e-9 {
					return 0
				}
				return 1
			}
			return 0.5 * math.Erfc(-(x-reading-e)/sigma/math.Sqrt2)
		}
		if drift == 0 {
			return normal(0)
		}
		if sigma < 1e-9 {
			return math.Min(1, math.Max(0, (x-reading+drift)/2/drift))
		}
		const n = 100
		sum := 0.0
		for i := range n + 1 {
			weight := 2.0 + 2*float64(i%2)
			if i == 0 || i == n {
				weight = 1
			}
			sum += weight * normal(drift*(2*float64(i)/n-1))
		}
		return sum / 3 / n
	}
	cuts := []float64{q.s.Start, q.s.ZoneStart, q.s.ZoneEnd, q.s.End}
	slices.Sort(cuts)
	cuts = append(append([]float64{math.Inf(-1)}, cuts...), math.Inf(1))
	sum := 0.0
	for i := range len(cuts) - 1 {
		low, high := cuts[i], cuts[i+1]
		inside := (low + high) / 2
		if i == 0 {
			inside = high - 1
		}
		if i == len(cuts)-2 {
			inside = low + 1
		}
		is := "early"
		if inside >= q.s.Start {
			a, z := q.s.At(inside)
			if arrival != nil {
				a = *arrival
			}
			if zone != nil {
				z = *zone
			}
			is = name(a, z)
		}
		if is != id || low == high {
			continue
		}
		share := -below(low)
		if i == 0 {
			share = 0
		}
		if i == len(cuts)-2 {
			sum += share + 1
		} else {
			sum += share + below(high)
		}
	}
	return sum
}

// one answer, and nearly always.
func (q proof) proveClear(t *testing.T, e Exercise, reading float64, arrival, zone *bool) {
	t.Helper()
	require.Len(t, e.Right, 1, e.Key)
	share := q.share(reading, arrival, zone, e.Right[0])
	assert.GreaterOrEqual(t, share, 0.95-1e-3, "%s: %v is not clear at %v", e.Key, e.Right, reading)
	if share < q.p.Faults.SampleProbability-1e-3 {
		assert.Contains(t, e.Question, "most likely", e.Key)
	}
}

// TestRightAnswersAreProved goes through every exercise of 250 random plans, with
// RAMPLAN_PLANS=all of 1,000. Derived: by press/verdict from the positions, not by the
// code under test.
func TestRightAnswersAreProved(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 1))
	many := 250
	if os.Getenv("RAMPLAN_PLANS") == "all" {
		many = 1000
	}
	plans, ambiguous, items, two, unsolved := 0, 0, 0, 0, 0
	for plans < many {
		p, r := judgedPlan(t, rng)
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
	assert.Greater(t, ambiguous, many/10)
	assert.Less(t, ambiguous, many*9/10)
	assert.Greater(t, two, many/10)
	assert.Greater(t, unsolved, many/100)
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
		assert.False(t, right && c.Grave != "", "%s: %s", e.Key, c.ID)
		assert.NotEmpty(t, got.Reason)
	}
	assert.Equal(t, len(e.Right), rights, "%s: every right answer can be chosen", e.Key)
	assert.Less(t, rights, len(e.Choices), "%s: some answer is wrong", e.Key)
	assert.False(t, e.Judge(Answer{}).Right)
}

// contradicts tells whether a pair, such as on-off, cannot be trusted with these words.
func contradicts(pair string, list []string) bool {
	same := verdict.Table{OnOn: list, OnOff: list, OffOn: list, OffOff: list}
	return same.Contradicts(strings.HasPrefix(pair, "on-"), strings.HasSuffix(pair, "-on"))
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
		if contradicts(part[1], list) {
			list = append(list, "unclear")
		} else if len(list) > 1 { // one answer for both
			sorted = strings.Split(e.Right[0], "+")
			slices.Sort(sorted)
			assert.Len(t, e.Right, 1, e.Key)
			for _, c := range e.Choices {
				assert.NotContains(t, list, c.ID, e.Key)
			}
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
	case "several": // to stop is right, and nothing else ever is
		require.Equal(t, []string{"stop"}, e.Right, e.Key)
		for _, c := range e.Choices {
			assert.Equal(t, c.ID == "stop", c.Grave == "", "%s: %s", e.Key, c.Text)
		}
		assert.NotContains(t, q.cells()[part[1]], "good", e.Key)
	case "height", "height-alone":
		h := *e.Picture.Height
		q.proveClear(t, e, q.x.High+q.p.Requirement.HeightLow-h, nil, nil)
	case "predict":
		q.proveRow(t, e)
	case "unseen":
		q.proveUnseen(t, d, e)
	case "signal", "part", "first", "change", "rule": // by the table of common practice beside them
		assert.Len(t, e.Right, 1, e.Key)
	case "when":
		q.proveWhen(t, e)
	case "hands":
		q.proveHands(t, e)
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

// proveWhen: what a course of the nominal part shows when it is read, on its way
// back and at home.
func (q proof) proveWhen(t *testing.T, e Exercise) {
	t.Helper()
	assert.Equal(t, map[string][]string{"when/read": {"end"}, "when/home": {"right"}, "when/lit": {"stop"}, "when/back": {"nothing"}}[e.Key], e.Right)
	c, ok := q.r.CourseOf(0)
	if !ok || c.Early {
		return
	}
	for _, f := range c.Frames {
		switch f.Phase {
		case press.PhaseRead:
			a, z := q.s.At(c.Rest)
			assert.Equal(t, [2]bool{a && c.Met, z}, [2]bool{f.Arrival, f.Zone}, "read")
		case press.PhaseRetract:
			assert.False(t, f.Arrival && f.Position < c.Rest-1e-6, "nothing stops the ram on its way back")
			if f.Position > q.s.ZoneStart+1e-6 && f.Position < math.Min(c.Rest, q.s.ZoneEnd)-1e-6 {
				assert.True(t, f.Zone, "on the way back through the zone")
			}
		case press.PhaseHome:
			assert.False(t, f.Arrival || f.Zone, "off at home")
		}
	}
}

// proveHands: nothing but standing still is right, every other way in is grave, as is what
// takes a guard away or trusts it for somebody else, and the blow of the approach is that of the plan.
func (q proof) proveHands(t *testing.T, e Exercise) {
	t.Helper()
	for _, c := range e.Choices {
		wrong := !slices.Contains(e.Right, c.ID)
		if e.Key == "hands/approach" {
			assert.Equal(t, !wrong, strings.Contains(c.Text, "at least "+words.Force(q.r.Impact.Early)), c.Text)
			continue
		}
		want, named := map[string]lesson.Grave{"hands/colleague": graveOther, "hands/shield": graveGuard, "hands/bridged": graveGuard, "hands/trapped": ""}[e.Key]
		if !named { // a hand is spoken of
			want = graveHand
		}
		if !wrong {
			want = ""
		}
		assert.Equal(t, want, c.Grave, c.Text)
	}
}

// proveRow: signals from where the ram would come to rest, stuck ones put over
// them.
func (q proof) proveRow(t *testing.T, e Exercise) {
	t.Helper()
	f := q.r.Faults[e.Picture.Row]
	if f.Verdict == press.EarlyContact {
		assert.Equal(t, []string{"early"}, e.Right, e.Key)
		return
	}
	on, off := true, false
	var arrival, zone *bool
	worn := 0.0
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
		case press.RowNestWorn:
			worn = q.p.Faults.NestWear
		}
	}
	switch {
	case f.Reading != nil:
		q.proveClear(t, e, *f.Reading, arrival, zone)
	case worn > 0 && q.r.Faults[0].Reading != nil: // past the push end, but how far?
		q.proveClear(t, e, *q.r.Faults[0].Reading+worn, arrival, zone)
	default:
		a, z := false, q.s.InZone(q.s.End)
		if arrival != nil {
			a = *arrival
		}
		if zone != nil {
			z = *zone
		}
		assert.Equal(t, []string{name(a, z)}, e.Right, e.Key)
	}
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
		require.True(t, f.Detection >= 0.05-1e-9 && f.Detection <= 0.95+1e-9, "%s: %s is found in %v of the cases, which is no clear answer", e.Key, f.Name, f.Detection)
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

// proveUnseen: right is a fault that shows both lamps and is hardly ever refused; every
// other one is nearly always refused.
func (q proof) proveUnseen(t *testing.T, d *Drill, e Exercise) {
	t.Helper()
	for _, c := range e.Choices {
		i := slices.IndexFunc(q.r.Faults, func(f press.FaultRow) bool { return !f.Own && f.Name == c.ID })
		require.GreaterOrEqual(t, i, 0, c.ID)
		f := q.r.Faults[i]
		a, z := false, q.s.InZone(q.s.End)
		if f.Reading != nil {
			a, z = q.s.At(*f.Reading)
		}
		if slices.Contains(e.Right, c.ID) {
			assert.True(t, a && z, "%s: %s shows both lamps", e.Key, c.ID)
			assert.Less(t, f.Detection, 0.5, "%s: %s", e.Key, c.ID)
		} else {
			assert.False(t, a && z, "%s: %s shows others", e.Key, c.ID)
			assert.GreaterOrEqual(t, f.Detection, q.p.Faults.SampleProbability, "%s: %s", e.Key, c.ID)
		}
	}
}

// proveReact: right is what stands on the list and is not done yet. What stops, holds
// back or has to be seen before the next push comes before everything else.
func (q proof) proveReact(t *testing.T, d *Drill, e Exercise) {
	t.Helper()
	part := strings.Split(e.Key, "/")
	step := map[string]int{"first": 0, "next": 1}[part[3]]
	for _, x := range d.list {
		if PairID(x.Pair) != part[1] || string(x.Situation) != part[2] {
			continue
		}
		before := regexp.MustCompile("^(Stop|Quarantine|See both lamps off)")
		open := slices.DeleteFunc(slices.Clone(x.Asked), func(c string) bool { return slices.Contains(x.Asked[:step], c) })
		if i := slices.IndexFunc(open, before.MatchString); i >= 0 {
			open = open[i : i+1]
		}
		assert.Contains(t, open, x.Asked[step], "%s: the list itself keeps to that", e.Key)
		for _, c := range e.Choices {
			right := slices.Contains(e.Right, c.ID)
			assert.Equal(t, slices.Contains(open, c.Text), right, "%s: %s", e.Key, c.Text)
			assert.True(t, right || slices.Contains(x.Asked, c.Text) || !before.MatchString(c.Text), "%s: to hold back is never wrong: %s", e.Key, c.Text)
		}
	}
}

// shown is how finely the station shows a position: two decimals, or those of its step.
func (q proof) shown() float64 { return math.Min(0.01, q.p.Station.PositionStep) }

// works tells whether a zone judges the parts of a task rightly.
func (q proof) works(task *ZoneTask, z1, z2 float64) bool {
	s := q.s
	s.Start, s.End = s.Start+task.Shift, s.End+task.Shift
	s.ZoneStart, s.ZoneEnd = z1, z2
	cells := map[string][]string{}
	for _, x := range task.Parts {
		a, z := s.At(x.Reading)
		cells[name(a, z)] = append(cells[name(a, z)], x.Word)
	}
	for id, list := range cells {
		if contradicts(id, list) {
			return false
		}
	}
	// The push end inside, as far from the zone end as the plan's own proposal is, and no
	// less than can be set.
	step := q.p.Station.PositionStep
	guard := math.Max(4*q.p.Ram.Repeatability, 2*q.p.Motion.SlowSpeed*q.p.Motion.ScanTime)
	if by := q.p.Window.EdgeMargin; by != nil {
		guard = *by
	}
	// Nothing passes that is taller than the drawing allows, or than the plan's own zone
	// lets pass: the reading of the tallest good part, moved.
	tallest := math.Min(q.x.Low, q.s.ZoneStart) + task.Shift
	return s.End >= z1+step-1e-9 && s.End <= z2-math.Max(guard, step)+1e-9 && math.Max(z1, s.Start) >= tallest-1e-6
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
		assert.InDelta(t, q.x.High+q.p.Requirement.HeightLow-x.Height+task.Shift, x.Reading, q.shown()/2+1e-9, "%s: %v mm high", e.Key, x.Height)
		assert.InDelta(t, math.Round(x.Reading/q.shown()), x.Reading/q.shown(), 1e-6, "%s: a reading as the station shows it", e.Key)
	}
	for _, x := range task.Parts { // on the plan's own nest, by its own window
		a, z := q.s.At(x.Reading - task.Shift)
		assert.Equal(t, x.Word == press.Good, a && z, "%s: the plan itself judges the part of %v mm otherwise", e.Key, x.Height)
	}
	own := press.Pair{q.s.ZoneStart + task.Shift, q.s.ZoneEnd + task.Shift}
	if q.works(task, own[0], own[1]) {
		assert.InDeltaSlice(t, own[:], task.Solution[:], 1e-6, "%s: the plan's own zone, moved exactly", e.Key)
		own := task.Solution
		assert.Contains(t, e.Judge(Answer{Zone: &own}).Reason, "moved exactly as far as the nest")
		assert.Contains(t, e.Explain, ", so the zone does too.")
	} else {
		assert.NotContains(t, e.Explain, "so the zone does too")
	}
	for _, x := range task.Solution {
		if q.works(task, own[0], own[1]) {
			break // as fine as the plan's own
		}
		if by := x / q.p.Station.PositionStep; math.Abs(by-math.Round(by)) > 1e-6 {
			q.stepless(t, task)
		}
	}
	assert.False(t, q.works(task, q.s.ZoneStart, q.s.ZoneEnd), "%s: the plan's own zone, which other items print, does it", e.Key)
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

// stepless: a solution that cannot be set in steps is given only where the readings
// that a zone start must tell apart have no step between them, or those of its end.
func (q proof) stepless(t *testing.T, task *ZoneTask) {
	t.Helper()
	step := q.p.Station.PositionStep
	for z1 := math.Floor((task.Solution[0]-0.05)/step) * step; z1 < task.Solution[0]+0.05; z1 += step {
		for z2 := math.Floor((task.Solution[1]-0.05)/step) * step; z2 < task.Solution[1]+0.05; z2 += step {
			a, z := z1, z2
			assert.False(t, a < z && q.works(task, a, z) && math.Abs(a-task.Solution[0]) <= step/2 && math.Abs(z-task.Solution[1]) <= step/2, "zone %v to %v can be set, but %v is given", a, z, task.Solution)
		}
	}
}

// noZone: where the drill says that no zone can be set, none of all that differ
// for its parts can.
func (q proof) noZone(t *testing.T, d *Drill) {
	t.Helper()
	for n := range zoneTasks {
		task, why := d.zoneTask(rand.New(rand.NewPCG(uint64(n), 5)), n)
		if why == "" || task == nil || len(task.Parts) == 0 {
			continue
		}
		if !slices.ContainsFunc(task.Parts, func(x ZonePart) bool { return x.Word == press.Good }) {
			continue
		}
		end := q.s.End + task.Shift
		edges := []float64{end - 1e-6, end + 1e-6, q.s.Start + task.Shift - 1, end - q.p.Station.PositionStep, end + 1}
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
