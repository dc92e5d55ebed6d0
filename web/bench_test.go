package web

import (
	"net/http/httptest"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press"
)

// TestOlderResult breaks a field and mends it: the fault stands beside the field,
// what was typed stays, and the last result stays in sight, marked as older.
func TestOlderResult(t *testing.T) {
	s := start(t)
	require.Equal(t, 200, s.status)
	digest := text(s.byID("digest"))
	s.typeIn("station.nest", "14o")
	s.typeIn("title.owner", "typed too")
	for range 2 { // the last valid plan is carried on and on
		s = s.press("recompute")
		assert.Equal(t, 422, s.status)
		field := s.byID("f-station-nest")
		assert.Equal(t, "14o", attr(field, "value"))
		assert.Equal(t, "true", attr(field, "aria-invalid"))
		assert.Contains(t, text(s.byID(attr(field, "aria-describedby"))), `found "14o"; a number in mm`)
		owner, _ := s.value("title.owner")
		assert.Equal(t, "typed too", owner)
		assert.Contains(t, text(s.byID("result")), "Older than the entries")
		assert.Equal(t, digest, text(s.byID("digest")))
	}
	s.typeIn("station.nest", "140,5") // a decimal comma
	s = s.press("recompute")
	assert.Equal(t, 200, s.status)
	assert.NotContains(t, text(s.byID("result")), "Older than the entries")
	assert.NotEqual(t, digest, text(s.byID("digest")))
	assert.Contains(t, text(s.byID("setpoints")), "115.58", "the zone start moves with the nest (derived: 115.08 and 0.5)")
}

// TestNewPlan starts an empty plan: the one before it is still there.
func TestNewPlan(t *testing.T) {
	s := start(t)
	s.typeIn("title.owner", "typed before")
	s = s.press("recompute")
	s = s.send("/plans", "new", nil)
	require.Equal(t, 200, s.status)
	require.Equal(t, "/plans/2", s.path)
	name, _ := s.value("title.name")
	assert.Empty(t, name)
	assert.Nil(t, s.byID("setpoints"), "an empty plan has no result")
	s = s.press("recompute")
	assert.Equal(t, 422, s.status)
	owner, _ := s.get(benchPath).value("title.owner")
	assert.Equal(t, "typed before", owner)
	s = s.send("/plans", "example", nil)
	assert.Equal(t, "/plans/3", s.path)
	name, _ = s.value("title.name")
	assert.Equal(t, "Bearing sleeve into anemometer hub", name)
}

// TestNeededKeepsHelp: in an empty plan every field says what it is; that it is
// needed is a mark, which the control is described by. Other faults take its place.
func TestNeededKeepsHelp(t *testing.T) {
	s := start(t).send("/plans", "new", nil)
	under := func() string {
		return strings.Join(strings.Fields(text(s.byID(attr(s.byID("f-station-nest"), "aria-describedby")))), " ")
	}
	assert.Equal(t, "needed The ram position at which the tool would touch the empty nest, at zero force.", under())
	assert.Equal(t, "true", attr(s.byID("f-station-nest"), "aria-invalid"))
	s.typeIn("station.nest", "x")
	s = s.press("recompute")
	assert.Equal(t, `found "x"; a number in mm is needed`, under())
	s.typeIn("station.nest", "140")
	s = s.press("recompute")
	assert.NotContains(t, under(), "needed")
}

// TestPerfectOnce: what is taken as perfect is said once, over the strip, and by
// the notes that lead to its fields.
func TestPerfectOnce(t *testing.T) {
	s := start(t)
	for _, path := range []string{"station.nest_drift", "station.reference_uncertainty", "ram.force_scatter"} {
		s.typeIn(path, "")
	}
	s = s.press("recompute")
	require.Equal(t, 200, s.status)
	assert.Equal(t, 1, strings.Count(text(s.byID("main")), "Taken as perfect"))
	assert.Equal(t, 3, strings.Count(text(s.byID("findings")), "is taken as perfect"))
	for _, link := range []string{"#f-station-nest_drift", "#f-station-reference_uncertainty", "#f-ram-force_scatter"} {
		found := false
		for n := range s.byID("findings").Descendants() {
			found = found || attr(n, "href") == link
		}
		assert.True(t, found, "a note leads to %s", link)
	}
}

// TestTypedUnit: a unit typed behind a figure is kept as typed, and not printed a
// second time beside it.
func TestTypedUnit(t *testing.T) {
	s := start(t)
	suffix := func() string {
		for n := range s.byID("f-station-nest").Parent.Descendants() {
			if attr(n, "class") == "unit" {
				return text(n)
			}
		}
		return ""
	}
	require.Equal(t, "mm", suffix())
	s.typeIn("station.nest", "140 mm")
	s = s.press("recompute")
	assert.Equal(t, 200, s.status)
	typed, _ := s.value("station.nest")
	assert.Equal(t, "140 mm", typed)
	assert.Empty(t, suffix())
	s.typeIn("station.nest", "140 in")
	s = s.press("recompute")
	assert.Equal(t, 422, s.status, "another unit is no figure")
	assert.Equal(t, "mm", suffix())
}

// TestMarkup holds what every page must have: one main heading, unique ids, a
// label for every control, and links that lead somewhere.
func TestMarkup(t *testing.T) {
	s := start(t)
	broken := start(t)
	broken.typeIn("station.nest", "x")
	fresh := s.send("/plans", "new", nil)
	pages := map[string]*sheet{"example": s, "new": fresh, "empty": fresh.press("recompute"), "broken": broken.press("recompute"), "row added": s.press("add parts").press("add faults.other")}
	for _, path := range []string{"/", "/bin", "/plans/1/faults", "/plans/1/history", "/plans/1/revisions", "/plans/1/compared?from=draft", "/rams", "/plans/1/ram"} {
		pages[path] = s.get(path)
	}
	for name, page := range pages {
		ids := map[string]bool{}
		labelled := map[string]bool{}
		headings := 0
		for n := range page.root.Descendants() {
			if id := attr(n, "id"); id != "" {
				assert.False(t, ids[id], "%s: id %s twice", name, id)
				ids[id] = true
			}
			switch n.Data {
			case "label":
				labelled[attr(n, "for")] = true
			case "h1":
				headings++
			}
		}
		assert.Equal(t, 1, headings, name)
		for n := range page.root.Descendants() {
			if n.Type != html.ElementNode {
				continue
			}
			if href := attr(n, "href"); len(href) > 1 && href[0] == '#' {
				assert.True(t, ids[href[1:]], "%s: a link leads to %s, which is not there", name, href)
			}
			for _, key := range []string{"aria-describedby", "aria-labelledby", "for"} {
				for _, id := range strings.Fields(attr(n, key)) {
					assert.True(t, ids[id], "%s: %s names %s, which is not there", name, key, id)
				}
			}
			if (n.Data == "input" && attr(n, "type") != "hidden") || n.Data == "select" || n.Data == "textarea" {
				assert.True(t, labelled[attr(n, "id")] || attr(n, "aria-label") != "", "%s: no label for %s", name, attr(n, "name"))
			}
		}
	}
}

// TestGlossaryLinks: every field shown leads to the glossary in a tab of its own,
// and adds no stop to the way of the Tab key; a section has one.
func TestGlossaryLinks(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	page := plain(t, srv.URL+benchPath)
	links := regexp.MustCompile(`<a class="word"[^>]*>`).FindAllString(page, -1)
	assert.Greater(t, len(links), 60)
	for _, link := range links {
		assert.Contains(t, link, `tabindex="-1"`)
		assert.Contains(t, link, `target="_blank"`)
		assert.Contains(t, link, `href="/glossary#`)
	}
	assert.Equal(t, len(press.Sections), strings.Count(page, `class="sectionword"`), "one a section")
}
