package main

import (
	"bufio"
	"context"
	"encoding/json"
	"io"
	"net"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

// served runs the program as a user starts it and returns the address that it
// printed; stop ends it and gives its status.
func served(t *testing.T, args ...string) (address string, stop func() int) {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	t.Cleanup(cancel)
	read, write := io.Pipe()
	status := make(chan int, 1)
	go func() {
		status <- run(ctx, args, strings.NewReader(""), write, write)
		_ = write.Close()
	}()
	line, err := bufio.NewReader(read).ReadString('\n')
	require.NoError(t, err)
	go func() { _, _ = io.Copy(io.Discard, read) }()
	_, address, ok := strings.Cut(strings.TrimSpace(line), "http://")
	require.True(t, ok, "the address is printed: %s", line)
	return "http://" + address, func() int {
		cancel()
		select {
		case s := <-status:
			return s
		case <-time.After(10 * time.Second):
			t.Fatal("the server did not stop")
			return -1
		}
	}
}

// TestServe starts the program without a verb, changes a field of the form, saves
// the file and evaluates it: page and command line say the same figures.
func TestServe(t *testing.T) {
	address, stop := served(t, "-data", t.TempDir(), "-listen", "127.0.0.1:0")
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	plan, faults := press.Decode(data)
	require.Empty(t, faults)
	draft := plan.Draft()
	draft.Set("station.nest", "141,25") // a decimal comma
	form := url.Values{":version": {"1"}}
	for _, e := range draft.Entries {
		form.Set(e.Path, e.Text)
	}
	page := answer(t, address+"plans/1", form)
	saved := filepath.Join(t.TempDir(), "saved.json")
	require.NoError(t, os.WriteFile(saved, []byte(answer(t, address+"plans/1/file", form)), 0o600))

	status, out, errs := command(t, "", "eval", saved)
	require.Equal(t, 0, status, errs)
	var r struct {
		press.Outcome
		Digest string `json:"plan_digest"`
	}
	require.NoError(t, json.Unmarshal([]byte(out), &r))
	assert.Contains(t, page, r.Digest)
	assert.Equal(t, 116.33, *r.Window.Zone[0], "derived: the example's 115.08 moved by 1.25")
	for _, x := range []float64{r.Travel.ApproachEnd, *r.Travel.PushStroke, *r.Travel.PushEnd, *r.Window.Zone[0], *r.Window.Zone[1]} {
		assert.Contains(t, page, ">"+words.Fixed(x, 2)+"<")
	}
	for _, f := range r.Findings {
		assert.Contains(t, page, f.Message)
	}
	assert.Equal(t, 0, stop())
}

func answer(t *testing.T, address string, form url.Values) string {
	t.Helper()
	resp, err := http.PostForm(address, form)
	require.NoError(t, err)
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	require.Equal(t, http.StatusOK, resp.StatusCode, string(body))
	return string(body)
}

func TestServeErrorsSayWhatToDo(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	defer taken.Close()
	dir := t.TempDir()
	address, _ := served(t, "-data", dir, "-listen", "127.0.0.1:0")
	file := filepath.Join(dir, "file")
	require.NoError(t, os.WriteFile(file, nil, 0o600))
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"-data", dir, "-listen", "127.0.0.1:0"}, address},
		{[]string{"-data", file, "-listen", "127.0.0.1:0"}, "is a file"},
		{[]string{"serve", "-listen", taken.Addr().String()}, "is in use"},
		{[]string{"-listen", "0.0.0.0:0"}, "use 127.0.0.1:0"},
		{[]string{"-listen", "nowhere"}, "HOST:PORT"},
		{[]string{"serve", "plan.json"}, "ramplan eval PLAN.json"},
		{[]string{"-port", "1"}, "flag provided but not defined"},
	} {
		status, out, errs := command(t, "", c.args...)
		assert.Equal(t, 2, status, c.args)
		assert.Empty(t, out)
		assert.Contains(t, errs, c.want)
	}
	status, _, errs := command(t, "", "serve", "-help")
	assert.Equal(t, 0, status)
	assert.Contains(t, errs, "-listen")
}
