package issue

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/static"
)

func TestLetters(t *testing.T) {
	// ASME Y14.35 (from memory): no I, O, Q, S, X, Z; after Y comes AA.
	for n, want := range map[int]string{1: "A", 8: "H", 9: "J", 14: "P", 15: "R", 16: "T", 20: "Y", 21: "AA", 40: "AY", 41: "BA", 420: "YY", 421: "AAA"} {
		assert.Equal(t, want, Letter(n), "revision %d", n)
	}
}

// A plan whose lamps mean two things is a caution and no blocker, and is issued only
// with a reason and a second name all the same.
func TestAmbiguousLampsAskForAReason(t *testing.T) {
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	d := p.Draft()
	d.Set("window.zone_start", "115.02")
	d.Set("faults.chip", "0.15")
	p, faults = d.Check()
	require.Empty(t, faults)
	require.False(t, press.Evaluate(p).Blocked())
	refused := Refuse(p, Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "first"})
	require.NotEmpty(t, refused)
	assert.NotEmpty(t, refused.At(PathDespite))
	assert.Empty(t, Refuse(p, Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "first", Despite: "trial parts only", Second: "D"}))
}

// draft is the first example with other texts at some paths.
func draft(t *testing.T, pairs ...string) *press.Draft {
	t.Helper()
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	d := p.Draft()
	for i := 0; i < len(pairs); i += 2 {
		d.Set(pairs[i], pairs[i+1])
	}
	return d
}

func plan(t *testing.T, pairs ...string) *press.Plan {
	t.Helper()
	p, faults := draft(t, pairs...).Check()
	require.Empty(t, faults)
	return p
}

// all are the three names and a reason.
var all = Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "first"}

// What stands in the way of issuing, of every code as it is usually said. By hand, from
// what each code means: nine are never issued, as with them something breaks, jams or
// passes as good; the other blockers, and lamps that mean two things, ask for a reason
// and a second name; no other caution and no note asks for anything.
func TestStandingOfEveryCode(t *testing.T) {
	never := []string{"beyond-stroke", "early-contact", "speed-over-ram", "nothing-stops-it", "missing-looks-good", "fault-looks-good", "over-yield", "probe-cannot-tell", "part-met-in-move"}
	asks := []string{
		"no-setting", "setting-not-feasible", "no-acceptance", "never-good", "nominal-rejected", "holding-short", "travel-negative", "touch-with-travel", "engagement-too-long",
		"overlap-wider-than-drawing", "ambiguous-table", "probe-no-fit", "probe-not-possible", "probe-refuses-nominal", "hand-over-impossible",
	}
	var physical, others []string
	for _, rule := range press.Rules {
		s := StandingOf(&press.Result{Outcome: press.Outcome{Findings: []press.Finding{{Code: rule.Code, Severity: rule.Severity}}}})
		require.LessOrEqual(t, len(s.Physical)+len(s.Others), 1, rule.Code)
		if len(s.Physical) > 0 {
			physical = append(physical, rule.Code)
		}
		if len(s.Others) > 0 {
			others = append(others, rule.Code)
		}
	}
	assert.ElementsMatch(t, never, physical)
	assert.ElementsMatch(t, asks, others)
	mild := StandingOf(&press.Result{Outcome: press.Outcome{Findings: []press.Finding{{Code: press.OverlapWider, Severity: press.Caution}, {Code: press.OverYield, Severity: press.Caution}}}})
	assert.Empty(t, mild, "said as cautions they ask for nothing")
}

// The example is issued with three names and a reason, each of which is asked for; two
// hundred characters are the most; with a caution nobody is asked for more.
func TestRefuse(t *testing.T) {
	p := plan(t)
	require.NotEmpty(t, press.Evaluate(p).Findings, "cautions, at least")
	require.Empty(t, Refuse(p, all))
	for path, change := range map[string]func(*Signed, string){
		PathPrepared: func(s *Signed, text string) { s.Prepared = text }, PathChecked: func(s *Signed, text string) { s.Checked = text },
		PathApproved: func(s *Signed, text string) { s.Approved = text }, PathReason: func(s *Signed, text string) { s.Reason = text },
	} {
		for text, code := range map[string]string{"": press.CodeRequired, " \t": press.CodeRequired, strings.Repeat("é", 200): "", strings.Repeat("é", 201): press.CodeLength} {
			s := all
			change(&s, text)
			ps := Refuse(p, s)
			if code == "" {
				assert.Empty(t, ps, path)
				continue
			}
			require.Len(t, ps, 1, path)
			assert.Equal(t, []string{path, code}, []string{ps[0].Path, ps[0].Code})
		}
	}
}

// A blocker that may be issued asks for a reason and a second name that is not who
// approved it; one that is never issued is refused whoever signs.
func TestRefuseWithBlockers(t *testing.T) {
	p := plan(t, "window.setting", "20") // too little for the force that is asked for
	require.True(t, press.Evaluate(p).Blocked())
	ps := Refuse(p, all)
	require.Len(t, ps, 2)
	assert.Contains(t, ps.At(PathDespite)[0], "reason is needed")
	assert.Contains(t, ps.At(PathSecond)[0], "second name is needed")
	s := all
	s.Despite = "trial"
	for second, code := range map[string]string{" a ": press.CodeConflict, "A": press.CodeConflict, "B": "", "": press.CodeRequired, strings.Repeat("b", 201): press.CodeLength} {
		s.Second = second
		ps := Refuse(p, s)
		if code == "" {
			assert.Empty(t, ps, second)
			continue
		}
		require.Len(t, ps, 1, second)
		assert.Equal(t, []string{PathSecond, code}, []string{ps[0].Path, ps[0].Code}, second)
	}
	s.Second = "B"
	p = plan(t, "motion.approach_speed", "100000", "ram.max_speed", "200")
	ps = Refuse(p, s)
	require.NotEmpty(t, ps, "faster than the ram can")
	assert.Equal(t, press.SpeedOverRam, ps[0].Code)
	assert.Equal(t, "motion.approach_speed", ps[0].Path)
}

// Which revision comes next: A with nothing before it, then B; the same once more to who
// asks with the same names, and a refusal to who asks with others. Derived: by hand.
func TestNext(t *testing.T) {
	now := time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)
	first, again, err := Judge(draft(t), all).Next(Revision{}, 0, now)
	require.NoError(t, err)
	assert.False(t, again)
	p := plan(t)
	assert.Equal(t, Revision{Letter: "A", At: now, Signed: all, Document: p.Document(), Plan: p, PlanDigest: p.Digest()}, first)

	s := all
	s.Drill = DrillSame
	once, again, err := Judge(draft(t), s).Next(first, 1, now.Add(time.Hour))
	require.NoError(t, err, "of the first nothing is said of the drill")
	assert.True(t, again)
	assert.Equal(t, first, once)
	s = all
	s.Checked = "D"
	_, _, err = Judge(draft(t), s).Next(first, 1, now)
	var refused *Refused
	require.ErrorAs(t, err, &refused)
	assert.Contains(t, refused.Error(), "as revision A")
	damaged := first
	damaged.Damaged = true
	anew, again, err := Judge(draft(t), all).Next(damaged, 1, now)
	require.NoError(t, err, "what cannot be read may be issued anew")
	assert.False(t, again)
	assert.Equal(t, "B", anew.Letter)

	_, _, err = Judge(draft(t, "station.nest", "no figure"), all).Next(first, 1, now)
	require.ErrorAs(t, err, &refused)
	assert.True(t, refused.Problems.Has("station.nest"))
	_, _, err = Judge(draft(t), Signed{}).Next(first, 1, now)
	require.ErrorAs(t, err, &refused)
	assert.Len(t, refused.Problems, 4)

	s = all
	s.Drill = DrillSame
	second, again, err := Judge(draft(t, "title.notes", "x"), s).Next(first, 1, now)
	require.NoError(t, err)
	assert.False(t, again)
	assert.Equal(t, []string{"B", DrillSame}, []string{second.Letter, second.Drill})
	early, again, err := Judge(draft(t, "title.notes", "x"), s).Next(second, 2, now)
	require.NoError(t, err)
	assert.True(t, again)
	assert.Equal(t, second, early)
}

// What is said of the drill is compared with the revision before, beforehand or when it
// is issued, and anew where another one was issued meanwhile.
func TestDrillIsCompared(t *testing.T) {
	now := time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)
	first, _, err := Judge(draft(t), all).Next(Revision{}, 0, now)
	require.NoError(t, err)
	moved := []string{"window.zone_end", "115.15"} // what runs to the push end leaves the zone then
	s := all
	s.Drill, s.Despite, s.Second = DrillSame, "trial", "S"
	var refused *Refused
	for _, beforehand := range []bool{true, false} {
		c := Judge(draft(t, moved...), s)
		if beforehand {
			c.Compare(first)
		}
		_, _, err = c.Next(first, 1, now)
		require.ErrorAs(t, err, &refused)
		assert.Contains(t, refused.Problems.At(PathDrill)[0], "mean something else than in revision A")
		other := first
		other.Plan, other.PlanDigest, other.Letter = plan(t, append(moved, "title.notes", "x")...), "another", "B"
		r, _, err := c.Next(other, 2, now)
		require.NoError(t, err, "the lamps mean the same as in the one that came between")
		assert.Equal(t, "C", r.Letter)
	}
	unread := first
	unread.Plan, unread.PlanDigest = nil, "other"
	for drill, want := range map[string]string{DrillSame: "cannot be read", "perhaps": "is told by", DrillAgain: "", "": ""} {
		s := all
		s.Drill = drill
		_, _, err := Judge(draft(t), s).Next(unread, 1, now)
		if want == "" {
			assert.NoError(t, err, drill)
			continue
		}
		require.ErrorAs(t, err, &refused, drill)
		assert.Contains(t, refused.Problems.At(PathDrill)[0], want)
	}
	assert.True(t, SameLamps(plan(t), plan(t, "title.notes", "x")))
	none := []string{"station.reference_uncertainty", "0.2"} // no window, so no verdict
	assert.False(t, SameLamps(plan(t), plan(t, none...)))
	assert.False(t, SameLamps(plan(t, none...), plan(t)))
	assert.True(t, SameLamps(plan(t, none...), plan(t, append(none, "title.notes", "x")...)), "neither means anything")
	assert.False(t, SameLamps(plan(t), plan(t, moved...)))
}

// A pass counts on the last revision, and on those before it as long as each change did
// not concern the drill; a damaged one says nothing of what came before.
func TestCounting(t *testing.T) {
	rev := func(digest, drill string) Revision { return Revision{PlanDigest: digest, Signed: Signed{Drill: drill}} }
	assert.Empty(t, Counting(nil))
	assert.Equal(t, []string{"3"}, Counting([]Revision{rev("3", ""), rev("2", DrillSame)}))
	assert.Equal(t, []string{"3"}, Counting([]Revision{rev("3", DrillAgain), rev("2", DrillSame)}))
	assert.Equal(t, []string{"4", "3", "2"}, Counting([]Revision{rev("4", DrillSame), rev("3", DrillSame), rev("2", DrillAgain), rev("1", "")}))
	damaged := rev("4", DrillSame)
	damaged.Damaged = true
	assert.Equal(t, []string{"4"}, Counting([]Revision{damaged, rev("3", "")}))
}

// Revisions of a plan are A, B and so on without a gap, none before the one before it, and
// each such as is issued.
func TestTrueLine(t *testing.T) {
	at := time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)
	p := plan(t)
	line := func() []Revision {
		return []Revision{{Letter: "A", At: at, Signed: all, Plan: p}, {Letter: "B", At: at, Signed: all, Plan: p}}
	}
	require.NoError(t, TrueLine(line()))
	for want, change := range map[string]func([]Revision){
		"C is found where B belongs":             func(r []Revision) { r[1].Letter = "C" },
		"B is older than the one before it":      func(r []Revision) { r[1].At = at.Add(-time.Second) },
		"B could not be issued: issue.approved:": func(r []Revision) { r[1].Approved = "" },
	} {
		r := line()
		change(r)
		assert.ErrorContains(t, TrueLine(r), want)
	}
	r := []Revision{{Letter: "AA"}, {Letter: "Y"}, {Letter: "B"}}
	InOrder(r)
	assert.Equal(t, []Revision{{Letter: "B"}, {Letter: "Y"}, {Letter: "AA"}}, r)
}

// Paper says what was issued, if every name and reason is the same, and the day is the
// one of issue, before it or after it wherever the sheet was made.
func TestPaperSaysTheRevision(t *testing.T) {
	r := Revision{Letter: "B", At: time.Date(2026, 3, 2, 12, 0, 0, 0, time.UTC), Signed: Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "R", Despite: "D", Second: "S", Drill: DrillSame}}
	paper := *r.Paper()
	require.Equal(t, carry.Issue{Revision: "B", Date: r.At.Local().Format(time.DateOnly), Prepared: "P", Checked: "C", Approved: "A", Reason: "R", Despite: "D", Second: "S"}, paper)
	require.True(t, r.Says(paper))
	for day, want := range map[string]bool{"2026-02-28": false, "2026-03-01": true, "2026-03-02": true, "2026-03-03": true, "2026-03-04": false, "2 March": false} {
		p := paper
		p.Date = day
		assert.Equal(t, want, r.Says(p), day)
	}
	midnight := r
	midnight.At = time.Date(2026, 3, 2, 0, 0, 0, 0, time.UTC)
	for day, want := range map[string]bool{"2026-02-28": false, "2026-03-01": true, "2026-03-03": false} {
		p := *midnight.Paper()
		p.Date = day
		assert.Equal(t, want, midnight.Says(p), "%s, to the hour", day)
	}
	for _, change := range []func(*carry.Issue){
		func(p *carry.Issue) { p.Revision = "A" }, func(p *carry.Issue) { p.Prepared = "x" }, func(p *carry.Issue) { p.Checked = "x" }, func(p *carry.Issue) { p.Approved = "x" },
		func(p *carry.Issue) { p.Reason = "x" }, func(p *carry.Issue) { p.Despite = "" }, func(p *carry.Issue) { p.Second = "" },
	} {
		p := paper
		change(&p)
		assert.False(t, r.Says(p), "%+v", p)
	}
}
