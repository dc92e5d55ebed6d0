package proving

import (
	"strings"
	"testing"

	"github.com/go-json-experiment/json/jsontext"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press"
)

// someStudy draws a study of any kind that the table of fields allows.
func someStudy(t *rapid.T) *Study {
	kind := rapid.SampledFrom(Kinds).Draw(t, "kind")
	s := &Study{Format: Format, Kind: kind}
	for _, f := range Heads(kind) {
		if f.Name != "kind" && (f.Required || rapid.Bool().Draw(t, "has "+f.Name)) {
			put(t, f, s, nil)
		}
	}
	if kind == Event {
		return s
	}
	has := map[string]bool{}
	for _, f := range Columns(kind) {
		has[f.Name] = f.Required || rapid.Bool().Draw(t, "column "+f.Name)
	}
	has["height"] = has["height"] || kind == Stiffness && s.Height == nil || kind == Samples
	has["setting"] = has["setting"] || kind == Stiffness && !has["force"]
	s.Rows = make([]Row, rapid.IntRange(1, 12).Draw(t, "rows"))
	for i := range s.Rows {
		for _, f := range Columns(kind) {
			always := f.Required || f.Name == "height" || f.Name == "time" || kind == Stiffness
			if has[f.Name] && (always || rapid.Bool().Draw(t, f.Name)) {
				put(t, f, s, &s.Rows[i])
			}
		}
		if s.Rows[i].Time != nil {
			*s.Rows[i].Time += float64(i)
		}
	}
	return s
}

// put draws a value that the field takes.
func put(t *rapid.T, f *Field, s *Study, r *Row) {
	switch at := f.at(s, r).(type) {
	case **float64:
		x := rapid.Float64Range(1, 100).Draw(t, f.Name)
		switch {
		case f.Whole:
			x = float64(int(x))
		case f.Name == "time":
			x /= 1000
		case f.Low == nil && rapid.Bool().Draw(t, "odd"):
			x = rapid.SampledFrom([]float64{0, -1e9, 1e9, 1e-300, -5e-324, 1.0 / 3, 123456789.125, 1e-6, 9.99e-7, -1.5e-7, 1e-10}).Draw(t, f.Name)
		}
		*at = &x
	case **bool:
		b := rapid.Bool().Draw(t, f.Name)
		*at = &b
	case *string:
		switch {
		case f.Kind == press.Choice:
			*at = rapid.SampledFrom(f.Choices).Draw(t, f.Name)
		case f.Name == "taken_at":
			*at = rapid.SampledFrom([]string{"2026-11-20", "2028-02-29", "2026-11-20T14:05:00+01:00", "2026-11-20T14:05:00Z"}).Draw(t, f.Name)
		case f.Name == "calibrated_at":
			*at = "2026-05-11"
		case f.Name == "plan_digest":
			*at = "sha256:" + rapid.StringMatching(`[0-9a-f]{12,64}`).Draw(t, f.Name)
		default:
			*at = "s" + trim(oneLine(rapid.StringN(0, 40, 60).Draw(t, f.Name))) + rapid.SampledFrom([]string{"", `"`, ",", ";#", "ü"}).Draw(t, "end")
		}
	}
}

func oneLine(s string) string { return strings.NewReplacer("\n", "", "\r", "").Replace(s) }

// A study goes through JSON and through a table, and is the same as before.
func TestStudiesGoThroughBothReaders(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := someStudy(t)
		d, problems := Decode(s.JSON())
		require.Empty(t, problems, string(s.JSON()))
		assert.Equal(t, s.Digest(), d.Digest())
		assert.Equal(t, s, d)
		form := jsontext.Value(s.JSON())
		require.NoError(t, form.Canonicalize())
		assert.Equal(t, string(form), string(s.Canonical()))
		c, lines := ReadCSV(s.CSV())
		require.Empty(t, lines.Faults, string(s.CSV()))
		assert.Equal(t, s.Digest(), c.Digest(), string(s.CSV()))
		assert.Equal(t, s, c)
	})
}

// What was given as empty stays so, and is another document than one without it.
func TestEmptyTextsAreKept(t *testing.T) {
	const without = `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"rows":[{"reading":1},{"reading":2}]}`
	const with = `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","taken_by":"","height":40,"rows":[{"reading":1},{"reading":2,"remark":""}]}`
	a, problems := Decode([]byte(without))
	require.Empty(t, problems)
	b, problems := Decode([]byte(with))
	require.Empty(t, problems)
	assert.NotEqual(t, a.Digest(), b.Digest())
	assert.Equal(t, `{"format":"ramplan.study/1","height":40,"kind":"master","rows":[{"reading":1},{"reading":2,"remark":""}],"taken_at":"2026-11-20","taken_by":""}`, string(b.Canonical()))
	again, problems := Decode(b.JSON())
	require.Empty(t, problems)
	assert.Equal(t, b.Digest(), again.Digest())
	table, lines := ReadCSV(b.CSV())
	require.Empty(t, lines.Faults)
	assert.Equal(t, a.Digest(), table.Digest(), "in a table an empty cell is one that was not given")
}

// What a table cannot hold is told in CSV: breaks become blanks.
func TestTextsThatATableCannotHold(t *testing.T) {
	s, problems := Decode([]byte(`{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"notes":" one\ntwo\r\nthree ","rows":[{"reading":1,"remark":" a\rb "}]}`))
	require.Empty(t, problems)
	c, lines := ReadCSV(s.CSV())
	require.Empty(t, lines.Faults)
	assert.Equal(t, "one two three", c.Notes)
	assert.Equal(t, " a b ", c.Rows[0].Remark)
}
