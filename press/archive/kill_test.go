package archive

import (
	"bufio"
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/press/training"
	"ramplan/static"
)

// The test binary is also the program that is killed: this variable holds the
// folder of its archive.
const saverVariable = "RAMPLAN_TEST_SAVER"

// fewVariable lets it save five new plans and rest until it is killed.
const fewVariable = "RAMPLAN_TEST_FEW"

// roundsVariable says how often the power is cut.
const roundsVariable = "RAMPLAN_KILL_ROUNDS"

const usualRounds = 25

func TestMain(m *testing.M) {
	if dir := os.Getenv(saverVariable); dir != "" {
		save := saveWithoutEnd
		if os.Getenv(fewVariable) != "" {
			save = saveFew
		}
		if err := save(dir); err != nil {
			fmt.Fprintln(os.Stderr, err)
		}
		os.Exit(1)
	}
	os.Exit(m.Run())
}

// saveWithoutEnd changes the first plan in every way and prints, after each
// change was acknowledged, what stands and how many revisions, training records and
// signed studies there are, and what is typed into the study under way.
func saveWithoutEnd(dir string) error {
	ctx := context.Background()
	if _, err := TakeLock(dir); err != nil {
		return err
	}
	plan, faults := press.Decode(static.Example())
	if len(faults) > 0 {
		return faults
	}
	a, err := Open(ctx, dir, Options{First: []*press.Draft{plan.Draft()}})
	if err != nil {
		return err
	}
	h, err := a.Get(ctx, 1)
	if err != nil {
		return err
	}
	issued, err := a.Revisions(ctx, 1)
	if err != nil {
		return err
	}
	n := len(issued)
	kept, err := a.Trainings(ctx, 1)
	if err != nil {
		return err
	}
	records := len(kept)
	typed, signed, err := openStudy(ctx, a)
	if err != nil {
		return err
	}
	for i := h.Version; ; i++ {
		switch {
		case i%23 == 0:
			h, err = a.Undo(ctx, 1, At(h.Version))
		case i%29 == 0:
			h, err = a.Restore(ctx, 1, At(h.Version), 1)
		case i%31 == 0:
			_, err = a.Create(ctx, h.Draft, drafts.DidCopy)
		case i%37 == 0:
			var r issue.Revision
			r, err = a.Issue(ctx, 1, At(h.Version), issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "R", Despite: "D", Second: "S"})
			if n == 0 || r.Letter != issue.Letter(n) { // else it was issued just before the kill
				n++
			}
		case i%17 == 0:
			var one training.Record
			one, err = a.KeepTraining(ctx, training.Record{Plan: 1, Sitting: strconv.Itoa(records), Who: "W", Items: 20, Right: 17, Needed: 16, Passed: true})
			records = int(one.ID) // numbers follow one another, as none is removed
		case i%13 == 0:
			if typed, err = a.SignStudy(ctx, 1, typed.ID, typed.Version, "P"); err == nil {
				signed++
				typed, err = a.StartStudy(ctx, 1, proving.Master, master("1"))
			}
		case i%7 == 0:
			typed, err = a.SaveStudy(ctx, 1, typed.ID, typed.Version, master(strconv.FormatInt(i, 10)))
		case i%3 == 0: // typing in another field: a state of its own
			h, err = a.Save(ctx, 1, At(h.Version), with(h.Draft, "title.notes", strconv.FormatInt(i, 10)), "")
		default: // typing that goes on
			h, err = a.Save(ctx, 1, At(h.Version), with(h.Draft, "title.owner", strconv.FormatInt(i, 10)), "")
		}
		if err != nil {
			return err
		}
		fmt.Println(h.Version, h.Digest, n, records, signed, typed.ID, typed.Version, typed.Typed.Cell(0, "reading"))
	}
}

// openStudy gives the study that is typed, and how many are signed.
func openStudy(ctx context.Context, a *Archive) (KeptStudy, int, error) {
	all, err := a.Studies(ctx, 1)
	if err != nil {
		return KeptStudy{}, 0, err
	}
	signed := 0
	for _, k := range all {
		if k.Signed() {
			signed++
		}
	}
	if n := len(all); n > 0 && !all[n-1].Signed() {
		return all[n-1], signed, nil
	}
	k, err := a.StartStudy(ctx, 1, proving.Master, master("1"))
	return k, signed, err
}

// A process that is killed in the middle of saving loses nothing of what it
// acknowledged, leaves nothing half done, and holds nobody up.
func TestKilledWhileSaving(t *testing.T) {
	t.Parallel()
	rounds := usualRounds
	if s := os.Getenv(roundsVariable); s != "" {
		n, err := strconv.Atoi(s)
		require.NoError(t, err, roundsVariable)
		rounds = n
	} else if testing.Short() {
		rounds = 5
	}
	random := rand.New(rand.NewPCG(1, 2))
	dir := t.TempDir()
	all := 0
	for round := range rounds {
		wait := time.Duration(random.IntN(200)) * time.Millisecond
		saved := 1 + random.IntN(12) // counted, as a busy machine may save once in 200 ms
		opening := round%5 == 0      // also while it opens, or makes, the archive
		if opening {
			wait, saved = wait/4, 0
		}
		acknowledged := killAfter(t, dir, wait, saved)
		all += len(acknowledged)
		a, err := Open(background(), dir, Options{First: []*press.Draft{example(t)}}) // the kill may have come before there was one
		require.NoError(t, err, "round %d", round)
		_, err = a.Get(background(), 1)
		require.NoError(t, err, "round %d: an archive without its first plan", round)
		report, err := a.Check(background())
		require.NoError(t, err)
		require.Empty(t, report.Faults, "round %d", round)
		if len(acknowledged) > 0 {
			last := acknowledged[len(acknowledged)-1]
			h, err := a.Get(background(), 1)
			require.NoError(t, err)
			issued, err := a.Revisions(background(), 1)
			require.NoError(t, err)
			require.GreaterOrEqual(t, len(issued), last.revisions, "round %d: an issued revision is lost", round)
			records, err := a.Trainings(background(), 1)
			require.NoError(t, err)
			require.GreaterOrEqual(t, len(records), last.records, "round %d: a training record is lost", round)
			typed, signed, err := openStudy(background(), a)
			require.NoError(t, err)
			require.GreaterOrEqual(t, signed, last.signed, "round %d: a signed study is lost", round)
			if typed.ID == last.study {
				require.GreaterOrEqual(t, typed.Version, last.typed, "round %d: what was typed into a study is lost", round)
			} else {
				require.Greater(t, signed, last.signed, "round %d: the study that was typed is gone, and was not signed", round)
			}
			if typed.ID == last.study && typed.Version == last.typed {
				require.Equal(t, last.reading, typed.Typed.Cell(0, "reading"), "round %d", round)
			}
			require.Contains(t, []int64{last.version, last.version + 1}, h.Version,
				"round %d: the last acknowledged version was %d; at most the one under way may have come after it", round, last.version)
			if h.Version == last.version {
				require.Equal(t, last.digest, h.Digest, "round %d", round)
			}
		}
		require.NoError(t, a.Close())
	}
	require.Greater(t, all, rounds, "the killed processes saved hardly anything: nothing was proved")
	t.Logf("%d rounds, %d acknowledged changes, none lost", rounds, all)
}

type acknowledgement struct {
	version   int64
	digest    string
	revisions int
	records   int
	signed    int // studies
	study     StudyID
	typed     int64 // version of it
	reading   string
}

// killAfter lets a process save for a while, kills it, and gives what it had
// acknowledged. The while begins when it saved so often; 0: at its start.
func killAfter(t *testing.T, dir string, wait time.Duration, saved int) []acknowledgement {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), saverVariable+"="+dir)
	cmd.Stderr = os.Stderr
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	kill := func() { _ = cmd.Process.Kill() }
	if saved == 0 {
		time.AfterFunc(wait, kill)
	}
	var got []acknowledgement
	lines := bufio.NewReader(out)
	for {
		line, err := lines.ReadString('\n')
		if err != nil {
			break // a line without its end was not acknowledged
		}
		var a acknowledgement
		_, err = fmt.Sscan(line, &a.version, &a.digest, &a.revisions, &a.records, &a.signed, &a.study, &a.typed, &a.reading)
		require.NoError(t, err, line)
		got = append(got, a)
		if len(got) == saved {
			time.AfterFunc(wait, kill)
		}
	}
	require.ErrorContains(t, cmd.Wait(), "killed", "it ends by being killed only")
	require.GreaterOrEqual(t, len(got), saved, "it ended before it had saved so often")
	return got
}
