package archive

import (
	"errors"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

func copyFile(t *testing.T, from, to string) {
	t.Helper()
	data, err := os.ReadFile(from)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(to, data, 0o600))
}

// opensAs opens a file that stands anywhere as an archive.
func opensAs(t *testing.T, file string) *Archive {
	t.Helper()
	dir := t.TempDir()
	copyFile(t, file, filepath.Join(dir, FileName))
	return opened(t, dir, Options{})
}

// TestPutBackKeepsWhatStood puts a backup in the place of an archive that a kill
// left with its log unwritten.
func TestPutBackKeepsWhatStood(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}})
	backup := filepath.Join(t.TempDir(), "backup.db")
	_, err := Backup(background(), a.dir, backup)
	require.NoError(t, err)
	later, err := a.Save(background(), 1, At(1), with(example(t), "title.notes", "in the log only"), "")
	require.NoError(t, err)
	dir := t.TempDir()
	for _, log := range []string{"", "-wal"} {
		copyFile(t, a.path+log, filepath.Join(dir, FileName)+log)
	}

	aside, report, err := PutBack(background(), dir, backup)
	require.NoError(t, err)
	assert.Equal(t, "1 plan, 1 state, 0 revisions, 0 damaged", report.String())
	back := opened(t, dir, Options{})
	h, err := back.Get(background(), 1)
	require.NoError(t, err)
	assert.Empty(t, text(h, "title.notes"), "what stands is the backup")
	h, err = opensAs(t, aside).Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, later.Digest, h.Digest, "what stood is aside, with what its log held")

	require.NoError(t, back.Close())
	again, _, err := PutBack(background(), dir, aside)
	require.NoError(t, err, "and can be put back itself")
	assert.NotEqual(t, aside, again)
	assert.FileExists(t, aside)
	h, err = opened(t, dir, Options{}).Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, later.Digest, h.Digest)
	parts, err := filepath.Glob(filepath.Join(dir, ".ramplan*"))
	require.NoError(t, err)
	assert.Empty(t, parts)
}

func TestPutBackOverAnything(t *testing.T) {
	for name, c := range map[string]struct {
		stood []byte
		aside bool
	}{
		"nothing":      {nil, false},
		"a ruin":       {[]byte(big), true},
		"an empty one": {[]byte{}, true},
	} {
		t.Run(name, func(t *testing.T) {
			dir := filepath.Join(t.TempDir(), "data")
			if c.stood != nil {
				require.NoError(t, os.Mkdir(dir, 0o700))
				require.NoError(t, os.WriteFile(filepath.Join(dir, FileName), c.stood, 0o600))
			}
			aside, _, err := PutBack(background(), dir, filepath.Join(first(t), FileName))
			require.NoError(t, err)
			assert.Equal(t, c.aside, aside != "")
			if c.aside {
				kept, err := os.ReadFile(aside)
				require.NoError(t, err)
				assert.Equal(t, c.stood, kept)
			}
			h, err := opened(t, dir, Options{}).Get(background(), 1)
			require.NoError(t, err, "a backup of an older schema is brought forward")
			assert.Equal(t, "A", h.Revision)
		})
	}
}

func TestPutBackRefuses(t *testing.T) {
	dir := t.TempDir()
	lock, err := TakeLock(dir)
	require.NoError(t, err)
	_, _, err = PutBack(background(), dir, filepath.Join(first(t), FileName))
	var held *Held
	require.ErrorAs(t, err, &held)
	require.NoError(t, lock.Release())

	hurt := first(t)
	a := opened(t, hurt, Options{})
	flip(t, a, "state", "body", "plan = 2 and n = 1")
	require.NoError(t, a.Close())
	_, report, err := PutBack(background(), dir, a.path)
	var unsound *Unsound
	require.ErrorAs(t, err, &unsound)
	assert.Len(t, report.Faults, 1)
	assert.NoFileExists(t, filepath.Join(dir, FileName))
	copied := filepath.Join(t.TempDir(), "copy.db")
	report, err = Backup(background(), hurt, copied)
	require.NoError(t, err, "a copy of what is damaged is better than none")
	assert.Len(t, report.Faults, 1)
	assert.FileExists(t, copied)
}

// The archive is swapped under readers and writers, again and again: who is told
// that it was saved finds it, unless the file was put back to a time before.
func TestSwappedWhileInUse(t *testing.T) {
	a := opened(t, filepath.Join(t.TempDir(), "data"), Options{First: []*press.Draft{example(t)}})
	done := make(chan struct{})
	var using sync.WaitGroup
	for range 2 {
		using.Go(func() {
			for i := 0; ; i++ {
				select {
				case <-done:
					return
				default:
				}
				var failure *Failure
				var stale *Stale
				h, err := a.Get(background(), 1)
				if err == nil {
					_, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", time.Now().String()), "")
				}
				if err != nil && !errors.As(err, &failure) && !errors.As(err, &stale) {
					assert.NoError(t, err)
					return
				}
			}
		})
	}
	for range 8 {
		copied := a.dir + ".db"
		_, err := Backup(background(), a.dir, copied)
		require.NoError(t, err)
		require.NoError(t, os.Rename(a.dir, a.dir+".away"))
		time.Sleep(5 * time.Millisecond)
		require.NoError(t, os.Mkdir(a.dir, 0o700))
		require.NoError(t, os.Rename(copied, a.path))
		time.Sleep(20 * time.Millisecond)
		require.NoError(t, os.RemoveAll(a.dir+".away"))
	}
	close(done)
	using.Wait()
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "at last"), "")
	require.NoError(t, err)
	require.NoError(t, a.Close())
	b := opened(t, a.dir, Options{})
	got, err := b.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, h.Digest, got.Digest)
	report, err := b.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
}
