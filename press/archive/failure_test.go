package archive

import (
	"database/sql"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
)

// big is a text that needs pages of its own.
var big = strings.Repeat("ein langer Satz. ", 12000)

// Each trouble is told in one sentence, nothing is acknowledged meanwhile, and
// the next save works when it can be again, without opening the archive anew.
func TestTroubleIsToldAndPasses(t *testing.T) {
	for name, c := range map[string]struct {
		begin func(t *testing.T, a *Archive)
		want  string
		end   func(t *testing.T, a *Archive)
	}{
		"full disk, as the database meets it": { // its own limit of pages is met in the same place as a full disk
			func(t *testing.T, a *Archive) { pragma(t, a, "max_page_count = 1") },
			"The disk is full",
			func(t *testing.T, a *Archive) { pragma(t, a, "max_page_count = 1000000") },
		},
		"file that may only be read": {
			func(t *testing.T, a *Archive) { pragma(t, a, "query_only = 1") },
			"read-only",
			func(t *testing.T, a *Archive) { pragma(t, a, "query_only = 0") },
		},
		"folder moved away and back": {
			func(t *testing.T, a *Archive) { require.NoError(t, os.Rename(a.dir, a.dir+".away")) },
			"folder or file was removed",
			func(t *testing.T, a *Archive) { require.NoError(t, os.Rename(a.dir+".away", a.dir)) },
		},
		"folder removed, and a copy put back": {
			func(t *testing.T, a *Archive) {
				_, err := Backup(background(), a.dir, a.dir+".db")
				require.NoError(t, err)
				require.NoError(t, os.RemoveAll(a.dir))
			},
			"folder or file was removed",
			func(t *testing.T, a *Archive) {
				require.NoError(t, os.Mkdir(a.dir, 0o700))
				require.NoError(t, os.Rename(a.dir+".db", a.path))
			},
		},
		"an empty file in its place": {
			func(t *testing.T, a *Archive) {
				require.NoError(t, os.Rename(a.dir, a.dir+".away"))
				require.NoError(t, os.Mkdir(a.dir, 0o700))
				require.NoError(t, os.WriteFile(a.path, nil, 0o600))
			},
			"An empty file stands in place of the archive",
			func(t *testing.T, a *Archive) {
				require.NoError(t, os.RemoveAll(a.dir))
				require.NoError(t, os.Rename(a.dir+".away", a.dir))
			},
		},
		"something else in its place": {
			func(t *testing.T, a *Archive) {
				require.NoError(t, os.Rename(a.dir, a.dir+".away"))
				require.NoError(t, os.Mkdir(a.dir, 0o700))
				require.NoError(t, os.WriteFile(a.path, []byte(big), 0o600))
			},
			"no archive of ramplan",
			func(t *testing.T, a *Archive) {
				require.NoError(t, os.RemoveAll(a.dir))
				require.NoError(t, os.Rename(a.dir+".away", a.dir))
			},
		},
	} {
		t.Run(name, func(t *testing.T) {
			a := opened(t, filepath.Join(t.TempDir(), "data"), Options{First: []*press.Draft{example(t)}})
			h, err := a.Save(background(), 1, At(1), with(example(t), "title.notes", "before"), "")
			require.NoError(t, err)
			c.begin(t, a)
			troubled(t, a, h, c.want)
			c.end(t, a)
			passed(t, a, h)
		})
	}
}

// troubled saves in vain.
func troubled(t *testing.T, a *Archive, h Head, want string) {
	t.Helper()
	_, err := a.Save(background(), 1, At(h.Version), with(h.Draft, "title.owner", big), "")
	var failure *Failure
	require.ErrorAs(t, err, &failure)
	assert.Contains(t, failure.Text, want)
	assert.True(t, strings.HasSuffix(failure.Text, "."), "a sentence: %s", failure.Text)
	_, err = a.Save(background(), 1, At(h.Version), h.Draft, "")
	if want != "read-only" && !strings.Contains(want, "full") {
		require.ErrorAs(t, err, &failure, "also what stands already is not said to be safe")
	}
	_, err = a.Create(background(), with(h.Draft, "title.owner", big), drafts.DidCopy)
	require.ErrorAs(t, err, &failure)
}

// passed saves again, with the handle that was open all the time.
func passed(t *testing.T, a *Archive, h Head) {
	t.Helper()
	got, err := a.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, h.Digest, got.Digest, "what was acknowledged before is there")
	assert.Equal(t, h.Version, got.Version)
	saved, err := a.Save(background(), 1, At(h.Version), with(h.Draft, "title.owner", big), "")
	require.NoError(t, err)
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Empty(t, report.Faults)
	assert.Equal(t, "1 plan, 3 states, 0 revisions, 0 damaged", report.String())
	require.NoError(t, a.Close())
	b := opened(t, a.dir, Options{})
	got, err = b.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, saved.Digest, got.Digest)
}

func pragma(t *testing.T, a *Archive, what string) {
	t.Helper()
	_, err := a.handles.Load().write.Exec("pragma " + what)
	require.NoError(t, err)
}

func TestLockedFile(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}})
	pragma(t, a, "busy_timeout = 50") // five seconds else
	other, err := sql.Open("sqlite", a.path)
	require.NoError(t, err)
	defer other.Close()
	other.SetMaxOpenConns(1)
	_, err = other.Exec("begin exclusive")
	require.NoError(t, err)
	h, err := a.Get(background(), 1)
	require.NoError(t, err, "reading goes on")
	troubled1(t, a, h, "Another program holds the archive")
	_, err = other.Exec("rollback")
	require.NoError(t, err)
	_, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "n"), "")
	require.NoError(t, err)
}

func troubled1(t *testing.T, a *Archive, h Head, want string) {
	t.Helper()
	_, err := a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "n"), "")
	var failure *Failure
	require.ErrorAs(t, err, &failure)
	assert.Contains(t, failure.Text, want)
}

// Somebody tidies up and removes the files beside the archive while it is
// served: the log among them held what was acknowledged.
func TestRemovedLogIsRescued(t *testing.T) {
	dir := t.TempDir()
	clock := newClock()
	a := opened(t, dir, Options{First: []*press.Draft{example(t)}, Now: clock.now})
	h, err := a.Save(background(), 1, At(1), with(example(t), "title.notes", "only in the log"), "")
	require.NoError(t, err)
	for _, name := range []string{"-wal", "-shm"} {
		require.NoError(t, os.Remove(a.path+name))
	}
	got, err := a.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, h.Digest, got.Digest)
	clock.rest(time.Minute)
	h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "after it"), "")
	require.NoError(t, err)

	// Another process sees both, though this one never closed the file.
	b, err := Look(background(), dir)
	require.NoError(t, err)
	got, err = b.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, h.Digest, got.Digest)
	report, err := b.Check(background())
	require.NoError(t, err)
	assert.Equal(t, "1 plan, 3 states, 0 revisions, 0 damaged", report.String())
	require.NoError(t, b.Close())

	require.NoError(t, os.Remove(a.path+"-wal"))
	require.NoError(t, a.Close(), "closing rescues too")
	c := opened(t, dir, Options{})
	got, err = c.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, h.Digest, got.Digest)
}

func TestOpenSaysWhatIsWrong(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "file")
	require.NoError(t, os.WriteFile(file, nil, 0o600))
	text := filepath.Join(dir, "text")
	require.NoError(t, os.Mkdir(text, 0o700))
	require.NoError(t, os.WriteFile(filepath.Join(text, FileName), []byte(big), 0o600))
	for name, want := range map[string]string{file: "what stands in its place is a file", text: "no archive of ramplan"} {
		_, err := Open(background(), name, Options{})
		var failure *Failure
		require.ErrorAs(t, err, &failure)
		assert.Contains(t, failure.Text, want)
	}
	kept, err := os.ReadFile(filepath.Join(text, FileName))
	require.NoError(t, err)
	assert.Equal(t, big, string(kept), "what is no archive is left alone")
}

// A draft that could not be read again is refused before it is kept.
func TestDraftTooLargeToKeep(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}})
	huge := with(example(t), "title.notes", strings.Repeat("x", press.MaxBytes))
	_, err := a.Save(background(), 1, At(1), huge, "")
	var problems press.Problems
	require.ErrorAs(t, err, &problems)
	_, err = a.Create(background(), huge, drafts.DidMake)
	require.True(t, errors.As(err, &problems))
	broken := with(example(t), "title.notes", "a\xffb")
	h, err := a.Create(background(), broken, drafts.DidMake)
	require.NoError(t, err)
	assert.Equal(t, "a\uFFFDb", text(h, "title.notes"), "as it is kept")
}
