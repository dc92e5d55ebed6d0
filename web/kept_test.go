package web

import (
	"database/sql"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestTwoWindows changes one plan in two windows: nothing is overwritten, both
// sides are shown entry by entry, and what is chosen is saved.
func TestTwoWindows(t *testing.T) {
	one := start(t)
	two := one.get(benchPath)
	one.typeIn("station.nest", "141")
	one.typeIn("title.owner", "first window")
	require.Equal(t, http.StatusOK, one.press("recompute").status)

	two.typeIn("title.owner", "second window")
	two.typeIn("title.number", "WS-299")
	two = two.press("recompute")
	require.Equal(t, http.StatusConflict, two.status)
	assert.Contains(t, text(two.byID("state")), "Not saved")
	owner, _ := two.value("title.owner")
	assert.Equal(t, "second window", owner, "what was typed stays")
	stored, _ := one.get(benchPath).value("title.owner")
	assert.Equal(t, "first window", stored)

	choice := two.press("choose")
	require.Equal(t, http.StatusOK, choice.status)
	for _, shown := range []string{"first window", "second window", "WS-210", "WS-299", "140", "141"} {
		assert.Contains(t, text(choice.byID("main")), shown)
	}
	var picked []input
	for _, in := range choice.inputs {
		if !strings.HasPrefix(in.name, ":pick ") {
			picked = append(picked, in)
		}
	}
	choice.inputs = append(picked, input{":pick title.owner", "theirs"}, input{":pick title.number", "mine"}, input{":pick station.nest", "theirs"})
	after := choice.send("/plans/1/choice", "picked", nil)
	require.Equal(t, http.StatusOK, after.status)
	for path, want := range map[string]string{"title.owner": "first window", "title.number": "WS-299", "station.nest": "141"} {
		got, _ := after.value(path)
		assert.Equal(t, want, got, path)
	}
	again := choice.send("/plans/1/choice", "mine", nil)
	assert.Contains(t, text(again.byID("main")), "changed once more", "the choice was made on an older state")
}

// TestStepsBack undoes, redoes and brings back a state from the history.
func TestStepsBack(t *testing.T) {
	s := start(t)
	for _, owner := range []string{"a", "b"} {
		s.typeIn("title.owner", owner)
		s.typeIn("title.prepared_by", owner) // two entries: each is a state of its own
		s = s.press("recompute")
	}
	value := func(s *sheet) string { v, _ := s.value("title.owner"); return v }
	s = s.press("undo")
	assert.Equal(t, "a", value(s))
	s = s.press("undo")
	assert.Equal(t, "", value(s))
	assert.True(t, has(s.byID("undo"), "disabled"))
	s = s.press("redo").press("redo")
	assert.Equal(t, "b", value(s))
	assert.True(t, has(s.byID("redo"), "disabled"))

	h := s.press("go history")
	require.Equal(t, "/plans/1/history", h.path)
	assert.Len(t, elements(h.byID("main"), "li"), 3+4, "three states, two of them with two changes")
	back := h.send("/plans/1/history", "restore 2", nil)
	assert.Equal(t, benchPath, back.path)
	assert.Equal(t, "a", value(back))
	assert.Contains(t, text(back.get("/plans/1/history").byID("state-4")), "State 2 brought back")
	assert.Equal(t, http.StatusConflict, h.send("/plans/1/history", "restore 1", nil).status, "an older page changes nothing")
}

// issued fills in the form of the revisions and sends it.
func issued(s *sheet, version string, signed map[string]string) *sheet {
	s.inputs = []input{{":version", version}}
	for path, value := range signed {
		s.inputs = append(s.inputs, input{":signed issue." + path, value})
	}
	return s.send("/plans/1/revisions", "issue", nil)
}

func version(s *sheet) string { v, _ := s.value(":version"); return v }

// TestIssueRevisions issues A and B, and compares them.
func TestIssueRevisions(t *testing.T) {
	s := start(t)
	page := s.get("/plans/1/revisions")
	assert.Contains(t, text(page.byID("issue-h")), "revision A")
	refused := issued(page, "1", map[string]string{"prepared": "P. Prepared"})
	assert.Equal(t, http.StatusUnprocessableEntity, refused.status)
	assert.Contains(t, text(refused.byID("issue-checked-n")), "who checked it is needed")
	kept, _ := refused.value(":signed issue.prepared")
	assert.Equal(t, "P. Prepared", kept)

	names := map[string]string{"prepared": "P. Prepared", "checked": "C. Checked", "approved": "A. Approved", "reason": "First issue"}
	page = issued(refused, "1", names)
	require.Equal(t, http.StatusOK, page.status)
	assert.Contains(t, text(page.byID("revision-A")), "C. Checked")
	assert.Contains(t, text(page.byID("issue")), "nothing new to issue")
	names["reason"] = "What the other window says"
	twice := issued(refused, "1", names)
	assert.Equal(t, http.StatusUnprocessableEntity, twice.status)
	assert.Contains(t, text(twice.byID("issue")), "This very plan is issued already, as revision A; nothing was issued a second time.")
	assert.Nil(t, twice.byID("revision-B"))

	s.typeIn("station.nest", "141")
	s = s.press("recompute")
	names["reason"] = "Nest set anew"
	page = s.get("/plans/1/revisions")
	assert.Contains(t, text(page.byID("issue")), "The four pairs of lamps mean what they meant there")
	assert.Contains(t, text(page.byID("issue")), "Changed since revision A, and asked about in the drill: zone start 115.08\u202fmm → 116.08\u202fmm;", "the nest is 1 mm lower")
	page = issued(page, version(s), names)
	assert.Equal(t, http.StatusUnprocessableEntity, page.status)
	assert.Contains(t, text(page.byID("issue-drill-n")), "say whether the change concerns the drill")
	names["drill"] = "same"
	page = issued(page, version(s), names)
	require.NotNil(t, page.byID("revision-B"))
	assert.Contains(t, text(page.byID("revision-B")), "who passed on the revision before stays trained")

	a := s.get("/plans/1/revisions/A")
	require.Equal(t, http.StatusOK, a.status)
	assert.Contains(t, text(a.byID("setpoints")), "115.08", "A stands as it was issued")
	compared := s.get("/plans/1/compared?from=A&to=B")
	body := text(compared.byID("main"))
	for _, want := range []string{"Station: nest", "140", "141", "115.08", "116.08", "Limit samples:", "Worn nest"} {
		assert.Contains(t, body, want)
	}
	assert.Equal(t, http.StatusNotFound, s.get("/plans/1/compared?from=Q").status)
	assert.Equal(t, http.StatusNotFound, s.get("/plans/1/revisions/C").status)
	assert.Contains(t, text(s.get("/").byID("cards")), "Revision B")
}

// TestBlockedIsNotIssued: with a physical blocker never, with another one only
// with a reason and a second name.
func TestBlockedIsNotIssued(t *testing.T) {
	s := start(t)
	s.typeIn("motion.approach_speed", "500")
	s = s.press("recompute")
	page := s.get("/plans/1/revisions")
	assert.Contains(t, text(page.byID("issue")), "no plan is issued, whoever signs")
	names := map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "R", "despite": "D", "second": "S"}
	assert.Equal(t, http.StatusUnprocessableEntity, issued(page, version(s), names).status)

	s = s.press("undo")
	s.typeIn("requirement.height_high", "24.951") // no acceptance range is left
	s = s.press("recompute")
	page = s.get("/plans/1/revisions")
	require.NotNil(t, page.byID("issue-despite"))
	names["second"] = "A"
	refused := issued(page, version(s), names)
	assert.Contains(t, text(refused.byID("issue-second-n")), "another one than who approved it")
	names["second"] = "S"
	page = issued(refused, version(s), names)
	require.Equal(t, http.StatusOK, page.status)
	assert.Contains(t, text(page.byID("revision-A")), "With blockers because")
}

// TestShelf copies, bins, takes out, searches and sorts.
func TestShelf(t *testing.T) {
	s := start(t)
	copied := s.send("/plans/1/shelved", "copy", nil)
	require.Equal(t, "/plans/2", copied.path)
	name, _ := copied.value("title.name")
	assert.Equal(t, "Bearing sleeve into anemometer hub (copy)", name)

	shelf := copied.press("bin")
	assert.Equal(t, "/", shelf.path)
	assert.Contains(t, text(shelf.byID("main")), "is in the bin")
	assert.NotContains(t, text(shelf.byID("cards")), "(copy)")
	assert.Contains(t, text(s.get("/bin").byID("cards")), "(copy)")
	assert.Contains(t, text(s.get("/plans/2").byID("lead")), "This plan is in the bin")
	assert.Equal(t, "/plans/2", s.send("/plans/2/shelved", "unbin", nil).path)
	assert.Contains(t, text(s.get("/").byID("cards")), "(copy)")

	for q, want := range map[string]int{"anemo": 2, "copy": 1, "WS-210": 2, "sleeve hub": 2, "nothing like it": 0, `"*(`: 2} {
		found := s.get("/?q=" + url.QueryEscape(q))
		assert.Len(t, elements(found.byID("cards"), "h2"), want, q)
	}
	s.get("/plans/2").press("bin")
	require.Equal(t, http.StatusOK, s.send("/bin", "empty", nil).status)
	assert.Equal(t, http.StatusNotFound, s.get("/plans/2").status)
	assert.Equal(t, http.StatusOK, s.get("/plans/1").status)
}

// TestDamagedDraft overwrites a stored draft from outside: it is never shown as
// if it were sound, and the newest good state is brought back.
func TestDamagedDraft(t *testing.T) {
	a := exampleArchive(t)
	srv := httptest.NewServer(New(a))
	defer srv.Close()
	s := (&sheet{t: t, base: srv.URL}).get(benchPath)
	s.typeIn("title.owner", "whole")
	s.typeIn("title.number", "WS-7")
	s = s.press("recompute")
	db, err := sql.Open("sqlite", a.Path())
	require.NoError(t, err)
	_, err = db.Exec("update state set body = cast(replace(cast(body as text), 'whole', 'while') as blob) where n = 2")
	require.NoError(t, err)
	require.NoError(t, db.Close())

	damaged := s.get(benchPath)
	assert.Equal(t, http.StatusInternalServerError, damaged.status)
	assert.Contains(t, text(damaged.byID("main")), "does not match its digest")
	assert.Contains(t, text(s.get("/").byID("cards")), "damaged")
	assert.Contains(t, text(s.get("/plans/1/history").byID("state-2")), "Damaged")
	back := damaged.send("/plans/1/history", "restore 1", nil)
	require.Equal(t, http.StatusOK, back.status)
	number, _ := back.value("title.number")
	assert.Equal(t, "WS-210", number)
}

// TestFolderIsGone removes the archive under the program: the page says so and
// keeps what was typed, and saves it when the folder is back.
func TestFolderIsGone(t *testing.T) {
	a := exampleArchive(t)
	srv := httptest.NewServer(New(a))
	defer srv.Close()
	s := (&sheet{t: t, base: srv.URL}).get(benchPath)
	folder := filepath.Dir(a.Path())
	require.NoError(t, os.Rename(folder, folder+"-away"))
	s.typeIn("station.nest", "141")
	lost := s.press("recompute")
	assert.Equal(t, http.StatusServiceUnavailable, lost.status)
	assert.Contains(t, text(lost.byID("state")), "What you typed is kept in this page")
	assert.Contains(t, text(lost.byID("setpoints")), "116.08", "it is computed all the same")
	require.NoError(t, os.Rename(folder+"-away", folder))
	again := lost.press("recompute")
	require.Equal(t, http.StatusOK, again.status)
	assert.Contains(t, text(again.byID("state")), "Saved.")
	nest, _ := s.get(benchPath).value("station.nest")
	assert.Equal(t, "141", nest)
}
