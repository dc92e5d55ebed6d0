package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const pivotPin, rainLid = "../../static/examples/pivot-pin.json", "../../static/examples/rain-gauge-lid.json"

// The same bytes come out on any number of cores.
func TestSimulateSameBytes(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	for _, args := range [][]string{
		{"simulate", "-parts", "3e5", "-seed", "7", "-json", examplePlan},
		{"simulate", "-parts", "100001", examplePlan, pivotPin, rainLid},
	} {
		var want string
		for _, cores := range []int{1, 2, 4} {
			runtime.GOMAXPROCS(cores)
			status, out, errs := command(t, "", args...)
			require.Zero(t, status, errs)
			require.Empty(t, errs, "nobody watches a pipe")
			if want == "" {
				want = out
			}
			require.Equal(t, want, out, "%d cores", cores)
		}
	}
}

func TestSimulateJSON(t *testing.T) {
	status, out, errs := command(t, "", "simulate", "-json", "-parts", "1e5", "-precision", "0.5", examplePlan)
	require.Zero(t, status, errs)
	all := lines(t, out)
	require.Len(t, all, 1, "one object on one line")
	d := all[0]
	assert.Equal(t, "ramplan.simulation/1", d["format"])
	assert.NotContains(t, d, "file")
	assert.EqualValues(t, 1e5, d["parts"])
	assert.EqualValues(t, 1, d["seed"])
	assert.EqualValues(t, 0.5, d["precision"])
	assert.Equal(t, true, d["complete"])
	for _, key := range []string{"plan_digest", "verdicts", "matrix", "counted", "shares", "readings", "closed_form", "bad_lot", "worst_day", "says"} {
		assert.NotNil(t, d[key], key)
	}

	// Another order prints another order; each object says of which file it is.
	status, out, _ = command(t, "", "simulate", "-json", "-parts", "1000", rainLid, examplePlan, pivotPin)
	assert.Zero(t, status)
	all = lines(t, out)
	require.Len(t, all, 3)
	for i, name := range []string{rainLid, examplePlan, pivotPin} {
		assert.Equal(t, name, all[i]["file"])
	}
}

func TestSimulateStatuses(t *testing.T) {
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	status, out, errs := command(t, string(data), "simulate", "-parts", "1000", "-json", "-")
	assert.Zero(t, status, errs)
	assert.Len(t, lines(t, out), 1)

	status, _, _ = command(t, "", "simulate", "-parts", "1000", blockedPlan(t))
	assert.Zero(t, status, "simulating is no judgement")

	status, out, errs = command(t, "", "simulate", "-parts", "1000", "-json", examplePlan, "nowhere.json", "../../testdata/plans/bad/many-at-once.json", pivotPin)
	assert.Equal(t, 2, status)
	assert.Len(t, lines(t, out), 2, "the sound ones are still printed")
	assert.Contains(t, errs, "nowhere.json: no such file")

	for flag, texts := range map[string][]string{
		"-parts":     {"0", "1.5", "-3", "1e13", "many", "NaN", ""},
		"-seed":      {"-1", "1.5", "18446744073709551616", ""},
		"-precision": {"0", "0.0009", "2", "NaN", ""},
	} {
		for _, text := range texts {
			status, out, errs := command(t, "", "simulate", flag, text, examplePlan)
			assert.Equal(t, 2, status, "%s %s", flag, text)
			assert.Empty(t, out)
			assert.NotEmpty(t, errs)
		}
	}
	for _, args := range [][]string{{"simulate"}, {"simulate", examplePlan, "-json"}, {"simulate", "-wat", examplePlan}, {"simulate", "-seed", "1", "-seed", "2", examplePlan}} {
		status, _, errs := command(t, "", args...)
		assert.Equal(t, 2, status, args)
		assert.NotEmpty(t, errs)
	}
	status, _, _ = command(t, "", "simulate", "-parts", "1", "-seed", "18446744073709551615", "-precision", "1", rainLid)
	assert.Zero(t, status, "ends of the ranges")
}

// A travel that is negative leaves nothing to simulate, and is no fault of the command.
func TestSimulateNothingToPressIn(t *testing.T) {
	plan := "../../testdata/plans/derived/travel-negative.json"
	status, out, errs := command(t, "", "simulate", "-json", plan)
	assert.Zero(t, status, errs)
	d := lines(t, out)[0]
	for _, key := range []string{"verdicts", "matrix", "counted", "shares", "readings", "bad_lot", "worst_day"} {
		assert.Nil(t, d[key], key)
		assert.Contains(t, d, key)
	}
	status, out, _ = command(t, "", "simulate", plan)
	assert.Zero(t, status)
	assert.Contains(t, out, "Nothing could be pressed in")
}

// Interrupted, it prints what is there, and says so by its status.
func TestSimulateInterrupted(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	var out, errs bytes.Buffer
	time.AfterFunc(time.Second, stop)
	status := run(ctx, []string{"simulate", "-json", "-parts", "1e12", examplePlan, pivotPin}, strings.NewReader(""), &out, &errs)
	assert.Equal(t, 130, status)
	assert.Contains(t, errs.String(), "stopped")
	for line := range strings.Lines(out.String()) {
		var d map[string]any
		require.NoError(t, json.Unmarshal([]byte(line), &d))
		assert.Equal(t, false, d["complete"])
		assert.Less(t, d["parts"].(float64), 1e12)
		assert.Zero(t, int64(d["parts"].(float64))%65536, "whole blocks")
	}
}

// The tables for people say what stands in the JSON.
func TestSimulateText(t *testing.T) {
	status, out, errs := command(t, "", "simulate", "-parts", "200000", examplePlan)
	require.Zero(t, status, errs)
	for _, text := range []string{"Bearing sleeve into anemometer hub", "200\u202f000 parts counted, seed 1", "both signals", "met early", "False accept", "Wrong heights accepted",
		"A bad lot", "95\u202f%", "Chips, tilt, damage"} {
		assert.Contains(t, out, text)
	}
	name := filepath.Join(t.TempDir(), "a.json")
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(name, data, 0o600))
	_, out, _ = command(t, "", "simulate", "-parts", "1", name, rainLid)
	assert.Contains(t, out, name+": Bearing sleeve")
}
