package archive

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/issue"
	"ramplan/press/proving"
)

// master is a study as somebody types it, with decimal commas.
func master(readings ...string) *proving.Typed {
	t := proving.NewTyped(proving.Master)
	t.SetHead("taken_at", "2026-03-02")
	t.SetHead("height", "40")
	for _, r := range readings {
		t.Rows = append(t.Rows, []string{r, ""})
	}
	return t
}

// What is typed is kept as typed, readable or not, until it is signed; then it never changes.
func TestStudyIsTypedAndSigned(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}, Now: c.now})
	k, err := a.StartStudy(background(), 1, proving.Master, nil)
	require.NoError(t, err)
	assert.Equal(t, int64(1), k.Version)
	assert.False(t, k.Signed())

	typed := master("100,1", " 1oo,2 ", "", "100.3\x00<")
	k, err = a.SaveStudy(background(), 1, k.ID, 1, typed)
	require.NoError(t, err)
	assert.Equal(t, int64(2), k.Version)
	assert.Equal(t, typed, k.Typed, "nothing lost")
	_, err = a.SaveStudy(background(), 1, k.ID, 1, master("7"))
	var stale *StaleStudy
	require.ErrorAs(t, err, &stale)
	assert.Equal(t, typed, stale.Stands.Typed)
	same, err := a.SaveStudy(background(), 1, k.ID, 1, typed)
	require.NoError(t, err, "sent again after a lost answer")
	assert.Equal(t, int64(2), same.Version)

	_, err = a.SignStudy(background(), 1, k.ID, 2, "P. Rill")
	var faults proving.TypedFaults
	require.ErrorAs(t, err, &faults)
	assert.NotEmpty(t, faults.At(2, "reading"))
	assert.NotEmpty(t, faults.At(4, "reading"))
	k, err = a.SaveStudy(background(), 1, k.ID, 2, master("100,1", "100,2"))
	require.NoError(t, err)
	_, err = a.SignStudy(background(), 1, k.ID, 3, "  ")
	require.ErrorIs(t, err, ErrNoSigner)
	_, err = a.SignStudy(background(), 1, k.ID, 2, "P. Rill")
	require.ErrorAs(t, err, &stale)
	c.rest(time.Hour)
	signed, err := a.SignStudy(background(), 1, k.ID, 3, " P.  Rill")
	require.NoError(t, err)
	assert.True(t, signed.Signed() && signed.Counts())
	assert.Equal(t, c.at, signed.SignedAt)
	assert.Equal(t, "P. Rill", signed.SignedBy)
	require.Len(t, signed.Study.Rows, 2)
	assert.Equal(t, 100.2, *signed.Study.Rows[1].Reading)
	again, err := a.SignStudy(background(), 1, k.ID, 3, "P. Rill")
	require.NoError(t, err)
	assert.Equal(t, signed, again)

	_, err = a.SignStudy(background(), 1, k.ID, 4, "Another")
	require.ErrorIs(t, err, ErrSigned)
	_, err = a.SaveStudy(background(), 1, k.ID, 4, master("1"))
	require.ErrorIs(t, err, ErrSigned)
	require.ErrorIs(t, a.DropStudy(background(), 1, k.ID, 4), ErrSigned)

	require.NoError(t, a.Close())
	a = opened(t, dir, Options{Now: c.now})
	all, err := a.Studies(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, []KeptStudy{signed}, all)
	_, err = a.Study(background(), 2, k.ID)
	require.ErrorIs(t, err, ErrNotFound, "of another plan")
}

// A correction takes the place of what it names when it is signed, once, and is of its kind.
func TestStudyIsCorrected(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: newClock().now})
	sign := func(k KeptStudy) KeptStudy {
		t.Helper()
		k, err := a.SignStudy(background(), 1, k.ID, k.Version, "P. Rill")
		require.NoError(t, err)
		return k
	}
	open, err := a.StartStudy(background(), 1, proving.Master, master("100"))
	require.NoError(t, err)
	_, err = a.CorrectStudy(background(), 1, open.ID)
	require.ErrorIs(t, err, ErrOtherKind, "it is typed over as long as it is not signed")
	old := sign(open)
	new1, err := a.CorrectStudy(background(), 1, old.ID)
	require.NoError(t, err)
	new2, err := a.CorrectStudy(background(), 1, old.ID)
	require.NoError(t, err, "two may begin")
	assert.Equal(t, old.Typed, new1.Typed)
	counting, err := a.CountingStudies(background(), 1)
	require.NoError(t, err)
	assert.Len(t, counting, 1)
	new1, err = a.SaveStudy(background(), 1, new1.ID, 1, master("101"))
	require.NoError(t, err)
	new1 = sign(new1)
	_, err = a.SignStudy(background(), 1, new2.ID, 1, "P. Rill")
	require.ErrorIs(t, err, ErrCorrected)
	counting, err = a.CountingStudies(background(), 1)
	require.NoError(t, err)
	require.Len(t, counting, 1)
	assert.Equal(t, 101.0, *counting[0].Rows[0].Reading)
	old, err = a.Study(background(), 1, old.ID)
	require.NoError(t, err)
	assert.Equal(t, new1.ID, old.ReplacedBy)
	assert.False(t, old.Damaged)
	require.NoError(t, a.DropStudy(background(), 1, new2.ID, 1))
	_, err = a.CorrectStudy(background(), 1, old.ID)
	require.ErrorIs(t, err, ErrCorrected)
}

// What a program posts waits for a signature and is not typed over; an event counts at once.
func TestStudyIsPosted(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: newClock().now})
	s, faults := master("100.125", "100.25").Study()
	require.Empty(t, faults)
	k, err := a.PostStudy(background(), 1, s, "logger 4")
	require.NoError(t, err)
	assert.True(t, k.Posted)
	assert.False(t, k.Signed() || k.Counts())
	assert.Equal(t, s, k.Study)
	assert.NotEmpty(t, k.Digest)
	again, err := a.PostStudy(background(), 1, s, "logger 4")
	require.NoError(t, err)
	assert.Equal(t, k, again)
	_, err = a.SaveStudy(background(), 1, k.ID, 1, master("1"))
	require.ErrorIs(t, err, ErrPosted)
	signed, err := a.SignStudy(background(), 1, k.ID, 1, "P. Rill")
	require.NoError(t, err)
	assert.True(t, signed.Counts())
	assert.Equal(t, s, signed.Study)
	assert.Equal(t, k.Digest, signed.Digest)

	event := &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-03-02", Event: proving.Crash}
	_, err = a.PostStudy(background(), 1, event, "")
	require.ErrorIs(t, err, ErrNoSigner)
	k, err = a.PostStudy(background(), 1, event, "press 2")
	require.NoError(t, err)
	assert.True(t, k.Counts())
	assert.Equal(t, "press 2", k.SignedBy)
	_, err = a.PostStudy(background(), 9, event, "press 2")
	require.ErrorIs(t, err, ErrNotFound)
}

// A check of a shift is kept for good with its revision, and proves nothing.
func TestShiftChecks(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	typed := proving.NewTyped(proving.Samples)
	typed.SetHead("taken_at", "2026-03-02")
	typed.Rows = [][]string{{"long", "25,3", "off", "off", "", ""}, {"empty", "", "off", "off", "", "wiped"}}
	first, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: typed, Once: "form 1"})
	require.NoError(t, err)
	c.rest(8 * time.Hour)
	again, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: typed, Once: "form 1"})
	require.NoError(t, err)
	assert.Equal(t, first, again)
	second, err := a.AddShiftCheck(background(), 1, NewCheck{Letter: "A", By: "Cy", Passed: proving.Fail, Typed: typed, Once: "form 2"})
	require.NoError(t, err)
	all, err := a.ShiftChecks(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, []KeptStudy{second, first}, all)
	assert.Equal(t, "A", second.Check.Letter)
	r, err := a.Revision(background(), 1, "A")
	require.NoError(t, err)
	assert.Equal(t, r.PlanDigest, second.Check.Digest)
	assert.False(t, second.Counts())
	studies, err := a.Studies(background(), 1)
	require.NoError(t, err)
	assert.Empty(t, studies)
	for _, bad := range []struct {
		c    NewCheck
		want error
	}{
		{NewCheck{Letter: "B", By: "Bo", Passed: proving.Pass, Typed: typed}, ErrNotFound},
		{NewCheck{Letter: "A", By: "", Passed: proving.Pass, Typed: typed}, ErrNoSigner},
		{NewCheck{Letter: "A", By: "Bo", Typed: typed}, ErrOutcome},
		{NewCheck{Letter: "A", By: "Bo", Passed: proving.Pass, Typed: master("1")}, ErrKind},
	} {
		_, err := a.AddShiftCheck(background(), 1, bad.c)
		assert.ErrorIs(t, err, bad.want)
	}
}

// station gives a plan every kind of thing that is kept of its station: a signed study and
// its correction, one half typed, one posted, an event, a shift check.
func station(t *testing.T, a *Archive, c *clock, plan ID) {
	t.Helper()
	sign := func(k KeptStudy, err error) KeptStudy {
		t.Helper()
		require.NoError(t, err)
		c.rest(time.Minute)
		k, err = a.SignStudy(background(), plan, k.ID, k.Version, "P. Rill")
		require.NoError(t, err)
		return k
	}
	old := sign(a.StartStudy(background(), plan, proving.Master, master("100,1", "100,2")))
	new, err := a.CorrectStudy(background(), plan, old.ID)
	require.NoError(t, err)
	sign(a.SaveStudy(background(), plan, new.ID, 1, master("100,1", "100,3")))
	_, err = a.StartStudy(background(), plan, proving.Master, master("1oo", "„näher“\t<"))
	require.NoError(t, err)
	s, faults := master("100.125").Study()
	require.Empty(t, faults)
	_, err = a.PostStudy(background(), plan, s, "logger 4")
	require.NoError(t, err)
	_, err = a.PostStudy(background(), plan, &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-03-02", Event: proving.Moved}, "press 2")
	require.NoError(t, err)
	typed := proving.NewTyped(proving.Samples)
	typed.SetHead("taken_at", "2026-03-02")
	typed.Rows = [][]string{{"long", "25,3", "off", "off", "", ""}}
	_, err = a.AddShiftCheck(background(), plan, NewCheck{Letter: "A", By: "Bo", Passed: proving.Fail, Typed: typed, Once: "form 1"})
	require.NoError(t, err)
}

// What is kept of a station moves with its plan, to the letter but for the numbers.
func TestStudiesMove(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t), example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	_, err := a.StartStudy(background(), 2, proving.Master, nil) // moves the numbers on, and goes with a plan that was never issued
	require.NoError(t, err)
	station(t, a, c, 1)
	folder := filepath.Join(t.TempDir(), "plain")
	m, err := a.WriteOut(background(), folder, silent)
	require.NoError(t, err)
	assert.Equal(t, &Moved{Plans: 2, Revisions: 1, Studies: 7}, m)
	assert.Equal(t, "2 plans, 1 revision, 0 rams, 7 studies", m.String())

	b := opened(t, t.TempDir(), Options{Now: (&clock{time.Date(2027, 1, 1, 0, 0, 0, 0, time.UTC)}).now})
	_, err = b.Create(background(), example(t), "made")
	require.NoError(t, err)
	m, err = b.BringIn(background(), []string{folder}, silent)
	require.NoError(t, err)
	assert.Equal(t, &Moved{Plans: 2, Revisions: 1, Studies: 7}, m)
	report, err := b.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	assert.Equal(t, 6, report.Studies)
	assert.Equal(t, 1, report.Checks)

	issued, err := b.IssuedOf(background(), "WS-210", "A")
	require.NoError(t, err)
	require.Len(t, issued, 1)
	before, err := a.studies(background(), "from study where plan = 1 order by id")
	require.NoError(t, err)
	after, err := b.studies(background(), "from study where plan = $1 order by id", issued[0].Plan)
	require.NoError(t, err)
	require.Len(t, after, len(before))
	for i := range before {
		x, y := before[i], after[i]
		assert.Equal(t, x.Replaces == 0, y.Replaces == 0)
		assert.Equal(t, x.ReplacedBy == 0, y.ReplacedBy == 0)
		x.ID, x.Plan, x.Version, x.Replaces, x.ReplacedBy = y.ID, y.Plan, y.Version, y.Replaces, y.ReplacedBy
		assert.Equal(t, x, y)
	}
	again, err := b.PostStudy(background(), issued[0].Plan, after[3].Study, "logger 4")
	require.NoError(t, err)
	assert.Equal(t, after[3].ID, again.ID, "posted again after the move, it is the same")
}

// A study that is not what was signed does not come in, and its plan neither.
func TestUntrueStudiesStayOutside(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	station(t, a, c, 1)
	for name, c := range map[string]struct {
		file     string
		old, new string // empty: the file is removed
		want     string
	}{
		"another reading":        {"study-1.json", "100.2", "100.4", "not the study that was kept"},
		"a missing study":        {"study-2.json", "", "", "study-2.json: no such file"},
		"nothing said":           {"study-2.kept.json", "", "", "study-2.json has no file"},
		"nobody signed":          {"study-1.kept.json", "P. Rill", "", "a date, a name"},
		"no date":                {"study-1.kept.json", `"begun": "2026`, `"begun": "20x6`, "one such as"},
		"another kind":           {"study-1.kept.json", `"kind": "master"`, `"kind": "trial"`, "what was typed"},
		"a digest without":       {"study-3.kept.json", `"kind"`, `"study_digest": "sha256:1", "kind"`, "has none of them"},
		"twice":                  {"study-3.kept.json", `"number": 3`, `"number": 1`, "there twice"},
		"corrects a later one":   {"study-2.kept.json", `"replaces": 1`, `"replaces": 5`, "not there before it"},
		"corrects what is open":  {"study-4.kept.json", `"number": 4`, `"number": 4, "replaces": 3`, "of the same kind"},
		"corrects another kind":  {"study-5.kept.json", `"number": 5`, `"number": 5, "replaces": 1`, "of the same kind"},
		"corrects a second time": {"study-6.kept.json", `"number": 6`, `"number": 6, "replaces": 2`, "of the same kind"},
		"checked nothing":        {"study-6.kept.json", `"letter": "A"`, `"letter": "B"`, "checked revision B"},
		"neither pass nor fail":  {"study-6.kept.json", `"outcome": "fail"`, `"outcome": "open"`, "passed or failed"},
		"another format":         {"study-6.kept.json", `kept/1`, `kept/2`, "is no ramplan.kept/1"},
		"an unknown entry":       {"study-6.kept.json", `"posted"`, `"post"`, ""},
		"no plan":                {"plan.json", "", "", ""},
	} {
		t.Run(name, func(t *testing.T) {
			folder := filepath.Join(t.TempDir(), "plain")
			_, err := a.WriteOut(background(), folder, silent)
			require.NoError(t, err)
			file := filepath.Join(folder, "WS-210 Bearing sleeve into anemometer hub", c.file)
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			if c.old == "" {
				require.NoError(t, os.Remove(file))
			} else {
				require.NoError(t, os.WriteFile(file, []byte(strings.Replace(string(data), c.old, c.new, 1)), 0o600))
			}
			b := opened(t, t.TempDir(), Options{})
			m, err := b.BringIn(background(), []string{folder}, silent)
			require.NoError(t, err)
			if c.want == "" { // said of one that is not signed yet, or of nothing that stands there
				assert.Empty(t, m.Faults)
				assert.Equal(t, 1, m.Plans)
				return
			}
			assert.Contains(t, strings.Join(m.Faults, "\n"), c.want)
			_, total, err := b.List(background(), Query{Limit: 1})
			require.NoError(t, err)
			assert.Zero(t, total, "nothing of it came in")
		})
	}
}

// What holds signed studies is the database, not only this program.
func TestDatabaseKeepsStudies(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	station(t, a, c, 1)
	for statement, want := range map[string]string{
		"update study set signer = 'other' where id = 1": "never changed",
		"update study set signed = null where id = 1":    "never changed",
		"delete from study":                              "never removed",
		"delete from study where purpose = 'shift'":      "never removed",
		"insert or replace into study (id, plan, kind, purpose, posted, made, changed, typed_sum, typed) values (1, 1, 'master', '', 0, '', '', '', x'')": "never replaced",
		"delete from plan":                                         "through the bin only",
		"drop trigger plan_kept; delete from plan":                 "through the bin only",
		"update study set signed = 'x', replaces = 1 where id = 3": "UNIQUE",
	} {
		_, err := a.handles.Load().write.Exec(statement)
		assert.ErrorContains(t, err, want, statement)
	}
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	_, err = a.Bin(background(), 1, At(h.Version))
	require.NoError(t, err)
	_, err = a.EmptyBin(background())
	require.NoError(t, err)
	var left int
	require.NoError(t, a.reader(background()).QueryRow("select count(*) from study").Scan(&left))
	assert.Zero(t, left)
}

// A study that is not what was signed is told, counts for nothing, and does not go out.
func TestDamagedStudies(t *testing.T) {
	for name, c := range map[string]struct {
		harm string
		id   int
	}{
		"a reading":      {"update study set document = cast(replace(cast(document as text), '100.3', '100.4') as blob) where id = 2", 2},
		"a digest":       {"update study set sum = 'sha256:1' where id = 2", 2},
		"a name":         {"update study set signer = 'Q. Rill' where id = 2", 2},
		"a day":          {"update study set signed = '2026-03-03T08:00:00.000Z' where id = 2", 2},
		"what it names":  {"update study set replaces = null where id = 2", 2},
		"its plan":       {"insert into plan (name, number, made, changed) values ('', '', '', ''); update study set plan = 2 where id = 2", 2},
		"its purpose":    {"update study set purpose = 'shift' where id = 2", 2},
		"what was typed": {"update study set typed = cast(replace(cast(typed as text), '100,3', '100,4') as blob) where id = 3 or id = 2", 2},
		"half typed":     {"update study set typed = x'00' where id = 3", 3},
		"an outcome":     {"update study set outcome = 'pass' where id = 6", 6},
		"a revision":     {"update study set letter = 'B' where id = 6", 6},
	} {
		t.Run(name, func(t *testing.T) {
			clock := newClock()
			a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}, Now: clock.now})
			issueNext(t, a, 1, "first issue")
			station(t, a, clock, 1)
			report, err := a.Check(background())
			require.NoError(t, err)
			require.Empty(t, report.Faults)
			assert.Contains(t, report.String(), "5 studies, 1 shift check, 0 damaged")
			_, err = a.handles.Load().write.Exec("drop trigger study_stays; " + c.harm)
			require.NoError(t, err)
			report, err = a.Check(background())
			require.NoError(t, err)
			told := false
			for _, f := range report.Faults {
				told = told || f.What == studyName(StudyID(c.id)) && strings.Contains(f.Why, "does not match its digest")
			}
			assert.True(t, told, "%v", report.Faults)
			if c.id != 2 || name == "its plan" || name == "its purpose" {
				return
			}
			studies, err := a.CountingStudies(background(), 1)
			var damaged *Damaged
			require.ErrorAs(t, err, &damaged)
			assert.Equal(t, "study 2", damaged.What)
			for _, s := range studies {
				if s.Kind == proving.Master {
					assert.NotEqual(t, 100.3, *s.Rows[1].Reading)
				}
			}
			m, err := a.WriteOut(background(), filepath.Join(t.TempDir(), "plain"), silent)
			require.NoError(t, err)
			require.Len(t, m.Faults, 1)
			assert.Contains(t, m.Faults[0], "study 2 is damaged and was left out")
		})
	}
}

// TestSixthSchemaIsBroughtForward opens an archive of schema 6, which the program of that
// time made: a plan with two revisions and a half typed draft, one in the bin, a ram, a
// record of an exam and an exam that was begun.
func TestSixthSchemaIsBroughtForward(t *testing.T) {
	data, err := os.ReadFile("../../testdata/archive/schema6.db")
	require.NoError(t, err)
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, FileName), data, 0o600))
	const holds = "2 plans, 4 states, 2 revisions, 1 ram, 1 training record, 0 damaged"
	before, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Equal(t, holds, before.String(), "a check alone brings nothing forward")
	c := newClock()
	a := opened(t, dir, Options{Now: c.now})
	after, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, holds, after.String(), "seals and digests hold as they were")
	require.FileExists(t, filepath.Join(dir, "ramplan-schema6.db"))
	r, err := a.Revision(background(), 1, "B")
	require.NoError(t, err)
	assert.Equal(t, issue.DrillSame, r.Drill)
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, "14,", text(h, "station.nest"))
	station(t, a, c, 1)
	after, err = a.Check(background())
	require.NoError(t, err)
	assert.Empty(t, after.Faults)
	assert.Equal(t, 5, after.Studies)
}

// A backup that is put back has every study, signed, half typed or posted.
func TestStudiesAreBackedUp(t *testing.T) {
	c := newClock()
	dir := t.TempDir()
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}, Now: c.now})
	issueNext(t, a, 1, "first issue")
	station(t, a, c, 1)
	want, err := a.studies(background(), "from study order by id")
	require.NoError(t, err)
	file := filepath.Join(t.TempDir(), "copy.db")
	report, err := Backup(background(), dir, file)
	require.NoError(t, err)
	assert.Contains(t, report.String(), "5 studies, 1 shift check, 0 damaged")
	for _, k := range want {
		if !k.Signed() {
			require.NoError(t, a.DropStudy(background(), 1, k.ID, k.Version))
		}
	}
	require.NoError(t, a.Close())
	_, report, err = PutBack(background(), dir, file)
	require.NoError(t, err)
	assert.Contains(t, report.String(), "5 studies")
	b := opened(t, dir, Options{Now: c.now})
	got, err := b.studies(background(), "from study order by id")
	require.NoError(t, err)
	assert.Equal(t, want, got)
}
