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
// change was acknowledged, what stands and how many revisions and training records there
// are.
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
		case i%3 == 0: // typing in another field: a state of its own
			h, err = a.Save(ctx, 1, At(h.Version), with(h.Draft, "title.notes", strconv.FormatInt(i, 10)), "")
		default: // typing that goes on
			h, err = a.Save(ctx, 1, At(h.Version), with(h.Draft, "title.owner", strconv.FormatInt(i, 10)), "")
		}
		if err != nil {
			return err
		}
		fmt.Println(h.Version, h.Digest, n, records)
	}
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
		_, err = fmt.Sscan(line, &a.version, &a.digest, &a.revisions, &a.records)
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
