package web

import (
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/archive"
	"ramplan/press/issue"
	"ramplan/press/proving"
	"ramplan/static"
)

const masterJSON = `{"format": "ramplan.study/1", "kind": "master", "taken_at": "2026-11-22", "height": 40, "rows": [{"reading": 100.137}, {"reading": 100.141}]}`

// A program posts a study as JSON or as a table and reads it back digest for digest; posted
// twice it is one. It waits for a person; an event counts at once, under a name.
func TestStudiesOfPrograms(t *testing.T) {
	store := exampleArchive(t)
	srv := httptest.NewServer(New(store))
	t.Cleanup(srv.Close)
	post := func(path, kind, body string) (*http.Response, string) {
		t.Helper()
		return requested(t, srv.URL, "POST", path, []string{jsonWanted, "Content-Type: " + kind}, []byte(body))
	}
	get := func(path string) (*http.Response, string) {
		t.Helper()
		return requested(t, srv.URL, "GET", path, []string{jsonWanted}, nil)
	}
	study, faults := proving.Decode([]byte(masterJSON))
	require.Empty(t, faults)
	for _, c := range [][2]string{{"application/json", masterJSON}, {"application/json; charset=utf-8", " " + masterJSON}, {"text/csv", string(study.CSV())}, {"text/plain", masterJSON}, {"application/octet-stream", string(study.CSV())}} {
		resp, body := post("/plans/1/studies?by=logger", c[0], c[1])
		require.Equal(t, http.StatusCreated, resp.StatusCode, "%s: %s", c[0], body)
		assert.Equal(t, "/plans/1/studies/1.json", resp.Header.Get("Location"), "the same study is kept once")
	}
	resp, body := get("/plans/1/studies/1.json")
	assert.Equal(t, `application/json; format="ramplan.study/1"`, resp.Header.Get("Content-Type"))
	again, faults := proving.Decode([]byte(body))
	require.Empty(t, faults)
	assert.Equal(t, study.Digest(), again.Digest())
	_, body = get("/plans/1/studies/1.csv")
	table, lines := proving.ReadCSV([]byte(body))
	require.True(t, lines.Sound())
	assert.Equal(t, study.Digest(), table.Digest())

	event := `{"format": "ramplan.study/1", "kind": "event", "taken_at": "2026-11-23", "event": "crash"}`
	resp, body = post("/plans/1/studies", "application/json", event)
	assert.Equal(t, http.StatusUnprocessableEntity, resp.StatusCode)
	assert.Contains(t, body, "A signature needs a name")
	resp, _ = post("/plans/1/studies?by=press+2", "application/json", event)
	assert.Equal(t, http.StatusCreated, resp.StatusCode)

	k, err := store.StartStudy(t.Context(), 1, proving.Master, proving.NewTyped(proving.Master))
	require.NoError(t, err)
	resp, body = get("/plans/1/studies/3.json")
	assert.Equal(t, http.StatusUnprocessableEntity, resp.StatusCode, "half typed")
	assert.Contains(t, body, `"path":"taken_at"`)
	_, err = store.SaveStudy(t.Context(), 1, k.ID, 1, study.Typed())
	require.NoError(t, err)
	_, body = get("/plans/1/studies/3.json")
	assert.Contains(t, body, "100.137")

	var list struct {
		Studies []listedStudy `json:"studies"`
	}
	_, body = get("/plans/1/studies")
	require.NoError(t, json.Unmarshal([]byte(body), &list))
	require.Len(t, list.Studies, 3)
	assert.Equal(t, []bool{true, true, false}, []bool{list.Studies[0].Posted, list.Studies[1].Posted, list.Studies[2].Posted})
	assert.Equal(t, []bool{false, true, false}, []bool{list.Studies[0].Counts, list.Studies[1].Counts, list.Studies[2].Counts})
	assert.Equal(t, study.Digest(), *list.Studies[0].Digest)
	assert.Equal(t, "press 2", *list.Studies[1].SignedBy)
	assert.Equal(t, "2026-11-22", *list.Studies[2].TakenAt)

	resp, _ = requested(t, srv.URL, "GET", "/plans/1/studies", []string{"Accept: text/html"}, nil)
	assert.Equal(t, "/plans/1/proving", resp.Header.Get("Location"), "people have a page")
	for path, status := range map[string]int{"/plans/1/studies/1.pdf": 404, "/plans/1/studies/9.json": 404, "/plans/1/studies/x.json": 404, "/plans/77/studies": 404, "/plans/77/studies/1.json": 404, "/plans/77/assessment": 404} {
		resp, _ := get(path)
		assert.Equal(t, status, resp.StatusCode, path)
	}
	resp, _ = post("/plans/77/studies?by=x", "application/json", event)
	assert.Equal(t, http.StatusNotFound, resp.StatusCode)
}

// What cannot be kept is refused with every fault: of JSON by its path, of a table by its line.
func TestStudiesRefused(t *testing.T) {
	srv := httptest.NewServer(example(t))
	t.Cleanup(srv.Close)
	type fault struct {
		Path, Code, Message string
		Line                int
	}
	for name, c := range map[string]struct {
		kind, body string
		status     int
		want       []fault
	}{
		"two cells":    {"application/json", strings.NewReplacer("100.137", `"x"`, "100.141", "null").Replace(masterJSON), 422, []fault{{Path: "rows[0].reading"}, {Path: "rows[1].reading"}}},
		"another kind": {"application/json", strings.Replace(masterJSON, "master", "party", 1), 422, []fault{{Path: "kind"}}},
		"a plan":       {"application/json", string(static.Example()), 422, []fault{{Path: "format"}}},
		"no JSON":      {"application/json", "reading\n1\n", 422, []fault{{}}},
		"two lines":    {"text/csv", "# kind: master\n# height: 4o\nreading\n1\nx\n2\n", 422, []fault{{Path: "height", Line: 2}, {Path: "taken_at", Line: 3}, {Path: "reading", Line: 5}}},
		"nothing":      {"", "", 422, nil},
		"too much":     {"text/csv", strings.Repeat("#\n", 2<<20) + "\n", 413, []fault{{Line: 1}}},
		"a form":       {"application/x-www-form-urlencoded", "a=b", 415, nil},
	} {
		header := []string{jsonWanted}
		if c.kind != "" {
			header = append(header, "Content-Type: "+c.kind)
		}
		resp, body := requested(t, srv.URL, "POST", "/plans/1/studies", header, []byte(c.body))
		require.Equal(t, c.status, resp.StatusCode, "%s: %s", name, body)
		assert.Equal(t, "application/problem+json", resp.Header.Get("Content-Type"), name)
		var p struct{ Errors []fault }
		require.NoError(t, json.Unmarshal([]byte(body), &p), name)
		if c.want == nil {
			continue
		}
		require.Len(t, p.Errors, len(c.want), "%s: %s", name, body)
		for i, f := range p.Errors {
			assert.NotEmpty(t, f.Code, name)
			assert.NotEmpty(t, f.Message, name)
			f.Code, f.Message = "", ""
			assert.Equal(t, c.want[i], f, name)
		}
	}
	resp, _ := requested(t, srv.URL, "POST", "/plans/1/studies", []string{"Content-Type: text/csv", "Origin: http://elsewhere.example"}, []byte(masterTable))
	assert.Equal(t, http.StatusForbidden, resp.StatusCode, "a page of another site posts nothing")
	_, body := requested(t, srv.URL, "GET", "/plans/1/studies", []string{jsonWanted}, nil)
	assert.JSONEq(t, `{"studies": []}`, body)
}

// The assessment is of the newest revision, of the one that is named, or of the draft; on the
// day asked, by the signed studies alone.
func TestAssessmentForPrograms(t *testing.T) {
	store := exampleArchive(t)
	srv := httptest.NewServer(New(store))
	t.Cleanup(srv.Close)
	type assessment struct {
		PlanDigest string `json:"plan_digest"`
		On         string
		Studies    []struct {
			Verdict  string
			Findings []struct{ Message string }
		}
		Proved struct{ State string }
	}
	ask := func(query string, status int) assessment {
		t.Helper()
		resp, body := requested(t, srv.URL, "GET", "/plans/1/assessment"+query, nil, nil)
		require.Equal(t, status, resp.StatusCode, body)
		var a assessment
		require.NoError(t, json.Unmarshal([]byte(body), &a))
		return a
	}
	head, err := store.Get(t.Context(), 1)
	require.NoError(t, err)
	rev, err := store.Issue(t.Context(), 1, archive.At(head.Version), issue.Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "First issue", Despite: "a trial", Second: "D"})
	require.NoError(t, err)
	head, err = store.Get(t.Context(), 1)
	require.NoError(t, err)
	head.Draft.Set("station.nest", "14o")
	_, err = store.Save(t.Context(), 1, archive.At(head.Version), head.Draft, "")
	require.NoError(t, err)
	study, faults := proving.Decode([]byte(masterJSON))
	require.Empty(t, faults)
	k, err := store.PostStudy(t.Context(), 1, study, "logger")
	require.NoError(t, err)

	a := ask("?on=2026-11-28", 200)
	assert.Equal(t, rev.PlanDigest, a.PlanDigest)
	assert.Equal(t, "2026-11-28", a.On)
	assert.Empty(t, a.Studies, "nobody signed it")
	_, err = store.SignStudy(t.Context(), 1, k.ID, 1, "P. Rill")
	require.NoError(t, err)
	a = ask("?on=2026-11-28&of=A", 200)
	require.Len(t, a.Studies, 1)
	assert.Equal(t, "open", a.Studies[0].Verdict, "two pushes are too few")
	assert.Equal(t, "not_proved", a.Proved.State)
	for _, f := range a.Studies[0].Findings {
		assert.NotEmpty(t, f.Message)
	}
	assert.NotEmpty(t, ask("", 200).On)
	ask("?of=B", 404)
	ask("?of=draft", 422)
	ask("?on=28.11.2026", 422)
}
