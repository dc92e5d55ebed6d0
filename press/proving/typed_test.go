package proving_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/proving"
	"ramplan/static"
)

// A study that was read, typed out and read again is the same, digest for digest.
func TestTypedIsTheSameStudy(t *testing.T) {
	for _, name := range []string{"load-cell.csv", "stiffness.csv", "trial-parts.csv"} {
		data, err := static.FS.ReadFile("examples/studies/" + name)
		require.NoError(t, err)
		s, lines := proving.ReadCSV(data)
		require.True(t, lines.Sound(), name)
		typed := s.Typed()
		again, faults := typed.Study()
		require.Empty(t, faults, name)
		assert.Equal(t, s.Digest(), again.Digest(), name)
		kept, ok := proving.DecodeTyped(typed.Encode())
		require.True(t, ok, name)
		assert.True(t, typed.Same(kept), name)
	}
	s, faults := proving.Decode([]byte(`{"format": "ramplan.study/1", "kind": "event", "taken_at": "2026-03-02", "event": "crash", "notes": "first\n\n second, \"third\"", "taken_by": "=1+1"}`))
	require.Empty(t, faults)
	again, typedFaults := s.Typed().Study()
	require.Empty(t, typedFaults)
	assert.Equal(t, s.Digest(), again.Digest(), "a table would lose the line breaks")
}

// What is typed is read with units, either decimal sign and words for lamps; each fault stands
// at its row and field, and the other rows are there. By hand.
func TestTypedIsRead(t *testing.T) {
	typed := &proving.Typed{
		Kind:    proving.Trial,
		Heads:   []proving.Head{{Name: "taken_at", Text: " 2026-03-02 "}, {Name: "height_uncertainty [in]", Text: "0,001"}, {Name: "notes", Text: "a\r\nb"}, {Name: "ram", Text: ""}},
		Columns: []string{"Reading [in]", "arrival", "zone", "true height [mm]", "remark"},
		Rows: [][]string{
			{"4,5", "on", "YES", "25.002", " loose "},
			{"", " ", "", "", ""},
			{"4.6", "0", "off"},
			{"4.7x", "on", "on", "", ""},
			{"4.8", "perhaps", "on", "25 mm", ""},
			{"4.9", "on", "", "", "", "beyond"},
			{"4.9", "on", "on", "", "", "  "},
		},
	}
	s, faults := typed.Study()
	assert.Equal(t, []string{
		"row 4, reading: found \"4.7x\"; a number in mm is needed", // rows are those of the table, the blank one counted
		"row 5, arrival: found \"perhaps\"; on or off is needed, or 1 or 0, true or false, yes or no",
		"row 5, height: found \"25 mm\"; a number in mm is needed",
		"row 6: found more cells than columns",
		"row 6, zone: not given; on or off is needed",
	}, lines(faults))
	assert.Equal(t, []string{"found \"25 mm\"; a number in mm is needed"}, faults.At(5, "height"))
	require.Len(t, s.Rows, 3)
	assert.Equal(t, 4.5*25.4, *s.Rows[0].Reading)
	assert.True(t, *s.Rows[0].Arrival && *s.Rows[0].Zone && !*s.Rows[1].Arrival)
	assert.Equal(t, 25.002, *s.Rows[0].Height)
	assert.Equal(t, 4.9, *s.Rows[2].Reading/25.4)
	assert.Equal(t, 0.001*25.4, *s.HeightUncertainty)
	assert.Equal(t, "a\nb", s.Notes)
	assert.Equal(t, "loose", s.Rows[0].Remark)
}

func lines(faults proving.TypedFaults) []string {
	out := make([]string, len(faults))
	for i, f := range faults {
		out[i] = f.String()
	}
	return out
}

// What a study lacks as a whole stands at its head. By hand.
func TestTypedLacks(t *testing.T) {
	for name, c := range map[string]struct {
		typed proving.Typed
		want  []string
	}{
		"nothing typed": {*proving.NewTyped(proving.Master), []string{
			"taken_at: not given; a day such as 2026-11-25, or day and time with their offset such as 2026-11-25T14:05:00+01:00, is needed",
			"height: not given; a number in mm, 0 or more, is needed",
			"rows: found 0 rows; 1 to 10,000 are needed",
		}},
		"an event with a push": {proving.Typed{Kind: proving.Event, Heads: []proving.Head{{Name: "taken_at", Text: "2026-03-02"}, {Name: "event", Text: "party"}}, Columns: []string{"reading"}, Rows: [][]string{{"1"}}}, []string{
			"event: found \"party\"; one of ram_exchanged, controller_exchanged, nest_exchanged, tool_exchanged, moved, crash, setpoints_changed is needed",
			"reading: no such column in a study of kind event",
			"row 1: found a row; an event has none",
		}},
		"no kind": {proving.Typed{Kind: "best"}, []string{"kind: one of load_cell, stiffness, master, restart, trial, samples, event is needed"}},
		"odd heads": {proving.Typed{Kind: proving.Event, Heads: []proving.Head{{Name: "taken_at", Text: "2026-03-02"}, {Name: "taken at", Text: "2026-03-02"}, {Name: "event", Text: "crash"}, {Name: "height", Text: "1"}, {Name: "ram [mm]", Text: "x"}, {Name: "rows", Text: "x"}}}, []string{
			"taken_at: given twice; only one is allowed",
			"height: no such entry in a study of kind event",
			"ram: found the unit \"mm\"; this has no unit",
			"rows: no such entry",
		}},
	} {
		_, faults := c.typed.Study()
		assert.Equal(t, c.want, lines(faults), name)
	}
}

// Whatever is typed is kept to the letter and read without a panic, for any seed; what is read
// without a fault is a study that the strict reader takes, and typed out it is the same again.
func TestAnythingTyped(t *testing.T) {
	names := []string{"reading", "force [kN]", "setting", "height", "arrival", "zone", "sample", "start", "time", "speed (in/s)", "condition", "remark", "no such", "Reading [in]"}
	heads := []string{"taken_at", "height", "height_uncertainty [in]", "cell", "notes", "event", "plan_digest", "setting", "kind", "rows", "format", ""}
	sound := 0
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.OneOf(rapid.SampledFrom([]string{"", " ", "1", "100,25", "-3.5e1", "on", "off", "0", "cold", "14:05", "missing", "2026-03-02", "crash", "1e999", "NaN", "\"", "a\tb;c,d", "x\ny"}), rapid.String())
		typed := &proving.Typed{Kind: rapid.SampledFrom(proving.Kinds).Draw(t, "kind"), Columns: rapid.SliceOfN(rapid.SampledFrom(names), 0, 6).Draw(t, "columns")}
		for _, name := range rapid.SliceOfN(rapid.SampledFrom(heads), 0, 5).Draw(t, "heads") {
			typed.Heads = append(typed.Heads, proving.Head{Name: name, Text: text.Draw(t, "text")})
		}
		if rapid.Bool().Draw(t, "dated") {
			typed.SetHead("taken_at", "2026-03-02")
			switch typed.Kind {
			case proving.Event:
				typed.SetHead("event", "crash")
			case proving.Master, proving.Stiffness:
				typed.SetHead("height", "40")
			}
		}
		if rapid.Bool().Draw(t, "plain") { // one row that can be read, so that sound studies are met
			typed.Columns, typed.Rows = typed.Columns[:0], nil
			for _, f := range proving.Columns(typed.Kind) {
				typed.Columns = append(typed.Columns, f.Name)
			}
			if typed.Kind != proving.Event {
				plain := map[string]string{"arrival": "on", "zone": "off", "sample": "a", "condition": "cold", "start": "2"}
				var row []string
				for _, c := range typed.Columns {
					if plain[c] == "" {
						plain[c] = rapid.SampledFrom([]string{"1", "2,5", "3.25e0"}).Draw(t, "number")
					}
					row = append(row, plain[c])
				}
				typed.Rows = [][]string{row, {"", " "}}
			}
		} else {
			typed.Rows = rapid.SliceOfN(rapid.SliceOfN(text, 0, 7), 0, 5).Draw(t, "rows")
		}
		kept, ok := proving.DecodeTyped(typed.Encode())
		if !ok || !typed.Same(kept) {
			t.Fatalf("kept as %v", kept)
		}
		s, faults := typed.Study()
		if len(faults) > 0 {
			for _, f := range faults {
				if f.Message == "" || f.Row < 0 || f.Row > len(typed.Rows) {
					t.Fatalf("a fault that leads nowhere: %+v", f)
				}
			}
			return
		}
		sound++
		again, problems := proving.Decode(s.JSON())
		if len(problems) > 0 || again.Digest() != s.Digest() {
			t.Fatalf("the strict reader says %v", problems)
		}
		if out, faults := s.Typed().Study(); len(faults) > 0 || out.Digest() != s.Digest() {
			t.Fatalf("typed out: %v", faults)
		}
	})
	t.Logf("%d were sound studies", sound)
}
