package web

import (
	"net/http"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
)

// signing are the names under which the tests issue.
func signing(reason string) map[string]string {
	return map[string]string{"prepared": "P. Prepared", "checked": "C. Checked", "approved": "A. Approved", "reason": reason}
}

// retype types every figure with a decimal comma and, where there is one, the
// unit of its field.
func (s *sheet) retype(units map[string]string) {
	for i, in := range s.inputs {
		if unit, wanted := units[in.name]; wanted {
			text := []rune(in.value)
			for k, r := range text {
				if r == '.' {
					text[k] = ','
				}
			}
			s.inputs[i].value = string(text) + unit
		}
	}
}

// TestComparedByMeaning: a plan typed with decimal commas and units is the same
// plan; only the clearance is told.
func TestComparedByMeaning(t *testing.T) {
	s := start(t)
	s.retype(map[string]string{"ram.moving_mass": "", "ram.stroke": " mm", "station.stiffness": " N/mm", "requirement.height_high": "", "requirement.height_low": " mm", "parts[0].minus": " mm", "parts[0].plus": ""})
	mass, _ := s.value("ram.moving_mass")
	require.Equal(t, "2,4", mass)
	s = s.press("recompute")
	require.Equal(t, http.StatusOK, s.status)
	require.NotNil(t, issued(s.get("/plans/1/revisions"), version(s), signing("First issue")).byID("revision-A"))
	assert.Contains(t, text(s.get("/plans/1/compared?from=A&to=draft").byID("main")), "Every entry is the same.")

	s.typeIn("motion.clearance", "0,8")
	require.Equal(t, http.StatusOK, s.press("recompute").status)
	c := s.get("/plans/1/compared?from=A&to=draft")
	entries := bodyRows(c.byID("entries"))
	require.Len(t, entries, 1)
	assert.Contains(t, entries[0], "Motion: clearance")
	assert.Contains(t, entries[0], "0.8\u202fmm", "as read, with its unit")
	assert.Contains(t, text(c.byID("main")), "Revision A compared with the draft")
	assert.NotEmpty(t, bodyRows(c.byID("differing")), "the figures that differ stand open")
	same := c.byID("same")
	require.NotNil(t, same)
	assert.Equal(t, "details", same.Data)
	assert.False(t, has(same, "open"))
	assert.Greater(t, len(bodyRows(same)), len(bodyRows(c.byID("differing"))))

	assert.Contains(t, text(s.get("/plans/1/history").byID("state-2")), "same entries, written otherwise")
}

// bodyRows are the texts of the rows of a table's body.
func bodyRows(n *html.Node) []string {
	var out []string
	for _, b := range elements(n, "tbody") {
		for _, r := range elements(b, "tr") {
			out = append(out, text(r))
		}
	}
	return out
}

// TestHistoryInWords: rows, boxes and issues are told in words, and each state
// can be looked at before it is brought back.
func TestHistoryInWords(t *testing.T) {
	s := start(t)
	issued(s.get("/plans/1/revisions"), "1", signing("First issue"))
	s = s.press("add parts")
	state := func(n string) string { return text(s.get("/plans/1/history").byID("state-" + n)) }
	assert.Contains(t, state("1"), "Revision A was issued here")
	assert.Contains(t, state("2"), "added")
	assert.NotContains(t, state("2"), "{}")
	s = s.press("undo")
	s.tick("parts[0].insert")
	s.typeIn("parts[0].minus", "0,06")
	s = s.press("recompute")
	name, _ := s.value("parts[0].name")
	told := state("3")
	for _, want := range []string{name + " (part 1): insert", "not ticked", "ticked", name + " (part 1): minus", "0.06\u202fmm"} {
		assert.Contains(t, told, want)
	}
	assert.NotContains(t, told, "true")

	h := s.get("/plans/1/history")
	var link string
	for _, a := range elements(h.byID("state-1"), "a") {
		if to := attr(a, "href"); to != "/plans/1/revisions/A" {
			link = to
		}
	}
	require.Equal(t, "/plans/1/compared?from=draft&to=state-1", link)
	c := h.get(link)
	require.Equal(t, http.StatusOK, c.status)
	assert.Contains(t, text(c.byID("main")), "The draft compared with state 1")
	back := c.send("/plans/1/history", "restore 1", nil)
	require.Equal(t, benchPath, back.path)
	assert.Equal(t, http.StatusNotFound, s.get("/plans/1/compared?from=draft&to=state-77").status)
	assert.Equal(t, http.StatusNotFound, s.get("/plans/1/compared?from=draft&to=state-x").status)
}

// TestStartAgainFromRevision brings an issued plan into the draft as one state,
// which is undone like any other.
func TestStartAgainFromRevision(t *testing.T) {
	s := start(t)
	page := issued(s.get("/plans/1/revisions"), "1", signing("First issue"))
	assert.Contains(t, text(page.byID("main")), "Revision A was issued.")
	assert.NotContains(t, text(s.get("/plans/1/revisions").byID("main")), "Revision A was issued.")
	a := s.get("/plans/1/revisions/A")
	assert.Contains(t, text(a.byID("main")), "The draft is this revision")
	var to []string
	for _, l := range elements(a.byID("main"), "a") {
		to = append(to, attr(l, "href"))
	}
	assert.Contains(t, to, "/plans/1/sheet?revision=A")
	assert.Contains(t, to, "/plans/1/drill?revision=A")
	for _, at := range []string{"/plans/1/sheet?revision=A", "/plans/1/drill?revision=A"} {
		assert.Equal(t, http.StatusOK, s.get(at).status, at)
	}

	s.typeIn("station.nest", "141")
	s.typeIn("title.owner", "another")
	s = s.press("recompute")
	a = s.get("/plans/1/revisions/A")
	old := s.get("/plans/1/revisions/A")
	again := a.send("/plans/1/revisions/A", "draft", nil)
	require.Equal(t, benchPath, again.path)
	nest, _ := again.value("station.nest")
	assert.Equal(t, "140", nest)
	assert.Contains(t, text(again.get("/plans/1/history").byID("state-3")), "Started again from revision A")
	nest, _ = again.press("undo").value("station.nest")
	assert.Equal(t, "141", nest)
	assert.Equal(t, http.StatusConflict, old.send("/plans/1/revisions/A", "draft", nil).status, "an older page changes nothing")
	assert.Equal(t, http.StatusNotFound, again.send("/plans/1/revisions/C", "draft", nil).status)
	assert.Equal(t, http.StatusBadRequest, again.send("/plans/1/revisions/A", "nothing", nil).status)
}

// TestIssueFormRemarks: blockers lead to their fields, and one name for all three
// is remarked upon and not refused.
func TestIssueFormRemarks(t *testing.T) {
	s := start(t)
	for _, who := range []string{"prepared_by", "checked_by", "approved_by"} {
		s.typeIn("title."+who, "E. Engineer")
	}
	s = s.press("recompute")
	page := s.get("/plans/1/revisions")
	require.NotNil(t, page.byID("onename"))
	names := map[string]string{"prepared": "E. Engineer", "checked": "e.  engineer", "approved": "E. Engineer", "reason": "First issue"}
	done := issued(page, version(s), names)
	assert.Contains(t, text(done.byID("main")), "Revision A was issued. Prepared, checked and approved by one name.")

	s.typeIn("title.checked_by", "C. Checker")
	s.typeIn("motion.approach_speed", "500")
	s = s.press("recompute")
	page = s.get("/plans/1/revisions")
	var to []string
	for _, l := range elements(page.byID("issue"), "a") {
		to = append(to, attr(l, "href"))
	}
	assert.Contains(t, to, benchPath+"#f-motion-approach_speed")
}
