package archive

import (
	"path/filepath"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// small mounts a disk of its own for a test.
func small(t *testing.T, size string) string {
	t.Helper()
	dir := t.TempDir()
	if err := syscall.Mount("none", dir, "tmpfs", 0, "size="+size); err != nil {
		t.Skipf("a small disk cannot be mounted here (%v): a full one is then only tested as the database meets it", err)
	}
	t.Cleanup(func() { assert.NoError(t, syscall.Unmount(dir, syscall.MNT_DETACH)) })
	return dir
}

func TestFullDisk(t *testing.T) {
	dir := small(t, "2m")
	c := newClock()
	a := opened(t, filepath.Join(dir, "data"), Options{First: []*press.Draft{example(t)}, Now: c.now})
	var h Head
	var err error
	h, err = a.Get(background(), 1)
	require.NoError(t, err)
	saved := h
	for i := range 30 { // each state needs about 200 kB
		c.rest(time.Minute)
		if h, err = a.Save(background(), 1, At(saved.Version), with(with(saved.Draft, "title.notes", big), "title.owner", string(rune('a'+i))), ""); err != nil {
			break
		}
		saved = h
	}
	var failure *Failure
	require.ErrorAs(t, err, &failure)
	assert.Contains(t, failure.Text, "The disk is full")
	_, err = Backup(background(), a.dir, filepath.Join(dir, "copy.db"))
	require.ErrorAs(t, err, &failure, "there is no room for a copy either")
	assert.NoFileExists(t, filepath.Join(dir, "copy.db"))
	left, err := filepath.Glob(filepath.Join(dir, ".ramplan*"))
	require.NoError(t, err)
	assert.Empty(t, left, "no half copy is left")

	got, err := a.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, saved.Digest, got.Digest, "the last acknowledged state stands")
	require.NoError(t, syscall.Mount("none", dir, "tmpfs", syscall.MS_REMOUNT, "size=20m"))
	h, err = a.Save(background(), 1, At(saved.Version), with(saved.Draft, "title.owner", "room again"), "")
	require.NoError(t, err)
	assert.Equal(t, "room again", text(h, "title.owner"))
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
}

// Who runs the tests may be root, whom no permission binds: a disk that is
// mounted for reading only binds root too.
func TestReadOnlyDisk(t *testing.T) {
	dir := small(t, "4m")
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}})
	require.NoError(t, a.Close())
	require.NoError(t, syscall.Mount("none", dir, "tmpfs", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""))
	for name, open := range map[string]func() error{
		"open":   func() error { _, err := Open(background(), dir, Options{}); return err },
		"lock":   func() error { _, err := TakeLock(dir); return err },
		"folder": func() error { _, err := Open(background(), filepath.Join(dir, "new"), Options{}); return err },
		"backup": func() error { _, err := Backup(background(), dir, filepath.Join(dir, "copy.db")); return err },
	} {
		err := open()
		var failure *Failure
		require.ErrorAs(t, err, &failure, name)
		assert.Contains(t, failure.Text, "read-only", name)
	}
	report, err := CheckFolder(background(), dir)
	require.NoError(t, err, "looking works")
	assert.Equal(t, "1 plan, 1 state, 0 revisions, 0 damaged", report.String())
	copied := filepath.Join(t.TempDir(), "copy.db")
	_, err = Backup(background(), dir, copied)
	require.NoError(t, err, "and so does a copy to another disk")
}
