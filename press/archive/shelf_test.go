package archive

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
)

func entries(pairs ...string) *press.Draft {
	d := &press.Draft{}
	for i := 0; i < len(pairs); i += 2 {
		d.Entries = append(d.Entries, press.Entry{Path: pairs[i], Text: pairs[i+1]})
	}
	return d
}

// shelfOf makes an archive of six plans, each changed an hour after the one
// before; the last is in the bin.
func shelfOf(t *testing.T) (*Archive, *clock) {
	t.Helper()
	c := newClock()
	a := opened(t, t.TempDir(), Options{Now: c.now})
	for _, d := range []*press.Draft{
		entries("title.name", "vane Hub", "title.number", "WS-7", "parts[0].name", "brass sleeve", "parts[1].name", "Hülse"),
		entries("title.name", "Anemometer", "title.number", "ws-12", "title.notes", "glued in the first trial, 50 µm gap"),
		entries("title.name", "bearing", "title.number", "WS-210", "parts[0].name", "O'Ring \"soft\""),
		entries("title.number", "A-1"),
		entries("title.name", "Zenith mount"),
		entries("title.name", "old hub", "title.number", "WS-7"),
	} {
		_, err := a.Create(background(), d, drafts.DidMake)
		require.NoError(t, err)
		c.rest(time.Hour)
	}
	_, err := a.Bin(background(), 6, At(1))
	require.NoError(t, err)
	return a, c
}

func ids(items []Item) []ID {
	out := []ID{}
	for _, i := range items {
		out = append(out, i.ID)
	}
	return out
}

func TestList(t *testing.T) {
	a, _ := shelfOf(t)
	for name, c := range map[string]struct {
		q     Query
		want  []ID
		total int
	}{
		"the last changed first":     {Query{Limit: 10}, []ID{5, 4, 3, 2, 1}, 5},
		"first page":                 {Query{Limit: 2}, []ID{5, 4}, 5},
		"second page":                {Query{Limit: 2, Offset: 2}, []ID{3, 2}, 5},
		"last page":                  {Query{Limit: 2, Offset: 4}, []ID{1}, 5},
		"behind the last page":       {Query{Limit: 2, Offset: 6}, []ID{}, 5},
		"before the first page":      {Query{Limit: 2, Offset: -1}, []ID{5, 4}, 5},
		"only the count":             {Query{}, []ID{}, 5},
		"by name, small as capital":  {Query{Limit: 10, Order: ByName}, []ID{4, 2, 3, 1, 5}, 5},
		"by number":                  {Query{Limit: 10, Order: ByNumber}, []ID{5, 4, 2, 3, 1}, 5},
		"by name, second page":       {Query{Limit: 2, Offset: 2, Order: ByName}, []ID{3, 1}, 5},
		"an order that is not there": {Query{Limit: 1, Order: "size"}, []ID{5}, 5},
		"the bin":                    {Query{Limit: 10, Binned: true}, []ID{6}, 1},
		"a word":                     {Query{Limit: 10, Text: "hub"}, []ID{1}, 1},
		"a word in the bin":          {Query{Limit: 10, Text: "hub", Binned: true}, []ID{6}, 1},
		"the beginning of a word":    {Query{Limit: 10, Text: "anem"}, []ID{2}, 1},
		"not its end":                {Query{Limit: 10, Text: "meter"}, []ID{}, 0},
		"one letter":                 {Query{Limit: 10, Text: "b"}, []ID{3, 1}, 2},
		"a number":                   {Query{Limit: 10, Text: "WS-210"}, []ID{3}, 1},
		"the beginning of a number":  {Query{Limit: 10, Text: "ws"}, []ID{3, 2, 1}, 3},
		"all words":                  {Query{Limit: 10, Text: "hub brass"}, []ID{1}, 1},
		"not only some":              {Query{Limit: 10, Text: "hub gold"}, []ID{}, 0},
		"without its accent":         {Query{Limit: 10, Text: "hulse"}, []ID{1}, 1},
		"with its accent":            {Query{Limit: 10, Text: "HÜLSE"}, []ID{1}, 1},
		"notes":                      {Query{Limit: 10, Text: "glued 50 µm"}, []ID{2}, 1},
		"signs of the search itself": {Query{Limit: 10, Text: `"soft" (O'Ring* AND -ring: NEAR^`}, []ID{}, 0},
		"quotes":                     {Query{Limit: 10, Text: `O'Ring "soft"`}, []ID{3}, 1},
		"words of the search itself": {Query{Limit: 10, Text: "OR"}, []ID{}, 0},
		"signs only":                 {Query{Limit: 10, Text: ` "*-( `}, []ID{5, 4, 3, 2, 1}, 5},
		"found, by name, a page":     {Query{Limit: 1, Offset: 1, Text: "ws", Order: ByName}, []ID{3}, 3},
	} {
		got, total, err := a.List(background(), c.q)
		require.NoError(t, err, name)
		assert.Equal(t, c.want, ids(got), name)
		assert.Equal(t, c.total, total, name)
	}
}

func TestShelfFollowsTheDraft(t *testing.T) {
	a, c := shelfOf(t)
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.name", "rain gauge"), "")
	require.NoError(t, err)
	found := func(text string) []ID {
		t.Helper()
		got, _, err := a.List(background(), Query{Text: text, Limit: 10})
		require.NoError(t, err)
		return ids(got)
	}
	assert.Equal(t, []ID{1}, found("gauge"))
	assert.Empty(t, found("vane"))
	all, _, err := a.List(background(), Query{Limit: 1})
	require.NoError(t, err)
	assert.Equal(t, []ID{1}, ids(all), "changed last")
	assert.Equal(t, h.Digest, all[0].Digest)
	assert.True(t, c.at.Equal(all[0].Changed))

	require.NoError(t, a.KeepCard(background(), 1, Card{Of: h.Digest, Strip: "<svg/>", Blockers: 1, Cautions: 2, Notes: 3, Faults: 4}))
	_, err = a.Undo(background(), 1, At(h.Version))
	require.NoError(t, err)
	assert.Equal(t, []ID{1}, found("vane"))
	all, _, err = a.List(background(), Query{Limit: 1})
	require.NoError(t, err)
	assert.Equal(t, Card{Of: h.Digest, Strip: "<svg/>", Blockers: 1, Cautions: 2, Notes: 3, Faults: 4}, all[0].Card)
	assert.NotEqual(t, all[0].Card.Of, all[0].Digest, "the card is that of another draft")
}

func TestBin(t *testing.T) {
	a, c := shelfOf(t)
	binned, _, err := a.List(background(), Query{Binned: true, Limit: 10})
	require.NoError(t, err)
	assert.True(t, c.at.Equal(binned[0].Binned))
	h, err := a.Get(background(), 6)
	require.NoError(t, err)
	assert.True(t, h.Binned)
	same, err := a.Bin(background(), 6, At(h.Version))
	require.NoError(t, err)
	assert.Equal(t, h.Version, same.Version, "it is there already")
	_, err = a.Unbin(background(), 6, At(h.Version-1))
	var stale *Stale
	require.ErrorAs(t, err, &stale)
	h, err = a.Unbin(background(), 6, At(h.Version))
	require.NoError(t, err)
	assert.False(t, h.Binned)
	n, err := a.EmptyBin(background())
	require.NoError(t, err)
	assert.Zero(t, n)
	for _, id := range []ID{1, 6} {
		h, err := a.Get(background(), id)
		require.NoError(t, err)
		_, err = a.Bin(background(), id, At(h.Version))
		require.NoError(t, err)
	}
	n, err = a.EmptyBin(background())
	require.NoError(t, err)
	assert.Equal(t, 2, n)
	_, err = a.Save(background(), 6, At(h.Version), entries("title.name", "x"), "")
	require.ErrorIs(t, err, ErrNotFound)
	h, err = a.Create(background(), entries("title.name", "next"), drafts.DidMake)
	require.NoError(t, err)
	assert.Equal(t, ID(7), h.ID, "a number is never given again")
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, "5 plans, 5 states, 0 revisions, 0 damaged", report.String())
}

func TestNothingOfWhatIsNotThere(t *testing.T) {
	a, _ := shelfOf(t)
	for name, do := range map[string]func() error{
		"get":      func() error { _, err := a.Get(background(), 99); return err },
		"save":     func() error { _, err := a.Save(background(), 99, At(1), entries(), ""); return err },
		"undo":     func() error { _, err := a.Undo(background(), 99, At(1)); return err },
		"state":    func() error { _, err := a.State(background(), 1, 99); return err },
		"restore":  func() error { _, err := a.Restore(background(), 1, At(1), 99); return err },
		"revision": func() error { _, err := a.Revision(background(), 1, "A"); return err },
		"issue":    func() error { _, err := a.Issue(background(), 99, At(1), issue.Signed{}); return err },
		"bin":      func() error { _, err := a.Bin(background(), 99, At(1)); return err },
		"ram":      func() error { _, err := a.Ram(background(), 99); return err },
		"save ram": func() error {
			_, err := a.SaveRam(background(), 99, 1, drafts.Ram{Told: drafts.Told{Name: "r"}})
			return err
		},
	} {
		require.ErrorIs(t, do(), ErrNotFound, name)
	}
}

// The order of the shelf comes from an index, whichever it is: only the page that
// was found is put in order by itself.
func TestShelfIsNotSorted(t *testing.T) {
	a, _ := shelfOf(t)
	for _, order := range []string{ByChange, ByName, ByNumber} {
		query, args := pageQuery(Query{Order: order, Limit: 10})
		plan := ""
		err := each(background(), a.reader(background()), "explain query plan "+query, args, func(scan scanner) error {
			var id, parent, unused int
			var step string
			err := scan(&id, &parent, &unused, &step)
			plan += fmt.Sprintln(step)
			return err
		})
		require.NoError(t, err)
		assert.Contains(t, plan, "USING COVERING INDEX plan_", order)
		assert.Equal(t, 1, strings.Count(plan, "FOR ORDER BY"), "%s:\n%s", order, plan)
	}
}
