package web

import (
	"net/http"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// edited is the example plan with one text of it exchanged.
func edited(t *testing.T, old, new string) []byte {
	t.Helper()
	plan := string(static.Example())
	require.Contains(t, plan, old)
	return []byte(strings.Replace(plan, old, new, 1))
}

// TestPresence opens plans on the page, recomputes twice, saves, and wants the
// digest of the file that was opened: what was given stays given, and what was
// not stays absent. The expected digests are those of the same files read
// without the page (derived).
func TestPresence(t *testing.T) {
	touch := `{"format":"ramplan.plan/1","title":{"name":"x"},"ram":{"stroke":1,"max_speed":1,"max_accel":1,"moving_mass":0,"curve":{"points":[[1,1],[2,2]]}},
		"station":{"nest":0,"stiffness":1,"max_force":1},"parts":[{"nominal":1,"minus":0,"plus":0,"contact":1,"seat":1}],"joint":{"kind":"touch"},
		"requirement":{"height_low":0,"height_high":1},"motion":{"approach_speed":1,"accel":1,"decel":1,"slow_speed":1,"retract_speed":1}`
	plans := map[string][]byte{
		"example":                     static.Example(),
		"explicit default":            edited(t, `"home": 0`, `"home": 0.0, "position_step": 0.01, "presence_check": "", "nest_force": 0`),
		"explicit empty texts":        edited(t, `"number": "WS-210"`, `"number": "", "owner": "", "notes": ""`),
		"explicit false flags":        edited(t, `"shape": "normal"`, `"shape": "normal", "insert": false, "datum": false`),
		"no window":                   edited(t, `"window": {},`, ``),
		"window in part":              edited(t, `"window": {}`, `"window": {"zone_start": 115.1}`),
		"empty faults":                edited(t, `"window": {}`, `"window": {}, "faults": {}`),
		"no own faults, explicit":     edited(t, `"window": {}`, `"window": {}, "faults": {"other": []}`),
		"own faults, explicit false":  edited(t, `"window": {}`, `"faults": {"other": [{"name": "burr", "height": 0.02, "good": false}, {"name": "paint", "height": -0.01, "good": true}]}`),
		"empty targets and nothing":   []byte(touch + `,"targets":{}}`),
		"touch":                       []byte(touch + `}`),
		"line breaks in notes":        edited(t, `"number": "WS-210"`, `"notes": "\n first\r\nsecond\rthird\n"`),
		"line break in a single line": edited(t, `"number": "WS-210"`, `"owner": "one\ntwo\r\nthree"`),
		"control characters":          edited(t, `"number": "WS-210"`, `"owner": "a\u0000b\u0001\t\u2028\ufeff\u007f"`),
		"markup":                      edited(t, `"number": "WS-210"`, `"owner": "</textarea><script>alert(1)</script>\"'&lt;&amp;"`),
		"blanks around":               edited(t, `"number": "WS-210"`, `"owner": "  two  ", "prepared_by": " "`),
		"beyond the basic plane":      edited(t, `"number": "WS-210"`, `"owner": "𝛿 \ud83d\udd29"`),
		"exponents":                   edited(t, `"stroke": 150`, `"stroke": 1.5E2`),
		"many digits":                 edited(t, `"stroke": 150`, `"stroke": 150.000000000000123`),
		"deviations":                  edited(t, `"fit": "H7/u6"`, `"hole": [0, 18], "shaft": [33, 44], "service_change": [0, 0]`),
	}
	for name, file := range plans {
		t.Run(name, func(t *testing.T) {
			plan, faults := press.Decode(file)
			require.Empty(t, faults)
			s := start(t).open("plan.json", file)
			require.Equal(t, http.StatusOK, s.status)
			s = s.press("recompute").sendEncoded("recompute")
			require.Equal(t, http.StatusOK, s.status)
			saved, faults := press.Decode(s.save())
			require.Empty(t, faults)
			assert.Equal(t, plan.Digest(), saved.Digest(), "canonical before:\n%s\nand after:\n%s", plan.Canonical(), saved.Canonical())
		})
	}
}

// TestTick ticks a box that was given as false, and unticks it again.
func TestTick(t *testing.T) {
	s := start(t).open("p.json", edited(t, `"shape": "normal"`, `"shape": "normal", "insert": false`))
	require.Contains(t, string(s.save()), `"insert": false`)
	s.tick("parts[0].insert")
	s = s.press("recompute")
	plan, faults := press.Decode(s.save())
	require.Empty(t, faults)
	assert.True(t, plan.Parts[0].Insert)
	for i, in := range s.inputs {
		if in.name == "parts[0].insert" {
			s.inputs = append(s.inputs[:i:i], s.inputs[i+1:]...)
			break
		}
	}
	plan, faults = press.Decode(s.save())
	require.Empty(t, faults)
	assert.False(t, plan.Parts[0].Insert)
}

// TestDraftIsKept opens drafts that make no plan and wants every entry back in
// the saved draft, whatever it is.
func TestDraftIsKept(t *testing.T) {
	entries := [][]press.Entry{
		{{Path: "title.name", Text: "half"}, {Path: "station.nest", Text: "14,"}, {Path: "parts[0].plus", Text: "abc"}},
		{{Path: "ram.direction", Text: "sideways"}, {Path: "parts[1].insert", Text: "perhaps"}},
		{{Path: "nothing.like.it", Text: "kept"}, {Path: ":do", Text: "kept"}, {Path: "", Text: "kept"}, {Path: "title.name", Text: "a"}, {Path: "title.name", Text: "b"}},
		{{Path: "joint.kind", Text: "touch"}, {Path: "joint.diameter", Text: "12"}, {Path: "joint.hub.yield", Text: "x"}},
		{{Path: "joint.diameter", Text: "12"}, {Path: "joint.stop", Text: "none"}},
		{{Path: "window", Text: "{}"}, {Path: "parts", Text: "[]"}, {Path: "ram.curve.points", Text: "garbage"}},
		{{Path: "ram.curve.points[2][1]", Text: "5"}, {Path: "parts[3]", Text: "{}"}, {Path: "parts[100000].name", Text: "far"}},
		{{Path: "title.owner", Text: ""}, {Path: "title.notes", Text: "a\r\nb"}},
	}
	for _, want := range entries {
		s := start(t).open("draft.json", (&press.Draft{Entries: want}).Encode())
		s = s.press("recompute").sendEncoded("recompute")
		require.Equal(t, http.StatusUnprocessableEntity, s.status)
		saved, faults := press.DecodeDraft(s.save())
		require.Empty(t, faults)
		for _, e := range want {
			assert.Contains(t, saved.Entries, e)
		}
		for _, e := range saved.Entries {
			// Rows that were jumped over are the only entries that may be new.
			if !assert.True(t, contains(want, e) || e.Text == "{}" || e.Text == "[]", "%v was never typed", e) {
				t.Log(saved.Entries)
			}
		}
	}
}

func contains(entries []press.Entry, e press.Entry) bool {
	for _, x := range entries {
		if x == e {
			return true
		}
	}
	return false
}

// TestRefusedFile opens every broken plan: the page says each fault, and no plan
// is made of it.
func TestRefusedFile(t *testing.T) {
	const folder = "../testdata/plans/bad"
	files, err := os.ReadDir(folder)
	require.NoError(t, err)
	require.NotEmpty(t, files)
	s := start(t)
	tried := 0
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".json") {
			continue
		}
		data, err := os.ReadFile(folder + "/" + f.Name())
		require.NoError(t, err)
		_, faults := press.Decode(data)
		if isDraft(data) {
			_, faults = press.DecodeDraft(data)
		}
		if len(faults) == 0 {
			continue
		}
		tried++
		after := s.open(f.Name(), data)
		assert.Equal(t, http.StatusUnprocessableEntity, after.status, f.Name())
		shown := text(after.byID("main"))
		assert.Contains(t, shown, f.Name())
		for i, p := range faults {
			if i < mostShown {
				assert.Contains(t, shown, p.String(), f.Name())
			}
		}
	}
	assert.Greater(t, tried, 20)
	assert.Equal(t, http.StatusNotFound, s.get("/plans/2").status)
}
