package archive

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLockIsHeldByOne(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "made", "for it")
	l, err := TakeLock(dir)
	require.NoError(t, err)
	var held *Held
	_, err = TakeLock(dir)
	require.ErrorAs(t, err, &held)
	assert.Equal(t, Held{PID: os.Getpid()}, *held, "it has not said yet where it serves")

	require.NoError(t, l.Say("http://127.0.0.1:8647/"))
	_, err = TakeLock(dir)
	require.ErrorAs(t, err, &held)
	assert.Equal(t, Held{PID: os.Getpid(), Address: "http://127.0.0.1:8647/"}, *held)
	assert.ErrorContains(t, err, "http://127.0.0.1:8647/")

	other, err := TakeLock(t.TempDir())
	require.NoError(t, err, "another archive is free")
	require.NoError(t, other.Release())

	require.NoError(t, l.Release())
	l, err = TakeLock(dir)
	require.NoError(t, err, "the file that is left stands in nobody's way")
	require.NoError(t, l.Release())
}

func TestHeldReadsWholeLinesOnly(t *testing.T) {
	for text, want := range map[string]Held{
		"":              {},
		"process: 12":   {},
		"process: 12\n": {PID: 12},
		"process: x\n":  {},
		"process: 12\naddress: http://127.0.0.1:1/\n": {PID: 12, Address: "http://127.0.0.1:1/"},
		"process: 12\naddress: http://127.0":          {PID: 12},
	} {
		name := filepath.Join(t.TempDir(), "lock")
		require.NoError(t, os.WriteFile(name, []byte(text), 0o600))
		f, err := os.Open(name)
		require.NoError(t, err)
		assert.Equal(t, want, *readHeld(f), "%q", text)
		require.NoError(t, f.Close())
	}
}
