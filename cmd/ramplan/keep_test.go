package main

import (
	"bufio"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/archive"
)

// soundShelf is what check prints of a new archive: the example and nothing else.
const soundShelf = "4 plans, 4 states, 0 revisions, 0 damaged\n"

// TestBackupAndRestore goes the whole way of an archive: served, checked and
// copied meanwhile, stopped, put back.
func TestBackupAndRestore(t *testing.T) {
	dir, folder := t.TempDir(), t.TempDir()
	status, _, errs := command(t, "", "check", "-data", dir)
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "There is no archive in this folder")
	assert.NoFileExists(t, filepath.Join(dir, archive.FileName), "looking makes nothing")

	address, stop := served(t, "-data", dir, "-listen", "127.0.0.1:0")
	status, out, errs := command(t, "", "check", "-data", dir)
	require.Equal(t, 0, status, errs)
	assert.Equal(t, soundShelf, out)
	copied := filepath.Join(folder, "plans copy.db")
	status, out, errs = command(t, "", "backup", "-data", dir, copied)
	require.Equal(t, 0, status, errs)
	assert.Equal(t, copied+": "+soundShelf, out)
	status, _, errs = command(t, "", "backup", "-data", dir, copied)
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "never overwritten")
	status, _, errs = command(t, "", "restore", "-data", dir, copied)
	assert.Equal(t, 2, status, "not while it is served")
	assert.Contains(t, errs, address)
	require.Equal(t, 0, stop())

	status, out, errs = command(t, "", "restore", "-data", dir, copied)
	require.Equal(t, 0, status, errs)
	aside := regexp.MustCompile(`kept as (.*)\n`).FindStringSubmatch(out)
	require.NotNil(t, aside, out)
	assert.FileExists(t, aside[1])
	status, out, _ = command(t, "", "check", "-data", dir)
	assert.Equal(t, 0, status)
	assert.Equal(t, soundShelf, out)

	data, err := os.ReadFile(copied)
	require.NoError(t, err)
	whole := string(data)
	data = []byte(strings.ReplaceAll(whole, `"18000"`, `"18001"`)) // the stiffness of plan 1, and of no other
	require.NotEqual(t, whole, string(data))
	hurt := filepath.Join(folder, "hurt.db")
	require.NoError(t, os.WriteFile(hurt, data, 0o600))
	status, _, errs = command(t, "", "restore", "-data", dir, hurt)
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "plan 1, state 1 does not match its digest")
	status, _, _ = command(t, "", "check", "-data", dir)
	assert.Equal(t, 0, status, "the archive is as it was")

	require.NoError(t, os.WriteFile(filepath.Join(dir, archive.FileName), data, 0o600))
	status, out, errs = command(t, "", "check", "-data", dir)
	assert.Equal(t, 1, status)
	assert.Contains(t, out, "1 damaged")
	assert.Contains(t, errs, "plan 1, state 1 does not match its digest")
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Len(t, entries, 2, "no half copies are left")
}

func TestArchiveVerbsRefuse(t *testing.T) {
	dir := t.TempDir()
	text := filepath.Join(dir, "text")
	require.NoError(t, os.WriteFile(text, []byte("this is a file of words and no archive\n"), 0o600))
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"check", "x"}, "needs no file"},
		{[]string{"backup", "-data", dir}, "needs the name of the file"},
		{[]string{"backup", "-data", dir, filepath.Join(dir, "b.db")}, "no archive in this folder"},
		{[]string{"restore", "-data", dir}, "needs the name of the backup"},
		{[]string{"restore", "-data", dir, filepath.Join(dir, "nowhere.db")}, "There is no file"},
		{[]string{"restore", "-data", dir, text}, "no archive"},
		{[]string{"check", "-wat"}, "flag provided but not defined"},
	} {
		status, out, errs := command(t, "", c.args...)
		assert.Equal(t, 2, status, c.args)
		assert.Empty(t, out)
		assert.Contains(t, errs, c.want, c.args)
	}
	status, _, errs := command(t, "", "backup", "-help")
	assert.Equal(t, 0, status)
	assert.Contains(t, errs, "-data")
}

// TestOutAndIn moves an archive by plain files.
func TestOutAndIn(t *testing.T) {
	dir, folder := t.TempDir(), t.TempDir()
	status, out, errs := command(t, "", "in", "-data", dir, examplePlan, examplePlan)
	require.Equal(t, 0, status, errs)
	assert.Equal(t, "2 plans, 0 revisions, 0 rams came in\n", out)
	plain := filepath.Join(folder, "plain")
	status, out, errs = command(t, "", "out", "-data", dir, plain)
	require.Equal(t, 0, status, errs)
	assert.Equal(t, "2 plans, 0 revisions, 0 rams went out\n", out)
	status, _, errs = command(t, "", "out", "-data", dir, plain)
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "not empty")
	status, _, errs = command(t, "", "eval", filepath.Join(plain, "WS-210 Bearing sleeve into anemometer hub (2)", "plan.json"))
	assert.Equal(t, 0, status, errs)

	other := t.TempDir()
	status, out, errs = command(t, "", "in", "-data", other, plain, "nowhere.json")
	assert.Equal(t, 2, status)
	assert.Equal(t, "2 plans, 0 revisions, 0 rams came in\n", out)
	assert.Contains(t, errs, "nowhere.json: no such file or folder")

	address, stop := served(t, "-data", other, "-listen", "127.0.0.1:0")
	status, _, errs = command(t, "", "in", "-data", other, examplePlan)
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, address)
	status, _, errs = command(t, "", "out", "-data", other, filepath.Join(folder, "beside"))
	assert.Equal(t, 0, status, "looking works beside: %s", errs)
	assert.Equal(t, 0, stop())
}

// A server that was killed leaves its lock file behind, which holds nobody up;
// while it runs, another process is told where it serves.
func TestKilledServerHoldsNobodyUp(t *testing.T) {
	dir := t.TempDir()
	program := exec.Command(os.Args[0], "serve", "-data", dir, "-listen", "127.0.0.1:0")
	program.Env = append(os.Environ(), programVariable+"=1")
	printed, err := program.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, program.Start())
	t.Cleanup(func() { _ = program.Process.Kill() })
	line, err := bufio.NewReader(printed).ReadString('\n')
	require.NoError(t, err)
	_, address, _ := strings.Cut(strings.TrimSpace(line), " at ")
	require.NotEmpty(t, address)

	status, _, errs := command(t, "", "serve", "-data", dir, "-listen", "127.0.0.1:0")
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, address)
	assert.Contains(t, errs, strconv.Itoa(program.Process.Pid))

	require.NoError(t, program.Process.Kill())
	require.Error(t, program.Wait())
	left, err := os.ReadFile(filepath.Join(dir, archive.LockName))
	require.NoError(t, err)
	assert.Contains(t, string(left), address, "what it said is still there")
	status, out, errs := command(t, "", "check", "-data", dir)
	assert.Equal(t, 0, status, errs)
	assert.Equal(t, soundShelf, out)
	again, stop := served(t, "-data", dir, "-listen", "127.0.0.1:0")
	assert.NotEqual(t, address, again)
	assert.Equal(t, 0, stop())
}
