package archive

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/training"

	"ramplan/press/issue"
)

// sat is a record of an exam that was taken.
func sat(sitting, who string, plan ID, digest string, passed bool) training.Record {
	t := training.Record{
		Plan: plan, Sitting: sitting, Who: who, Name: "Vane hub", Number: "WS-210", Revision: "A", Digest: digest, Seed: 1 << 60, Items: 20, Right: 18, Needed: 16,
		Pass: 0.8, Limit: 15 * time.Minute, Took: 312 * time.Second, Passed: passed, Missed: []string{"read/on-off", "zone/1"},
		Misses: []training.Miss{{Question: "What is it?", Given: "good", Right: "too tall", Number: 3, Alone: true}, {Question: "Set the zone.", Given: "no answer", Right: "for example 1 to 2"}},
	}
	if !passed {
		t.Right = 3
	}
	return t
}

func TestTrainingIsKept(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{Now: c.now})
	kept, err := a.KeepTraining(background(), sat("one", "  Ada   Fell ", 1, "d1", true))
	require.NoError(t, err)
	want := sat("one", "Ada Fell", 1, "d1", true)
	want.ID, want.At = 1, c.at
	assert.Equal(t, want, kept)
	require.NoError(t, a.Close())

	a = opened(t, dir, Options{Now: c.now})
	got, err := a.TrainingOf(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, want, got, "a record is read as it was kept")
	c.rest(time.Hour)
	again, err := a.KeepTraining(background(), sat("one", "Another", 2, "d2", false))
	require.NoError(t, err)
	assert.Equal(t, want, again, "a sitting is kept once")
	got, err = a.TrainingOfSitting(background(), "one")
	require.NoError(t, err)
	assert.Equal(t, want, got)
	_, err = a.TrainingOf(background(), 2)
	require.ErrorIs(t, err, ErrNotFound)
	_, err = a.TrainingOfSitting(background(), "two")
	require.ErrorIs(t, err, ErrNotFound)
}

// A person who hands in a set of a plan again has seen it; another person, another
// plan or another seed has not.
func TestTrainingOfASeenSet(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	for i, one := range []struct {
		who  string
		plan ID
		seed uint64
		want bool
	}{{"Ada", 1, 7, false}, {"Bo", 1, 7, false}, {"Ada", 2, 7, false}, {"Ada", 1, 8, false}, {" ada ", 1, 7, true}, {"Ada", 1, 1<<53 - 1, false}, {"Ada", 1, 8, true}} {
		s := sat("s"+string(rune('a'+i)), one.who, one.plan, "d", true)
		s.Seed = one.seed
		kept, err := a.KeepTraining(background(), s)
		require.NoError(t, err)
		assert.Equal(t, one.want, kept.Repeat, "%v", one)
		read, err := a.TrainingOf(background(), kept.ID)
		require.NoError(t, err)
		assert.Equal(t, one.want, read.Repeat, "%v, read again", one)
	}
	all, err := a.AllTrainings(background())
	require.NoError(t, err)
	assert.Len(t, all, 7)
	assert.Equal(t, training.ID(7), all[0].ID, "the newest first")
}

// A seed that another person was given before is told, also while that person's exam is
// under way; who has had it itself repeats it. Derived: by hand from that rule.
func TestSeedOfAnotherPerson(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{Now: c.now})
	begin := func(id, who string, seed uint64, minute int) {
		require.NoError(t, a.KeepSitting(background(), training.Sitting{ID: id, Plan: 1, Who: who, Started: c.now().Add(time.Duration(minute) * time.Minute), Document: []byte("{}"), Seed: seed}))
	}
	begin("1", "Ada", 5, 0)
	begin("2", "Bo", 5, 1)
	begin("3", "Cy", 6, 2)
	for _, one := range []struct {
		sitting, who  string
		seed          uint64
		repeat, known bool
	}{{"2", "Bo", 5, false, true}, {"1", "Ada", 5, false, true}, {"3", "Cy", 6, false, false}, {"4", "bo", 5, true, false}, {"5", "Di", 6, false, true}} {
		s := sat(one.sitting, one.who, 1, "d", true)
		s.Seed = one.seed
		kept, err := a.KeepTraining(background(), s)
		require.NoError(t, err)
		read, err := a.TrainingOf(background(), kept.ID)
		require.NoError(t, err)
		assert.Equal(t, []bool{one.repeat, one.known}, []bool{read.Repeat, read.Known}, one.who)
	}
}

func TestTrainingNeedsAName(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	for name, who := range map[string]string{"nothing": "", "blanks": " \t ", "control": "a\x01b", "long": string(make([]rune, training.MaxWho+1))} {
		_, err := a.KeepTraining(background(), sat(name, who, 1, "d", true))
		assert.ErrorIs(t, err, training.ErrNobody, name)
	}
	people, err := a.People(background())
	require.NoError(t, err)
	assert.Empty(t, people)
}

func TestTrainingsByPlanAndPerson(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{Now: c.now})
	for _, one := range []training.Record{
		sat("1", "Ada", 1, "old", true), sat("2", "Bo", 1, "old", true), sat("3", "ada", 2, "old", true), sat("4", "Bo", 1, "new", true),
		sat("5", "Ada", 1, "new", false), sat("6", "Cy", 1, "new", false),
	} {
		_, err := a.KeepTraining(background(), one)
		require.NoError(t, err)
		c.rest(time.Minute)
	}
	ids := func(all []training.Record, err error) []training.ID {
		require.NoError(t, err)
		var out []training.ID
		for _, one := range all {
			out = append(out, one.ID)
		}
		return out
	}
	assert.Equal(t, []training.ID{6, 5, 4, 2, 1}, ids(a.Trainings(background(), 1)))
	assert.Equal(t, []training.ID{5, 3, 1}, ids(a.TrainingsOf(background(), " ADA ")), "one person, however the name is written")
	people, err := a.People(background())
	require.NoError(t, err)
	require.Len(t, people, 3)
	assert.Equal(t, 3, people[0].Records)
	assert.Equal(t, c.at.Add(-2*time.Minute), people[0].Last)

	all, err := a.Trainings(background(), 1)
	on := func(digest string) training.Demand {
		return training.Demand{Exam: "technician", Elder: true, Counts: []string{digest}}
	}
	assert.Equal(t, []training.ID{6, 5}, ids(training.Due(all, on("new")), err), "Ada passed on the old plan and failed on the new one; Cy never passed")
	assert.Equal(t, []training.ID{6, 4}, ids(training.Due(all, on("old")), err), "Bo was trained last on the new one; Cy never passed")
	assert.Equal(t, []training.ID{6, 1, 4}, ids(training.Due(all, on("newest")), err), "nobody was examined on it")

	n, err := a.RemovePerson(background(), "Ada")
	require.NoError(t, err)
	assert.Equal(t, 3, n)
	assert.Equal(t, []training.ID{6, 4, 2}, ids(a.Trainings(background(), 1)))
	assert.Empty(t, ids(a.TrainingsOf(background(), "ada")))
	next, err := a.KeepTraining(background(), sat("7", "Ada", 1, "new", true))
	require.NoError(t, err)
	assert.Equal(t, training.ID(7), next.ID, "a number is never given again")
}

func TestTrainingOutlivesItsPlan(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{Now: c.now})
	h, err := a.Create(background(), example(t), "")
	require.NoError(t, err)
	_, err = a.KeepTraining(background(), sat("1", "Ada", h.ID, "d", true))
	require.NoError(t, err)
	_, err = a.Bin(background(), h.ID, At(h.Version))
	require.NoError(t, err)
	_, err = a.EmptyBin(background())
	require.NoError(t, err)
	left, err := a.TrainingsOf(background(), "Ada")
	require.NoError(t, err)
	require.Len(t, left, 1)
	assert.Equal(t, "Vane hub", left[0].Name)
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	assert.Equal(t, "0 plans, 0 states, 0 revisions, 1 training record, 0 damaged", report.String())
}

func TestDamagedTrainingIsFound(t *testing.T) {
	for name, damage := range map[string]string{
		"the document": "update training set body = cast(replace(cast(body as text), 'false', 'true ') as blob)",
		"the name":     "update training set who = 'Bo'",
		"the time":     "update training set at = '2020-01-01T00:00:00.000Z'",
		"the revision": "update training set revision = 'B'",
		"the plan":     "update training set plan = 9",
	} {
		t.Run(name, func(t *testing.T) {
			a := opened(t, t.TempDir(), Options{})
			_, err := a.KeepTraining(background(), sat("1", "Ada", 1, "d", false))
			require.NoError(t, err)
			write := a.handles.Load().write
			_, err = write.Exec(damage)
			require.ErrorContains(t, err, "never changed", "the database itself keeps records")
			_, err = write.Exec("drop trigger training_stays; " + damage)
			require.NoError(t, err)
			got, err := a.TrainingOf(background(), 1)
			require.NoError(t, err)
			assert.True(t, got.Damaged)
			assert.False(t, got.Passed)
			report, err := a.Check(background())
			require.NoError(t, err)
			assert.Equal(t, []Fault{{What: "training record 1", Why: "does not match its digest"}}, report.Faults)
		})
	}
}

// TestThirdSchemaIsBroughtForward opens an archive of schema 3, which the program
// of that time made: a plan with revision A and a later state, and a ram.
func TestThirdSchemaIsBroughtForward(t *testing.T) {
	data, err := os.ReadFile("../../testdata/archive/schema3.db")
	require.NoError(t, err)
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, FileName), data, 0o600))
	const holds = "1 plan, 2 states, 1 revision, 1 ram, 0 damaged"
	report, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Equal(t, holds, report.String(), "a check alone brings nothing forward")

	a := opened(t, dir, Options{})
	report, err = a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, holds, report.String())
	_, err = a.KeepTraining(background(), sat("1", "Ada", 1, "d", true))
	require.NoError(t, err)
	r, err := a.Revision(background(), 1, "A")
	require.NoError(t, err)
	assert.Equal(t, "P. Rill", r.Prepared)
	require.FileExists(t, filepath.Join(dir, "ramplan-schema3.db"))
}

// TestFourthSchemaIsBroughtForward opens an archive of schema 4, which the program
// of that time made: the example plans and the record of one exam.
func TestFourthSchemaIsBroughtForward(t *testing.T) {
	data, err := os.ReadFile("../../testdata/archive/schema4.db")
	require.NoError(t, err)
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, FileName), data, 0o600))
	before, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Contains(t, before.String(), "1 training record")
	a := opened(t, dir, Options{})
	after, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, before.String(), after.String())
	kept, err := a.TrainingOf(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, "Bo", kept.Who)
	assert.False(t, kept.Damaged)
	assert.Equal(t, 19, kept.Right)
	require.NoError(t, a.KeepSitting(background(), begun("s", "Bo", time.Now())))
	require.FileExists(t, filepath.Join(dir, "ramplan-schema4.db"))
}

// TestFifthSchemaIsBroughtForward opens an archive of schema 5, which the program of
// that time made: a plan with two revisions, an exam of everything that was passed, one
// that was failed by what was then called deeds, and one that was begun.
func TestFifthSchemaIsBroughtForward(t *testing.T) {
	data, err := os.ReadFile("../../testdata/archive/schema5.db")
	require.NoError(t, err)
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, FileName), data, 0o600))
	const holds = "1 plan, 2 states, 2 revisions, 2 training records, 0 damaged"
	before, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Equal(t, holds, before.String(), "a check alone brings nothing forward")
	a := opened(t, dir, Options{})
	after, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, holds, after.String(), "seals and digests hold as they were")
	require.FileExists(t, filepath.Join(dir, "ramplan-schema5.db"))

	all, err := a.Trainings(background(), 1)
	require.NoError(t, err)
	require.Len(t, all, 2)
	for _, one := range all {
		assert.Empty(t, one.Exam, "of before there were two")
		assert.False(t, one.Unfinished)
	}
	assert.Contains(t, all[0].Grave, "a hand was put into the work space", "as it was stored")
	issued, err := a.Revisions(background(), 1)
	require.NoError(t, err)
	assert.Empty(t, issued[0].Drill)
	assert.Len(t, issue.Counting(issued), 1, "nobody said that B does not concern the drill")
	due := training.Due(all, training.Demand{Exam: "technician", Elder: true, Counts: issue.Counting(issued)})
	assert.Len(t, due, 2, "one failed, one passed on A")
	assert.Empty(t, training.Due(all, training.Demand{Exam: "setter", Counts: issue.Counting(issued)}), "who took the one exam is no setter for that")

	open, err := a.Sittings(background(), 1)
	require.NoError(t, err)
	require.Len(t, open, 1)
	assert.Equal(t, "Cy", open[0].Who)
	require.NoError(t, a.EndLeft(background(), open[0].Started.Add(3*time.Hour)))
	all, err = a.TrainingsOf(background(), "Cy")
	require.NoError(t, err)
	require.Len(t, all, 1)
	assert.True(t, all[0].Unfinished)
	assert.Equal(t, issued[1].PlanDigest, all[0].Digest, "of the plan that stands in the sitting")
	assert.NotEmpty(t, all[0].Name)
}

// begun is an exam that was begun.
func begun(id, who string, at time.Time) training.Sitting {
	return training.Sitting{
		ID: id, Plan: 1, Who: who, Started: at.UTC().Truncate(time.Millisecond), Revision: "B", Document: []byte(`{"format":"x"}`), Seed: 1<<53 - 1, Items: 20, Pass: 0.8,
		Limit: 20 * time.Minute, Asked: "sha256:q",
	}
}

// An exam that was begun is had back as it was, until it is handed in, its person
// is removed, or a day has passed.
func TestSittings(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{Now: c.now})
	for _, s := range []training.Sitting{begun("a", "Ada", c.at), begun("b", "Bo", c.at), begun("c", "Cy", c.at)} {
		require.NoError(t, a.KeepSitting(background(), s))
	}
	require.ErrorIs(t, a.KeepSitting(background(), begun("d", " ", c.at)), training.ErrNobody)
	require.NoError(t, a.Close())
	a = opened(t, dir, Options{Now: c.now})
	got, err := a.SittingOf(background(), "a")
	require.NoError(t, err)
	assert.Equal(t, begun("a", "Ada", c.at), got)

	_, err = a.KeepTraining(background(), sat("a", "Ada", 1, "d", true))
	require.NoError(t, err)
	_, err = a.SittingOf(background(), "a")
	assert.ErrorIs(t, err, ErrNotFound, "handed in")
	_, err = a.RemovePerson(background(), "bo")
	require.NoError(t, err)
	_, err = a.SittingOf(background(), "b")
	assert.ErrorIs(t, err, ErrNotFound, "removed with its person")
	require.NoError(t, a.KeepSitting(background(), begun("e", "Eve", c.at.Add(25*time.Hour))))
	_, err = a.SittingOf(background(), "c")
	assert.ErrorIs(t, err, ErrNotFound, "a day old")
	left, err := a.TrainingsOf(background(), "Cy")
	require.NoError(t, err)
	require.Len(t, left, 1, "begun and left")
	assert.True(t, left[0].Unfinished)
	_, err = a.handles.Load().write.Exec("update sitting set body = cast(replace(cast(body as text), 'Eve', 'Eva') as blob)")
	require.NoError(t, err)
	_, err = a.SittingOf(background(), "e")
	assert.ErrorIs(t, err, ErrNotFound, "changed by another hand")
}

// What was answered in an exam under way is had back as it was given, and an exam that
// is left leaves a record that says so, with how many answers there were. Derived: by
// hand from that rule; an exam is left an hour after its time.
func TestAnswersAreKeptAndLeftExamsToo(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{Now: c.now})
	s := begun("a", "Ada", c.at)
	s.Exam, s.Asks, s.Needed = "setter", 18, 15
	require.NoError(t, a.KeepSitting(background(), s))
	given := map[string]training.Given{"read/on-on": {Choice: "good"}, "zone/1": {From: "115,", To: ""}}
	require.NoError(t, a.KeepAnswers(background(), "a", given, c.at.Add(4*time.Minute)))
	require.ErrorIs(t, a.KeepAnswers(background(), "none", given, c.at), ErrNotFound)
	require.NoError(t, a.Close())
	a = opened(t, dir, Options{Now: c.now})
	open, err := a.Sittings(background(), 1)
	require.NoError(t, err)
	require.Len(t, open, 1)
	assert.Equal(t, given, open[0].Given)
	assert.Equal(t, c.at.Add(4*time.Minute), open[0].Heard)

	require.NoError(t, a.EndLeft(background(), c.at.Add(79*time.Minute)), "20 minutes and 59")
	_, err = a.TrainingOfSitting(background(), "a")
	require.ErrorIs(t, err, ErrNotFound)
	require.NoError(t, a.EndLeft(background(), c.at.Add(81*time.Minute)))
	kept, err := a.TrainingOfSitting(background(), "a")
	require.NoError(t, err)
	assert.True(t, kept.Unfinished)
	assert.False(t, kept.Passed)
	assert.Equal(t, []any{"setter", 2, 18, 15, 4 * time.Minute, c.at.Add(4 * time.Minute)}, []any{kept.Exam, kept.Answered, kept.Items, kept.Needed, kept.Took, kept.At})
	again, err := a.KeepTraining(background(), sat("a", "Ada", 1, "d", true))
	require.NoError(t, err)
	assert.Equal(t, kept.ID, again.ID, "what was recorded first counts")
	assert.True(t, again.Unfinished)
	left, err := a.Sittings(background(), 1)
	require.NoError(t, err)
	assert.Empty(t, left)

	require.NoError(t, a.KeepSitting(background(), begun("b", "Bo", c.at)))
	given2, err := a.EndSitting(background(), "b", c.at.Add(time.Minute))
	require.NoError(t, err)
	assert.True(t, given2.Unfinished)
	_, err = a.EndSitting(background(), "b", c.at)
	require.ErrorIs(t, err, ErrNotFound)
}
