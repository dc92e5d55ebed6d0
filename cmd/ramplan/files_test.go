package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestPutAll: files that belong together come all or not at all, and nothing is left
// beside them.
func TestPutAll(t *testing.T) {
	dir := t.TempDir()
	one, two := filepath.Join(dir, "one.svg"), filepath.Join(dir, "two.svg")
	require.NoError(t, os.WriteFile(one, []byte("good"), 0o640))
	var said bytes.Buffer
	c := console{strings.NewReader(""), &said, &said}
	for _, wrong := range []string{filepath.Join(dir, "no", "such.svg"), dir} {
		require.Equal(t, statusRefused, c.putAll([]string{one, wrong}, [][]byte{[]byte("new"), []byte("new")}))
		data, err := os.ReadFile(one)
		require.NoError(t, err)
		assert.Equal(t, "good", string(data))
	}
	assert.Contains(t, said.String(), "no such file or directory")
	require.Equal(t, statusGood, c.putAll([]string{one, two}, [][]byte{[]byte("new"), []byte("more")}))
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 2)
	data, err := os.ReadFile(one)
	require.NoError(t, err)
	assert.Equal(t, "new", string(data))
	info, err := os.Stat(one)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o640), info.Mode().Perm(), "the rights of the file that was there")
	said.Reset()
	require.Equal(t, statusGood, c.put("-", []byte("out")))
	assert.Equal(t, "out", said.String())
}
