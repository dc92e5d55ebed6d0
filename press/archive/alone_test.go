package archive

import (
	"bufio"
	"context"
	"database/sql"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/static"
)

const few = 5

// saveFew saves a few new plans, prints each when it was acknowledged, and rests.
func saveFew(dir string) error {
	plan, faults := press.Decode(static.Example())
	if len(faults) > 0 {
		return faults
	}
	a, err := Open(context.Background(), dir, Options{})
	if err != nil {
		return err
	}
	for range few {
		h, err := a.Create(context.Background(), plan.Draft(), drafts.DidMake)
		if err != nil {
			return err
		}
		fmt.Println(h.ID, a.Made())
	}
	select {}
}

// killedAfterFew runs a process that saves a few plans, and kills it when they are
// acknowledged and the rest has passed.
func killedAfterFew(t *testing.T, rest time.Duration) (dir string) {
	t.Helper()
	dir = t.TempDir()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), saverVariable+"="+dir, fewVariable+"=1")
	cmd.Stderr = os.Stderr
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	lines := bufio.NewReader(out)
	for i := range few {
		line, err := lines.ReadString('\n')
		require.NoError(t, err)
		require.Equal(t, fmt.Sprintln(i+1, true), line)
	}
	time.Sleep(rest)
	require.NoError(t, cmd.Process.Kill())
	require.ErrorContains(t, cmd.Wait(), "killed")
	return dir
}

// A log beside which the archive's file was emptied or removed may hold the only
// copy of what was saved: whatever is started there, it is left as it is.
func TestLoneLogIsLeftAlone(t *testing.T) {
	for name, hurt := range map[string]func(string) error{
		"is empty":   func(file string) error { return os.Truncate(file, 0) },
		"is missing": os.Remove,
	} {
		t.Run(name, func(t *testing.T) {
			dir := killedAfterFew(t, 0)
			log := filepath.Join(dir, FileName+"-wal")
			held, err := os.ReadFile(log)
			require.NoError(t, err)
			require.Greater(t, len(held), 10000, "the plans are in the log")
			require.NoError(t, hurt(filepath.Join(dir, FileName)))
			copied := filepath.Join(t.TempDir(), "copy.db")
			for start, do := range map[string]func() error{
				"serve": func() error {
					_, err := Open(background(), dir, Options{First: []*press.Draft{example(t)}})
					return err
				},
				"look":   func() error { _, err := Look(background(), dir); return err },
				"check":  func() error { _, err := CheckFolder(background(), dir); return err },
				"backup": func() error { _, err := Backup(background(), dir, copied); return err },
			} {
				err := do()
				var failure *Failure
				require.ErrorAs(t, err, &failure, start)
				for _, want := range []string{name, log, "Nothing was touched", "ramplan restore"} {
					assert.Contains(t, failure.Text, want, start)
				}
				now, err := os.ReadFile(log)
				require.NoError(t, err, start)
				assert.Equal(t, held, now, start)
			}

			// A backup takes the place; the log goes on lying there, beside no other file.
			aside, _, err := PutBack(background(), dir, filepath.Join(first(t), FileName))
			require.NoError(t, err)
			require.NotEmpty(t, aside)
			assert.NoFileExists(t, log)
			kept, err := filepath.Glob(filepath.Join(dir, "ramplan-*.db-wal"))
			require.NoError(t, err)
			require.Len(t, kept, 1)
			now, err := os.ReadFile(kept[0])
			require.NoError(t, err)
			assert.Equal(t, held, now)
			report, err := CheckFolder(background(), dir)
			require.NoError(t, err)
			assert.Equal(t, "2 plans, 7 states, 1 revision, 0 damaged", report.String(), "of the backup alone")
		})
	}
}

// young makes an archive as older programs did, whose file is nearly empty while its
// plans stand in its log, and gives copies of both as a kill leaves them.
func young(t *testing.T) (dir string) {
	t.Helper()
	a := &Archive{path: filepath.Join(t.TempDir(), FileName), now: time.Now}
	h, err := connect(background(), a.path, func(tx *sql.Tx) error {
		_, err := a.create(background(), tx, example(t), drafts.DidMake)
		return err
	})
	require.NoError(t, err)
	defer func() { require.NoError(t, h.close()) }()
	a.handles.Store(h)
	defer a.idle.end()
	for range few - 1 {
		_, err := a.Create(background(), example(t), drafts.DidMake)
		require.NoError(t, err)
	}
	dir = t.TempDir()
	for _, log := range []string{"", "-wal"} {
		copyFile(t, a.path+log, filepath.Join(dir, FileName)+log)
	}
	return dir
}

func TestRescueFromLogAlone(t *testing.T) {
	dir := young(t)
	require.NoError(t, os.Truncate(filepath.Join(dir, FileName), 0))
	log := filepath.Join(dir, FileName+"-wal")
	held, err := os.ReadFile(log)
	require.NoError(t, err)
	aside, report, err := PutBack(background(), dir, log)
	require.NoError(t, err)
	assert.Equal(t, "5 plans, 5 states, 0 revisions, 0 damaged", report.String())
	kept, err := os.ReadFile(aside + "-wal")
	require.NoError(t, err)
	assert.Equal(t, held, kept, "the log stays what it was")
	a := opened(t, dir, Options{})
	_, total, err := a.List(background(), Query{Limit: 10})
	require.NoError(t, err)
	assert.Equal(t, few, total)
	left, err := filepath.Glob(filepath.Join(dir, ".ramplan*"))
	require.NoError(t, err)
	assert.Empty(t, left)
}

// A log of what came after a whole file holds no archive alone.
func TestLogOfAnotherFileIsNoArchive(t *testing.T) {
	dir := killedAfterFew(t, 0)
	require.NoError(t, os.Remove(filepath.Join(dir, FileName)))
	log := filepath.Join(dir, FileName+"-wal")
	held, err := os.ReadFile(log)
	require.NoError(t, err)
	_, _, err = PutBack(background(), dir, log)
	var failure *Failure
	require.ErrorAs(t, err, &failure)
	assert.Contains(t, failure.Text, "not hold a whole archive")
	now, err := os.ReadFile(log)
	require.NoError(t, err)
	assert.Equal(t, held, now)
	assert.NoFileExists(t, filepath.Join(dir, FileName))
}

// A copy of the file of a young archive without its log is no new archive.
func TestCopyOfTheFileAloneIsTold(t *testing.T) {
	from, dir := young(t), t.TempDir()
	copyFile(t, filepath.Join(from, FileName), filepath.Join(dir, FileName))
	before, err := os.ReadFile(filepath.Join(dir, FileName))
	require.NoError(t, err)
	for start, do := range map[string]func() error{
		"serve": func() error {
			_, err := Open(background(), dir, Options{First: []*press.Draft{example(t)}})
			return err
		},
		"check": func() error { _, err := CheckFolder(background(), dir); return err },
		"restore": func() error {
			_, _, err := PutBack(background(), t.TempDir(), filepath.Join(dir, FileName))
			return err
		},
	} {
		err := do()
		var failure *Failure
		require.ErrorAs(t, err, &failure, start)
		assert.Contains(t, failure.Text, "its log, ramplan.db-wal", start)
	}
	now, err := os.ReadFile(filepath.Join(dir, FileName))
	require.NoError(t, err)
	assert.Equal(t, before, now)
}

// After a rest nothing is in the log alone: what is killed then needs none of it.
func TestLogIsWrittenWhenIdle(t *testing.T) {
	dir := killedAfterFew(t, rest+2*time.Second)
	log := filepath.Join(dir, FileName+"-wal")
	s, err := os.Stat(log)
	require.NoError(t, err)
	assert.Zero(t, s.Size(), "nothing is left in the log that damage could cut off")
	require.NoError(t, os.Remove(log))
	a := opened(t, dir, Options{})
	assert.False(t, a.Made())
	_, total, err := a.List(background(), Query{Limit: 10})
	require.NoError(t, err)
	assert.Equal(t, few, total, "the file alone holds all")
}

// Who reads an older moment does not hold up who saves, and is waited for.
func TestIdleLogWaitsForReaders(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}})
	tx, err := a.handles.Load().read.BeginTx(background(), nil)
	require.NoError(t, err)
	_, err = getHead(background(), asText(tx), 1)
	require.NoError(t, err)
	h, err := a.Save(background(), 1, At(1), with(example(t), "title.notes", "n"), "")
	require.NoError(t, err)
	began := time.Now()
	whole, err := a.handles.Load().emptyLog(background())
	require.NoError(t, err)
	assert.False(t, whole)
	assert.Less(t, time.Since(began), time.Second)
	require.NoError(t, tx.Rollback())
	assert.Eventually(t, func() bool {
		s, err := os.Stat(a.path + "-wal")
		return err == nil && s.Size() == 0
	}, 10*time.Second, 50*time.Millisecond)
	_, err = a.Save(background(), 1, At(h.Version), with(example(t), "title.notes", "more"), "")
	require.NoError(t, err)
}

func TestOwnFilesAreForTheUserAlone(t *testing.T) {
	dir := first(t)
	require.NoError(t, os.Chmod(filepath.Join(dir, FileName), 0o644))
	a := opened(t, dir, Options{})
	_, err := a.Create(background(), example(t), drafts.DidMake)
	require.NoError(t, err)
	lock, err := TakeLock(dir)
	require.NoError(t, err)
	defer func() { require.NoError(t, lock.Release()) }()
	_, err = Backup(background(), dir, filepath.Join(dir, "copy.db"))
	require.NoError(t, err)
	fresh := opened(t, t.TempDir(), Options{})
	for _, in := range []string{dir, fresh.dir} {
		entries, err := os.ReadDir(in)
		require.NoError(t, err)
		require.GreaterOrEqual(t, len(entries), 3)
		for _, e := range entries {
			s, err := e.Info()
			require.NoError(t, err)
			assert.Zero(t, s.Mode().Perm()&0o077, "%s may be read by others: %v", e.Name(), s.Mode())
		}
	}
}

// The archive's file may be a link to another folder: its log is there.
func TestLinkedArchive(t *testing.T) {
	real, dir := t.TempDir(), t.TempDir()
	a := opened(t, real, Options{First: []*press.Draft{example(t)}})
	require.NoError(t, a.Close())
	require.NoError(t, os.Symlink(filepath.Join(real, FileName), filepath.Join(dir, FileName)))
	b := opened(t, dir, Options{})
	h, err := b.Save(background(), 1, At(1), with(example(t), "title.notes", "over the link"), "")
	require.NoError(t, err)
	lock, err := TakeLock(dir)
	require.NoError(t, err)
	_, err = TakeLock(real)
	var held *Held
	require.ErrorAs(t, err, &held, "one archive has one lock")
	require.NoError(t, lock.Release())
	report, err := CheckFolder(background(), dir)
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	require.NoError(t, b.Close())
	got, err := opened(t, real, Options{}).Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, h.Digest, got.Digest)

	require.NoError(t, os.Rename(real, real+".away"))
	_, err = Open(background(), dir, Options{})
	require.ErrorContains(t, err, "is a link to")
}
