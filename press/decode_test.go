package press

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Derived: the SHA-256 of the canonical form, computed by another program.
func TestDigestOfTheExample(t *testing.T) {
	assert.Equal(t, "sha256:b74624aea0e690594646fdf27e48a6f95798ca8c3f4d89f22a27812b04206d04", example(t).Digest())
}

// Writings of the same document have the same digest.
func TestWritingDoesNotMatter(t *testing.T) {
	p := example(t)
	text := string(p.JSON())
	for name, other := range map[string]string{
		"byte-order mark": "\xef\xbb\xbf" + text,
		"exponent":        strings.Replace(text, `"stroke": 150`, `"stroke": 1.5E2`, 1),
		"decimal":         strings.Replace(text, `"stroke": 150`, `"stroke": 150.0`, 1),
		"minus zero":      strings.Replace(text, `"home": 0`, `"home": -0`, 1),
		"escape":          strings.Replace(text, "WS-210", `WS\u002d210`, 1),
		"space":           strings.ReplaceAll(text, "\n", "\r\n\t "),
	} {
		q, ps := Decode([]byte(other))
		require.Empty(t, ps, name)
		assert.Equal(t, p.Digest(), q.Digest(), name)
	}
	q, ps := Decode([]byte(strings.Replace(text, `"stroke": 150`, `"stroke": 151`, 1)))
	require.Empty(t, ps)
	assert.NotEqual(t, p.Digest(), q.Digest())
}

// RFC 8785, appendix B and section 3.2: numbers as ECMAScript writes them, keys
// in order, no blanks.
func TestCanonicalForm(t *testing.T) {
	p := with(t, example(t), "station.nest_drift", "1e-7", "joint.hub.modulus", "1e8", "title.notes", "a\n\"ö\"")
	c := string(p.Canonical())
	assert.True(t, strings.HasPrefix(c, `{"format":"ramplan.plan/1","joint":{"diameter":12,`), c)
	assert.Contains(t, c, `"nest_drift":1e-7`)
	assert.Contains(t, c, `"modulus":100000000`)
	assert.Contains(t, c, `"notes":"a\n\"ö\""`)
	assert.NotContains(t, c, ": ")
}

// An absent field stays absent, an explicit default explicit.
func TestPresenceIsKept(t *testing.T) {
	p := example(t)
	for name, q := range map[string]*Plan{
		"explicit number": with(t, p, "station.position_step", "0.01"),
		"explicit text":   with(t, p, "ram.curve.source", ""),
		"explicit flag":   with(t, p, "parts[0].insert", "false"),
		"explicit choice": with(t, p, "joint.stop", "shoulder"),
		"empty section":   with(t, p, "faults", "{}"),
		"empty list":      with(t, p, "faults.other", "[]"),
	} {
		assert.NotEqual(t, p.Digest(), q.Digest(), name)
		back, ps := q.Draft().Check()
		require.Empty(t, ps, name)
		assert.Equal(t, q.Digest(), back.Digest(), name)
		again, ps := Decode(q.JSON())
		require.Empty(t, ps, name)
		assert.Equal(t, q.Digest(), again.Digest(), name)
	}
	assert.True(t, p.Given("window"))
	assert.False(t, p.Given("faults"))
}

func TestDefaultsStandIn(t *testing.T) {
	p := example(t)
	assert.Equal(t, 0.01, p.Station.PositionStep)
	assert.Equal(t, 0.999, p.Faults.SampleProbability)
	assert.Equal(t, 0.8, p.Joint.SmoothingMost)
	assert.Equal(t, Shoulder, p.Joint.Stop)
	assert.Equal(t, 0.9973, p.Targets.ConformingShare)
	assert.Nil(t, p.Window.EdgeMargin)
	assert.Equal(t, [2]float64{0, 18}, p.Joint.Hole) // H7 at 12 mm: ISO 286-2
	assert.Equal(t, [2]float64{33, 44}, p.Joint.Shaft)
}

// Common practice, no source: a ram repeats to about ±0.02 mm, which stands in
// where nothing is given.
func TestUsualRepeatability(t *testing.T) {
	f, ok := FieldAt("ram.repeatability")
	require.True(t, ok)
	assert.Equal(t, 0.02, f.Default)
}

func TestTypedNumbers(t *testing.T) {
	for typed, want := range map[string]string{
		"12": "12", " 12,5 ": "12.5", "−3": "-3", "1E2": "100", "+4": "4", "0.10": "0.1", ".5": "0.5", "5.": "5", "1000000": "1000000", "2e-5": "0.00002",
	} {
		got, ok := typedNumber(typed)
		assert.True(t, ok, typed)
		assert.Equal(t, want, got, typed)
	}
	for _, typed := range []string{"", "abc", "1 2", "1,2,3", "1.2,3", "0x1p4", "nan", "Inf", "1_000", "--1", "e", "12mm"} {
		_, ok := typedNumber(typed)
		assert.False(t, ok, typed)
	}
}

func TestDraftFiles(t *testing.T) {
	d := &Draft{Entries: []Entry{{"title.name", "half\x00typed"}, {"ram.stroke", "15,"}, {"nowhere", "x"}}}
	back, ps := DecodeDraft(d.Encode())
	require.Empty(t, ps)
	assert.Equal(t, d, back)
	_, ps = back.Check()
	assert.True(t, ps.Has("nowhere"))
	assert.True(t, ps.Has("ram.max_speed"))
	for _, bad := range []string{`{}`, `[]`, `{"format":"ramplan.draft/1"}`, `{"format":"ramplan.draft/1","fields":{}}`,
		`{"format":"ramplan.draft/1","fields":[["a"]]}`, `{"format":"ramplan.draft/1","fields":[["a",1]]}`,
		`{"format":"ramplan.draft/2","fields":[]}`, `{"format":"ramplan.draft/1","fields":[],"more":1}`} {
		_, ps := DecodeDraft([]byte(bad))
		assert.NotEmpty(t, ps, bad)
	}
}

func TestEmptyDraftIsANewPlan(t *testing.T) {
	_, ps := (&Draft{}).Check()
	for _, p := range ps {
		assert.Equal(t, CodeRequired, p.Code, p)
	}
	assert.True(t, ps.Has("title.name"))
	assert.True(t, ps.Has("parts"))
}

func FuzzDecode(f *testing.F) {
	f.Add(example(f).JSON())
	f.Add([]byte(`{"format":"ramplan.plan/1"}`))
	f.Add([]byte("\xef\xbb\xbf[]"))
	f.Fuzz(func(t *testing.T, data []byte) {
		p, ps := Decode(data)
		if p == nil {
			require.NotEmpty(t, ps)
			return
		}
		require.Empty(t, ps)
		again, ps := Decode(p.JSON())
		require.Empty(t, ps)
		require.Equal(t, string(p.Canonical()), string(again.Canonical()))
		twice, ps := Decode(p.Canonical())
		require.Empty(t, ps)
		require.Equal(t, string(p.Canonical()), string(twice.Canonical()))
		_, err := Evaluate(p).JSON(false)
		require.NoError(t, err)
	})
}

func FuzzDraft(f *testing.F) {
	f.Add("ram.curve.points[1][0]", "12,5", "parts[0].name", "x")
	f.Add("window", "{}", "joint.hole[1]", "5")
	f.Add("parts[9999999999].name", "", "[", "]")
	f.Add("a..b[", "1e400", "joint.kind", "measured")
	f.Fuzz(func(t *testing.T, path1, text1, path2, text2 string) {
		d := example(t).Draft()
		d.Set(path1, text1)
		d.Set(path2, text2)
		p, ps := d.Check()
		require.Equal(t, p == nil, len(ps) > 0)
		back, ps := DecodeDraft(d.Encode())
		require.Empty(t, ps)
		require.Len(t, back.Entries, len(d.Entries))
		if p != nil {
			_, err := Evaluate(p).JSON(false)
			require.NoError(t, err)
		}
	})
}

func BenchmarkDecode(b *testing.B) {
	data := example(b).JSON()
	b.ReportAllocs()
	for b.Loop() {
		if _, ps := Decode(data); len(ps) > 0 {
			b.Fatal(ps)
		}
	}
}

func BenchmarkEvaluate(b *testing.B) {
	p := example(b)
	b.ReportAllocs()
	for b.Loop() {
		Evaluate(p)
	}
}
