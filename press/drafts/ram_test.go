package drafts

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// ram is the ram of the example with what is said of it.
func ram(t *testing.T) Ram {
	return Ram{
		Told:    Told{Name: " Ram  3 ", Source: "own load cell", Measured: " 2026-02-27 ", Method: "3 pushes a point", Notes: "at 20 °C"},
		Entries: example(t).Entries,
	}
}

// What is kept of a ram is had back from its document: the name and the date without
// blanks around, and of a plan's entries those of its ram alone.
func TestRamIsTidiedAndHadBack(t *testing.T) {
	r := ram(t).Tidy()
	assert.Equal(t, "Ram 3", r.Name)
	assert.Equal(t, "2026-02-27", r.Measured)
	require.NotEmpty(t, r.Entries)
	for _, e := range r.Entries {
		assert.True(t, strings.HasPrefix(e.Path, "ram."), e.Path)
	}
	assert.Equal(t, r, RamOf(r.Document()))
	assert.Equal(t, Digest((&press.Draft{Entries: r.Entries}).Encode()), r.Digest)
	other := r
	other.Notes = "other notes"
	assert.Equal(t, r.Digest, other.Tidy().Digest, "notes are no entries")
}

// What is said of a ram is refused at its field where it is too long by one character, or
// no date, and taken at its very limit. Derived: by hand from the limits.
func TestProblemsOfARam(t *testing.T) {
	for name, c := range map[string]struct {
		told       Told
		path, code string
	}{
		"all at their limits": {Told{strings.Repeat("r", 200), strings.Repeat("ß", 200), "2026-02-28", strings.Repeat("m", 200), strings.Repeat("n", 4000)}, "", ""},
		"no name":             {Told{}, PathRamName, press.CodeRequired},
		"long name":           {Told{Name: strings.Repeat("r", 201)}, PathRamName, press.CodeLength},
		"no such date":        {Told{Name: "r", Measured: "2026-02-30"}, PathRamMeasured, press.CodeType},
		"long notes":          {Told{Name: "r", Notes: strings.Repeat("n", 4001)}, PathRamNotes, press.CodeLength},
		"long source":         {Told{Name: "r", Source: strings.Repeat("ß", 201)}, PathRamSource, press.CodeLength},
		"long method":         {Told{Name: "r", Method: strings.Repeat("m", 201)}, PathRamMethod, press.CodeLength},
		"long date":           {Told{Name: "r", Measured: strings.Repeat("2", 201)}, PathRamMeasured, press.CodeLength},
	} {
		ps := c.told.Problems()
		if c.path == "" {
			assert.Empty(t, ps, name)
			continue
		}
		require.Len(t, ps, 1, name)
		assert.Equal(t, []string{c.path, c.code}, []string{ps[0].Path, ps[0].Code}, name)
	}
	assert.Equal(t, "at most 7 characters are allowed", AtMost(7))
}

// A ram is found by beginnings of words in all that is said of it, and by the name in its
// entries; every word must be there.
func TestRamIsFound(t *testing.T) {
	r := Ram{Told: Told{Name: "Big one", Source: "cell", Measured: "2026-02-27", Method: "pushes", Notes: "warm"}, Entries: []press.Entry{{Path: "ram.name", Text: "Ram 7"}, {Path: "ram.stroke", Text: "200"}}}
	for text, want := range map[string]bool{"": true, "BI": true, "ce": true, "2026": true, "push": true, "war": true, "ram 7": true, "big ram": true, "ig": false, "big cold": false, "200": false} {
		assert.Equal(t, want, r.Found(Words(text)), text)
	}
	assert.Equal(t, []string{"a", "Ö1", "é"}, Words("a-Ö1, \"é\""), "letters, digits and marks make a word")
}

// A ram takes the place of a draft's own, with its controller's words only if it has any;
// the draft that is given is left alone, and twice is as once.
func TestPutRam(t *testing.T) {
	words := []press.Entry{{Path: "controller.words[0].name", Text: "far limit"}}
	d := with(with(example(t), "ram.stroke", "99"), words[0].Path, "own")
	r := ram(t).Tidy()
	put := PutRam(d, r)
	stroke, _ := put.Get("ram.stroke")
	assert.Equal(t, "150", stroke, "of the example")
	said, _ := put.Get(words[0].Path)
	assert.Equal(t, "own", said, "a ram without words leaves those of the plan")
	before, _ := d.Get("ram.stroke")
	assert.Equal(t, "99", before)
	assert.Equal(t, put, PutRam(put, r))
	name, digest := CopiedFrom(put)
	assert.Equal(t, []string{"Ram 3", r.Digest}, []string{name, digest})
	assert.Equal(t, append(r.Entries[:len(r.Entries):len(r.Entries)], press.Entry{Path: words[0].Path, Text: "own"}), RamEntries(put), "without where it was copied from, and in place")

	r.Entries = append(r.Entries, words...)
	said, _ = PutRam(d, r).Get(words[0].Path)
	assert.Equal(t, "far limit", said)
	assert.Nil(t, RamEntries(&press.Draft{Entries: words}), "words alone are no ram")
	assert.Len(t, PutRam(&press.Draft{}, r).Entries, len(r.Entries)+2, "also into an empty draft")
	none, digest := CopiedFrom(with(put, PathShelfName, ""))
	assert.Empty(t, none+digest)
	none, digest = CopiedFrom(with(put, PathShelfDigest, ""))
	assert.Empty(t, none+digest)
}

// The words by which a plan is found: its title without blanks around, its notes, and the
// names of all its parts.
func TestLabels(t *testing.T) {
	d := &press.Draft{Entries: []press.Entry{
		{Path: "title.name", Text: " Hub "}, {Path: "title.number", Text: " 7 "}, {Path: "title.notes", Text: " n "}, {Path: "title.prepared_by", Text: "P"},
		{Path: "parts[0].name", Text: "pin"}, {Path: "parts[0].nominal", Text: "3"}, {Path: "parts[1].name", Text: "cap"}, {Path: "ram.name", Text: "R"},
	}}
	assert.Equal(t, Labels{Name: "Hub", Number: "7", Notes: " n ", Parts: "pin\ncap"}, LabelsOf(d))
}

// Two drafts are the same with the same entries in another order, but not with those of
// one path in another, nor with one more.
func TestSame(t *testing.T) {
	of := func(pairs ...string) *press.Draft {
		d := &press.Draft{}
		for i := 0; i < len(pairs); i += 2 {
			d.Entries = append(d.Entries, press.Entry{Path: pairs[i], Text: pairs[i+1]})
		}
		return d
	}
	assert.True(t, Same(of("a", "1", "b", "2"), of("b", "2", "a", "1")))
	assert.False(t, Same(of("a", "1", "a", "2"), of("a", "2", "a", "1")))
	assert.False(t, Same(of("a", "1"), of("a", "1", "b", "2")))
	assert.False(t, Same(of("a", "1"), of("a", "2")))
	_, one := OnePath(of("a", "1"), of("a", "1", "b", "2"))
	assert.True(t, one, "one more")
	path, one := OnePath(of("a", "1", "b", "2"), of("a", "1"))
	assert.True(t, one, "one less")
	assert.Equal(t, "b", path)
	_, one = OnePath(of("a", "1", "b", "2"), of("a", "2", "b", "3"))
	assert.False(t, one)
}
