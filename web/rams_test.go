package web

import (
	"database/sql"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/drafts"
	"ramplan/web/page"
)

// say fills in what is said of a ram.
func (s *sheet) say(path, value string) {
	s.t.Helper()
	s.typeIn(page.NameSigned+path, value)
}

// putOnShelf puts the ram of the example on the shelf from its plan's page.
func putOnShelf(s *sheet, name string) *sheet {
	s.t.Helper()
	p := s.get("/plans/1/ram")
	require.Equal(s.t, http.StatusOK, p.status)
	p.say(drafts.PathRamName, name)
	p.say(drafts.PathRamSource, "own load cell, 5 kN")
	p.say(drafts.PathRamMeasured, "2026-02-27")
	p.say(drafts.PathRamMethod, "three pushes a point, slow")
	put := p.send("/plans/1/ram", "put", nil)
	require.Equal(s.t, http.StatusOK, put.status)
	return put
}

// entriesOf gives the entries of a plan as the archive's clients read them.
func entriesOf(t *testing.T, s *sheet, at string) *press.Draft {
	t.Helper()
	d, faults := press.DecodeDraft(s.get(at).saveAny())
	if len(faults) == 0 {
		return d
	}
	plan, faults := press.Decode(s.get(at).save())
	require.Empty(t, faults)
	return plan.Draft()
}

func (s *sheet) saveAny() []byte { return []byte(s.send(s.path+"/file", "save", nil).body) }

// TestRamGoesRound puts a plan's ram on the shelf, finds it there, takes it into
// a new plan, and undoes that.
func TestRamGoesRound(t *testing.T) {
	s := start(t)
	before := s.save()
	s.typeIn("title.owner", "typed before leaving")
	p := s.press("go putram")
	require.Equal(t, "/plans/1/ram", p.path)
	owner, _ := s.get(benchPath).value("title.owner")
	assert.Equal(t, "typed before leaving", owner, "the way there saves")
	assert.Contains(t, text(p.byID("take")), "no ram on the shelf yet")
	require.Equal(t, "/plans/1/ram", s.get(benchPath).press("go ram").path)

	p.say(drafts.PathRamName, " ")
	p.say(drafts.PathRamMeasured, "yesterday")
	refused := p.send("/plans/1/ram", "put", nil)
	assert.Equal(t, http.StatusUnprocessableEntity, refused.status)
	assert.Contains(t, text(refused.byID("shelf-name-n")), "a name is needed")
	assert.Contains(t, text(refused.byID("shelf-measured-n")), "a date such as")
	kept, _ := refused.value(page.NameSigned + drafts.PathRamMeasured)
	assert.Equal(t, "yesterday", kept)

	put := putOnShelf(s, "Ram of bench two")
	assert.Contains(t, text(put.byID("main")), "“Ram of bench two” is on the shelf now")
	again := put.get("/plans/1/ram")
	again.say(drafts.PathRamName, "RAM OF BENCH TWO")
	assert.Contains(t, text(again.send("/plans/1/ram", "put", nil).byID("shelf-name-n")), "another ram on the shelf has this name")

	for q, want := range map[string]int{"": 1, "bench two": 1, "load cell": 1, "2026-02-27": 1, "nothing like it": 0} {
		found := s.get("/rams?q=" + url.QueryEscape(q))
		require.Equal(t, http.StatusOK, found.status)
		assert.Len(t, elements(found.byID("rams"), "h2"), want, q)
	}
	list := text(s.get("/rams").byID("rams"))
	for _, want := range []string{"own load cell, 5 kN", "2026-02-27", "three pushes a point, slow"} {
		assert.Contains(t, list, want)
	}
	assert.Len(t, elements(s.get("/rams").byID("rams"), "svg"), 1, "its curve is drawn")

	fresh := s.send("/plans", "new", nil)
	taken := fresh.get("/plans/2/ram").send("/plans/2/ram", "take 1", nil)
	require.Equal(t, "/plans/2", taken.path)
	stroke, _ := taken.value("ram.stroke")
	own, _ := s.value("ram.stroke")
	assert.Equal(t, own, stroke)
	from := taken.byID("f-ram-shelf_name")
	require.NotNil(t, from)
	assert.Contains(t, text(from), "Ram of bench two")
	assert.Contains(t, text(taken.get("/plans/2/history").byID("state-2")), "Took a ram from the shelf")
	back := taken.press("undo")
	stroke, _ = back.value("ram.stroke")
	assert.Empty(t, stroke)
	assert.Nil(t, back.byID("f-ram-shelf_name"))

	// In the plan that it came from it is the same ram: all else stays.
	s.get(benchPath).press("undo")
	same := s.get("/plans/1/ram").send("/plans/1/ram", "take 1", nil)
	require.Equal(t, benchPath, same.path)
	forgotten := same.press("unshelve")
	assert.Nil(t, forgotten.byID("f-ram-shelf_name"))
	was, _ := press.Decode(before)
	is, faults := press.Decode(forgotten.save())
	require.Empty(t, faults)
	assert.Equal(t, was.Digest(), is.Digest())
}

// TestRamShowsItsWords: the controller's own words stand on the ram's page and
// come into a plan that takes the ram.
func TestRamShowsItsWords(t *testing.T) {
	s := start(t).press("add controller.words")
	s.typeIn("controller.words[0].setpoint", "push_end")
	s.typeIn("controller.words[0].name", "far limit")
	s = s.press("recompute")
	putOnShelf(s, "Ram of bench two")
	told := text(s.get("/rams/1").byID("ramfigures"))
	assert.Contains(t, told, "push end")
	assert.Contains(t, told, "far limit")
	fresh := s.send("/plans", "new", nil)
	name, _ := fresh.get(fresh.path+"/ram").send(fresh.path+"/ram", "take 1", nil).value("controller.words[0].name")
	assert.Equal(t, "far limit", name)
}

// TestRamIsCarried: what a plan holds of its ram's origin goes through the form
// to the letter and cannot be typed.
func TestRamIsCarried(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	b := s.get("/plans/1/ram").send("/plans/1/ram", "take 1", nil)
	before := entriesOf(t, s, benchPath)
	name, _ := before.Get("ram.shelf_name")
	digest, _ := before.Get("ram.shelf_digest")
	assert.Equal(t, "Ram 2", name)
	assert.True(t, strings.HasPrefix(digest, "sha256:"), digest)
	b.typeIn("ram.stroke", "199")
	b = b.press("recompute")
	after := entriesOf(t, s, benchPath)
	stroke, _ := after.Get("ram.stroke")
	assert.Equal(t, "199", stroke)
	for path, want := range map[string]string{"ram.shelf_name": name, "ram.shelf_digest": digest} {
		got, _ := after.Get(path)
		assert.Equal(t, want, got, path)
		for _, n := range elements(b.byID("plan"), "input") {
			if attr(n, "name") == path {
				assert.Equal(t, "hidden", attr(n, "type"), path)
			}
		}
	}
	plan, _ := press.Decode(b.save())
	odd := plan.Draft()
	odd.Set("ram.shelf_name", "")
	odd.Set("ram.shelf_digest", strings.Repeat("x", 81))
	opened := s.open("odd.json", odd.Encode())
	require.Equal(t, http.StatusOK, opened.status)
	line := text(opened.byID("f-ram-shelf_name"))
	assert.Contains(t, line, "at most 80", "a fault is shown where it can be mended")
	assert.Contains(t, string(opened.saveAny()), `["ram.shelf_name", ""]`, "an empty text is kept")
	mended := opened.press("unshelve")
	assert.Equal(t, http.StatusOK, mended.status)
}

// TestRamNews changes a ram on the shelf: a plan that holds a copy is told, and
// takes the new figures at one click, as one step that Undo takes back.
func TestRamNews(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	held := s.get("/plans/1/ram").send("/plans/1/ram", "take 1", nil)
	assert.Nil(t, held.byID("ramnews"))

	other := s.send("/plans", "example", nil)
	other.typeIn("ram.stroke", "198")
	other.typeIn("title.number", "WS-299")
	require.Equal(t, http.StatusOK, other.press("recompute").status)
	one := s.get("/rams/1")
	assert.Contains(t, text(one.byID("anew")), "WS-299")
	older := s.get("/rams/1")
	one.say("ram.plan", "2")
	one = one.send("/rams/1", "anew", nil)
	require.Equal(t, "/rams/1", one.path)
	assert.Contains(t, text(one.byID("main")), "The figures were taken anew.")
	assert.Contains(t, text(one.byID("ramfigures")), "198")
	assert.Equal(t, http.StatusConflict, older.send("/rams/1", "save", nil).status, "an older page changes nothing")

	held = s.get(benchPath)
	require.NotNil(t, held.byID("ramnews"))
	assert.Contains(t, text(held.byID("ramnews")), "“Ram 2” has changed")
	held.typeIn("title.owner", "typed meanwhile")
	updated := held.press("ram update")
	require.Equal(t, http.StatusOK, updated.status)
	assert.Nil(t, updated.byID("ramnews"))
	stroke, _ := updated.value("ram.stroke")
	owner, _ := updated.value("title.owner")
	assert.Equal(t, "198", stroke)
	assert.Equal(t, "typed meanwhile", owner)
	undone := updated.press("undo")
	stroke, _ = undone.value("ram.stroke")
	owner, _ = undone.value("title.owner")
	assert.NotEqual(t, "198", stroke)
	assert.Equal(t, "typed meanwhile", owner, "the update alone is undone")
	assert.NotNil(t, undone.byID("ramnews"), "the older figures are told of again")
	older = s.get(benchPath)
	last := undone.press("redo").press("ram update")
	assert.Contains(t, text(last.byID("lead")), "has not changed since")
	stale := older.press("ram update")
	assert.Equal(t, http.StatusConflict, stale.status, "from an older state nothing is done")
	assert.Contains(t, text(stale.byID("lead")), "Another window changed this plan")
}

// TestRamPage saves what is said of a ram, refuses what cannot be, and takes the
// ram off the shelf and puts it back.
func TestRamPage(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	one := s.get("/rams/1")
	require.Equal(t, http.StatusOK, one.status)
	figures := text(one.byID("ramfigures"))
	for _, want := range []string{"Stroke", "Moving mass", "Setting, %", "Force, N"} {
		assert.Contains(t, figures, want)
	}
	assert.NotContains(t, figures, "From the shelf")
	one.say(drafts.PathRamNotes, "greased in March")
	one.say(drafts.PathRamMeasured, "soon")
	refused := one.send("/rams/1", "save", nil)
	assert.Equal(t, http.StatusUnprocessableEntity, refused.status)
	notes, _ := refused.value(page.NameSigned + drafts.PathRamNotes)
	assert.Equal(t, "greased in March", strings.TrimPrefix(notes, "\n"), "what was typed stays")
	refused.say(drafts.PathRamMeasured, "2026-03-01")
	saved := refused.send("/rams/1", "save", nil)
	require.Equal(t, http.StatusOK, saved.status)
	assert.Contains(t, text(saved.byID("main")), "Saved.")
	require.Len(t, elements(s.get("/rams?q=greased").byID("rams"), "h2"), 1)

	off := saved.send("/rams/1", "remove", nil)
	require.Equal(t, http.StatusOK, off.status)
	assert.Contains(t, text(off.byID("main")), "was taken off the shelf")
	assert.Equal(t, http.StatusNotFound, s.get("/rams/1").status)
	var one1 []input // the form of the notice alone
	for _, in := range off.inputs {
		if in.name == page.NameMine {
			one1 = append(one1, in)
		}
	}
	off.inputs = one1
	back := off.send("/rams", "back", nil)
	require.Equal(t, "/rams/2", back.path)
	assert.Contains(t, text(back.byID("ramfigures")), "Stroke")
	date, _ := back.value(page.NameSigned + drafts.PathRamMeasured)
	assert.Equal(t, "2026-03-01", date)
	assert.Equal(t, http.StatusUnprocessableEntity, off.send("/rams", "back", nil).status, "it stands there already")

	empty := s.send("/plans", "new", nil)
	assert.Contains(t, text(empty.get("/plans/2/ram").byID("put")), "Nothing is entered of a ram yet")
	for path, do := range map[string]string{"/rams/2": "fly", "/rams": "fly", "/plans/1/ram": "fly"} {
		assert.Equal(t, http.StatusBadRequest, s.send(path, do, nil).status, path)
	}
	back = s.get("/rams/2")
	back.say("ram.plan", "2")
	none := back.send("/rams/2", "anew", nil)
	assert.Equal(t, http.StatusUnprocessableEntity, none.status)
	assert.Contains(t, text(none.byID("told")), "Nothing is entered of a ram in that plan")
	empty.typeIn("ram.stroke", "9o")
	empty.press("recompute")
	poor := none.send("/rams/2", "anew", nil)
	require.Equal(t, http.StatusOK, poor.status, "a ram may hold what a draft may hold")
	for _, want := range []string{"Stroke9o mm", "Repeatability0.02 mm (not given)", "Continuous settingnot stated (not given)", "The curve has no points"} {
		assert.Contains(t, strings.Join(strings.Fields(strings.ReplaceAll(text(poor.byID("ramfigures")), "\u00a0", " ")), " "), want)
	}
	assert.Contains(t, text(s.get("/rams").byID("rams")), "No curve to draw")
	for _, path := range []string{"/rams/99", "/rams/x", "/plans/99/ram"} {
		assert.Equal(t, http.StatusNotFound, s.get(path).status, path)
	}
	assert.Equal(t, http.StatusNotFound, s.get("/plans/1/ram").send("/plans/1/ram", "take 99", nil).status)
}

// TestTakingInTwoWindows: a page of an older state takes nothing and says so.
func TestTakingInTwoWindows(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	older := s.get("/plans/1/ram")
	s.typeIn("title.owner", "another window")
	s.press("recompute")
	for _, do := range []string{"take 1", "put"} {
		stale := older.send("/plans/1/ram", do, nil)
		assert.Equal(t, http.StatusConflict, stale.status, do)
		assert.Contains(t, text(stale.byID("put")), "nothing was done", do)
	}
	require.Len(t, elements(s.get("/rams").byID("rams"), "h2"), 1)
	owner, _ := s.get(benchPath).value("title.owner")
	assert.Equal(t, "another window", owner)
}

// overwrite changes an archive from outside.
func overwrite(t *testing.T, a *archive.Archive, query string) {
	t.Helper()
	db, err := sql.Open("sqlite", a.Path())
	require.NoError(t, err)
	_, err = db.Exec(query)
	require.NoError(t, err)
	require.NoError(t, db.Close())
}

// TestDamagedRamPage overwrites a stored ram from outside: it is shown as
// damaged, and made whole by the figures of a plan.
func TestDamagedRamPage(t *testing.T) {
	a := exampleArchive(t)
	srv := httptest.NewServer(New(a))
	defer srv.Close()
	s := (&sheet{t: t, base: srv.URL}).get(benchPath)
	putOnShelf(s, "Ram 2")
	overwrite(t, a, "update ram set body = cast(replace(cast(body as text), 'load', 'loud') as blob)")
	assert.Contains(t, text(s.get("/rams").byID("rams")), "damaged")
	one := s.get("/rams/1")
	assert.Equal(t, http.StatusInternalServerError, one.status)
	assert.Contains(t, text(one.byID("main")), "does not match its digest")
	assert.Nil(t, one.byID("ramfigures"))
	assert.Equal(t, http.StatusInternalServerError, one.send("/rams/1", "save", nil).status)
	assert.Equal(t, http.StatusInternalServerError, s.get("/plans/1/ram").send("/plans/1/ram", "take 1", nil).status)
	one.say("ram.plan", "1")
	assert.Contains(t, text(one.send("/rams/1", "anew", nil).byID("ramfigures")), "Stroke")
}
