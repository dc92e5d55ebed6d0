package archive

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// A folder in place of a file, a file in place of a folder, and what is not there are
// called what they are, by every verb, and nothing is left behind.
func TestWhatStandsInTheWayIsNamed(t *testing.T) {
	dir, empty := t.TempDir(), t.TempDir()
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}})
	require.NoError(t, a.Close())
	file := filepath.Join(dir, FileName)
	taken := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(taken, FileName), 0o700))
	putBack := func(dir, file string) error { _, _, err := PutBack(background(), dir, file); return err }
	check := func(dir string) error { _, err := CheckFolder(background(), dir); return err }
	for name, c := range map[string]struct {
		do   func() error
		want string
	}{
		"check of a file":            {func() error { return check(file) }, file + " is no folder: what stands in its place is a file"},
		"check of a folder":          {func() error { return check(taken) }, filepath.Join(taken, FileName) + " is a folder, and a file is needed"},
		"check of nothing":           {func() error { return check(empty) }, "There is no archive in this folder"},
		"restore into a file":        {func() error { return putBack(file, file) }, file + " is no folder"},
		"restore of a folder":        {func() error { return putBack(empty, dir) }, dir + " is a folder, and a file is needed"},
		"restore of nothing":         {func() error { return putBack(empty, file+"x") }, "There is no file " + file + "x"},
		"restore in place of folder": {func() error { return putBack(taken, file) }, filepath.Join(taken, FileName) + " is a folder"},
		"serve of a file":            {func() error { _, err := Open(background(), file, Options{}); return err }, file + " is no folder"},
		"serve of a folder":          {func() error { _, err := Open(background(), taken, Options{}); return err }, "is a folder, and a file is needed"},
	} {
		err := c.do()
		var failure *Failure
		require.ErrorAs(t, err, &failure, name)
		assert.Contains(t, failure.Text, c.want, name)
		assert.NotContains(t, failure.Text, "saved", name)
	}
	left, err := os.ReadDir(taken)
	require.NoError(t, err)
	for _, e := range left {
		assert.Contains(t, []string{FileName, LockName}, e.Name())
	}
	parts, err := filepath.Glob(filepath.Join(empty, "*.db"))
	require.NoError(t, err)
	assert.Empty(t, parts)
}

func TestRefusedFoldersAreNamed(t *testing.T) {
	for why, want := range map[error]string{syscall.EROFS: "The folder here is read-only: nothing was changed.", syscall.EACCES: "The folder here may not be written to by this user: nothing was changed."} {
		assert.Equal(t, "archive: "+want, folderFault("here", &os.PathError{Op: "open", Path: "here", Err: why}).Error())
	}
}
