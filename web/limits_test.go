package web

import (
	"bytes"
	"fmt"
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

func TestBodyLimits(t *testing.T) {
	s := start(t)
	post := func(kind string, body []byte) int {
		resp, err := http.Post(s.base+s.path, kind, bytes.NewReader(body))
		require.NoError(t, err)
		defer resp.Body.Close()
		return resp.StatusCode
	}
	long := bytes.Repeat([]byte("x"), maxBody+1)
	assert.Equal(t, 413, post(formType, append([]byte("title.name="), long...)))
	assert.Equal(t, 413, post("multipart/form-data; boundary=b", append([]byte("--b\r\nContent-Disposition: form-data; name=\"title.name\"\r\n\r\n"), long...)))
	assert.Equal(t, 400, post("text/plain", []byte("x")))
	assert.Equal(t, 400, post("", nil))
	assert.Equal(t, 400, post("multipart/form-data", nil))
	assert.Equal(t, 400, post("multipart/form-data; boundary=b", []byte("--b\r\nbroken")))
	assert.Equal(t, 400, post(formType, []byte("a=%zz")))
	assert.Equal(t, 400, post(formType, []byte(":do=nonsense")))
	assert.Equal(t, 400, post(formType, bytes.Repeat([]byte("a=b&"), maxInputs+1)))
	assert.Equal(t, 409, post(formType, nil), "a form that names no version changes nothing")
}

// TestLargeFile opens a file over the 4 MiB of a plan: it is refused by name.
func TestLargeFile(t *testing.T) {
	s := start(t)
	s = s.open("large.json", bytes.Repeat([]byte(" "), press.MaxBytes+1))
	assert.Equal(t, 422, s.status)
	assert.Contains(t, text(s.byID("main")), "large.json was not opened")
	assert.Contains(t, text(s.byID("main")), "4 MiB")
}

// TestForeignFile: a file of another kind is named as that before anything else; a
// plan with a fault in it is told what it lacks.
func TestForeignFile(t *testing.T) {
	const neither = "neither a plan nor a sheet with a plan inside"
	for name, c := range map[string]struct {
		data    string
		foreign bool
		also    string
	}{
		"notes.txt":    {"# notes\n10;200\n", true, "not JSON at line 1"},
		"empty.json":   {"", true, ""},
		"other.json":   {`{"name": "something else"}`, true, "format"},
		"list.json":    {`[1, 2]`, true, ""},
		"broken.json":  {`{"format": "ramplan.plan/1", "title": {"name": "a",}}`, false, "not JSON"},
		"lacking.json": {`{"format": "ramplan.plan/1"}`, false, "title.name"},
		"emptied.svg":  {`<svg xmlns="http://www.w3.org/2000/svg"/>`, true, "may have left the plan out"},
	} {
		s := start(t).open(name, []byte(c.data))
		assert.Equal(t, 422, s.status, name)
		said := text(s.byID("main"))
		assert.Contains(t, said, name+" was not opened", name)
		assert.Equal(t, c.foreign, strings.Contains(said, neither), "%s: %s", name, said)
		assert.Contains(t, said, c.also, name)
	}
}

// TestLongestPlan opens a plan with as many rows as there may be: more inputs
// than the ready-made form reader takes.
func TestLongestPlan(t *testing.T) {
	var points, parts strings.Builder
	for i := range 493 { // beside the seven there are
		fmt.Fprintf(&points, ", [%d, %d]", 71+i, 2621+i)
	}
	for range 197 { // beside the three
		parts.WriteString(`, {"name": "shim", "nominal": 0, "minus": 0, "plus": 0.0001, "contact": 0, "seat": 0, "datum": false}`)
	}
	plan := string(edited(t, "2620\n    ]", "2620\n    ]"+points.String()))
	plan = strings.Replace(plan, "  }\n ],\n \"joint\"", "  }"+parts.String()+"\n ],\n \"joint\"", 1)
	p, faults := press.Decode([]byte(plan))
	require.Empty(t, faults)
	require.Len(t, p.Parts, 200)
	require.Len(t, p.Ram.Curve.Points, 500)
	s := start(t).open("long.json", []byte(plan))
	require.Equal(t, 200, s.status)
	s = s.press("recompute").sendEncoded("recompute")
	require.Equal(t, 200, s.status)
	saved, faults := press.Decode(s.save())
	require.Empty(t, faults)
	assert.Equal(t, p.Digest(), saved.Digest())
}
