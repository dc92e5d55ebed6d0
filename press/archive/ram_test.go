package archive

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
)

// bigRam is the ram of the example, put on the shelf.
func bigRam(t *testing.T) drafts.Ram {
	return drafts.Ram{
		Told:    drafts.Told{Name: "Ram  3 ", Source: "own load cell", Measured: "2026-02-27", Method: "3 pushes a point", Notes: "at 20 °C"},
		Entries: example(t).Entries,
	}
}

func TestShelfOfRams(t *testing.T) {
	dir := t.TempDir()
	c := newClock()
	a := opened(t, dir, Options{Now: c.now})
	r, err := a.CreateRam(background(), bigRam(t))
	require.NoError(t, err)
	assert.Equal(t, "Ram 3", r.Name)
	assert.Equal(t, int64(1), r.Version)
	for _, e := range r.Entries {
		assert.True(t, strings.HasPrefix(e.Path, "ram."), "the example has no words of a controller: %s", e.Path)
	}

	got, err := a.Ram(background(), r.ID)
	require.NoError(t, err)
	assert.Equal(t, r, got)

	second := bigRam(t)
	second.Name = "RAM 3"
	_, err = a.CreateRam(background(), second)
	var problems press.Problems
	require.ErrorAs(t, err, &problems)
	assert.True(t, problems.Has(drafts.PathRamName), "no two have the same name, however written")
	second.Name, second.Source = "Another", "paper"
	_, err = a.CreateRam(background(), second)
	require.NoError(t, err)

	same, err := a.SaveRam(background(), r.ID, 1, r.Ram)
	require.NoError(t, err)
	assert.Equal(t, int64(1), same.Version, "nothing changed")
	r.Notes = "at 21 °C"
	changed, err := a.SaveRam(background(), r.ID, 1, r.Ram)
	require.NoError(t, err)
	assert.Equal(t, int64(2), changed.Version)
	assert.Equal(t, r.Digest, changed.Digest, "the entries are the same")
	_, err = a.SaveRam(background(), r.ID, 1, r.Ram)
	var stale *StaleRam
	require.ErrorAs(t, err, &stale)
	assert.Equal(t, changed, stale.Stands)

	for text, want := range map[string][]string{"": {"Another", "Ram 3"}, "ram": {"Another", "Ram 3"}, "CELL": {"Ram 3"}, "pap": {"Another"}, "cell 21": {"Ram 3"}, "nothing": nil, "2026": {"Another", "Ram 3"}} {
		rams, err := a.Rams(background(), text)
		require.NoError(t, err)
		var names []string
		for _, r := range rams {
			names = append(names, r.Name)
		}
		assert.Equal(t, want, names, "searched %q", text)
	}

	_, err = a.RemoveRam(background(), r.ID, 1)
	require.ErrorAs(t, err, &stale)
	gone, err := a.RemoveRam(background(), r.ID, 2)
	require.NoError(t, err)
	_, err = a.Ram(background(), r.ID)
	require.ErrorIs(t, err, ErrNotFound)
	back, err := a.CreateRam(background(), gone.Ram)
	require.NoError(t, err, "undone")
	assert.NotEqual(t, r.ID, back.ID, "a number is never given again")
	assert.Equal(t, changed.Told, back.Told)
	assert.Equal(t, changed.Digest, back.Digest)
}

func TestWhatIsSaidOfARam(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	for name, c := range map[string]struct {
		told       drafts.Told
		path, code string
	}{
		"no name":       {drafts.Told{Name: "  "}, drafts.PathRamName, press.CodeRequired},
		"long name":     {drafts.Told{Name: strings.Repeat("r", 201)}, drafts.PathRamName, press.CodeLength},
		"no such date":  {drafts.Told{Name: "r", Measured: "2026-02-30"}, drafts.PathRamMeasured, press.CodeType},
		"a word":        {drafts.Told{Name: "r", Measured: "yesterday"}, drafts.PathRamMeasured, press.CodeType},
		"long notes":    {drafts.Told{Name: "r", Notes: strings.Repeat("n", 4001)}, drafts.PathRamNotes, press.CodeLength},
		"long source":   {drafts.Told{Name: "r", Source: strings.Repeat("ß", 201)}, drafts.PathRamSource, press.CodeLength},
		"long measured": {drafts.Told{Name: "r", Measured: strings.Repeat("2", 201)}, drafts.PathRamMeasured, press.CodeLength},
	} {
		_, err := a.CreateRam(background(), drafts.Ram{Told: c.told})
		var problems press.Problems
		require.ErrorAs(t, err, &problems, name)
		require.Len(t, problems, 1, name)
		assert.Equal(t, c.path, problems[0].Path, name)
		assert.Equal(t, c.code, problems[0].Code, name)
	}
	rams, err := a.Rams(background(), "")
	require.NoError(t, err)
	assert.Empty(t, rams)
}

func TestRamIsPutIntoAPlan(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	r, err := a.CreateRam(background(), bigRam(t))
	require.NoError(t, err)
	d := with(with(example(t), "ram.stroke", "99"), "ram.curve.points[30][0]", "half typed")
	put := drafts.PutRam(d, r.Ram)
	name, _ := put.Get("ram.shelf_name")
	assert.Equal(t, "Ram 3", name)
	plan, faults := put.Check()
	require.Empty(t, faults)
	assert.Equal(t, "Ram 3", plan.Ram.ShelfName)
	assert.Equal(t, r.Digest, plan.Ram.ShelfDigest)
	assert.Equal(t, "99", func() string { s, _ := d.Get("ram.stroke"); return s }(), "the draft given is left alone")

	own, _ := example(t).Check()
	back := &press.Draft{}
	for _, e := range put.Entries {
		if e.Path != drafts.PathShelfName && e.Path != drafts.PathShelfDigest {
			back.Entries = append(back.Entries, e)
		}
	}
	same, faults := back.Check()
	require.Empty(t, faults)
	assert.Equal(t, own.Digest(), same.Digest(), "all else is the example, whose ram this is")
	again := drafts.PutRam(put, r.Ram)
	assert.Equal(t, put, again)
	alone, _ := drafts.PutRam(&press.Draft{}, r.Ram).Get("ram.stroke")
	assert.NotEmpty(t, alone, "also into an empty draft")

	news := func(d *press.Draft) (*Ram, bool) {
		t.Helper()
		r, is, err := a.RamNews(background(), d)
		require.NoError(t, err)
		return r, is
	}
	_, is := news(put)
	assert.False(t, is)
	_, is = news(example(t))
	assert.False(t, is, "this one comes from no shelf")
	r.Notes = "other notes"
	r, err = a.SaveRam(background(), r.ID, r.Version, r.Ram)
	require.NoError(t, err)
	_, is = news(put)
	assert.False(t, is, "notes are no entries")
	r.Entries = (&press.Draft{Entries: r.Entries}).Entries
	for i := range r.Entries {
		if r.Entries[i].Path == "ram.stroke" {
			r.Entries[i].Text = "220"
		}
	}
	r, err = a.SaveRam(background(), r.ID, r.Version, r.Ram)
	require.NoError(t, err)
	found, is := news(put)
	require.True(t, is)
	_, is = news(drafts.PutRam(put, found.Ram))
	assert.False(t, is)
	_, err = a.RemoveRam(background(), r.ID, r.Version)
	require.NoError(t, err)
	_, is = news(put)
	assert.False(t, is)
}

// TestRamBringsItsWords: what a controller calls the setpoints is kept with the
// ram and comes with it; a ram without words leaves those of the plan.
func TestRamBringsItsWords(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	word := func(d *press.Draft, row, setpoint, name string) *press.Draft {
		at := "controller.words[" + row + "]."
		return with(with(d, at+"setpoint", setpoint), at+"name", name)
	}
	put := func(name string, d *press.Draft) Ram {
		t.Helper()
		r, err := a.CreateRam(background(), drafts.Ram{Told: drafts.Told{Name: name}, Entries: drafts.RamEntries(d)})
		require.NoError(t, err)
		r, err = a.Ram(background(), r.ID)
		require.NoError(t, err)
		return r
	}
	named := put("named", word(example(t), "0", "push_end", "far limit"))
	silent := put("silent", example(t))

	plan := word(word(example(t), "0", "setting", "limit"), "1", "zone_start", "gate opens")
	for _, c := range []struct {
		ram  Ram
		want []press.SetpointWord
	}{
		{named, []press.SetpointWord{{Setpoint: "push_end", Name: "far limit", Factor: 1}}},
		{silent, []press.SetpointWord{{Setpoint: "setting", Name: "limit", Factor: 1}, {Setpoint: "zone_start", Name: "gate opens", Factor: 1}}},
	} {
		got, faults := drafts.PutRam(plan, c.ram.Ram).Check()
		require.Empty(t, faults, c.ram.Name)
		assert.Equal(t, c.want, got.Controller.Words, c.ram.Name)
		assert.Equal(t, c.ram.Name, got.Ram.ShelfName)
		assert.Equal(t, drafts.PutRam(plan, c.ram.Ram), drafts.PutRam(drafts.PutRam(plan, c.ram.Ram), c.ram.Ram), "twice is as once")
	}
	assert.Empty(t, drafts.RamEntries(word(&press.Draft{}, "0", "setting", "limit")), "words alone are no ram")
}

func TestDamagedRam(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	r, err := a.CreateRam(background(), bigRam(t))
	require.NoError(t, err)
	flip(t, a, "ram", "body", "id = 1")
	_, err = a.Ram(background(), r.ID)
	var damaged *Damaged
	require.ErrorAs(t, err, &damaged)
	assert.Equal(t, "ram 1 (Ram 3)", damaged.What)
	rams, err := a.Rams(background(), "")
	require.NoError(t, err)
	require.Len(t, rams, 1)
	assert.True(t, rams[0].Damaged)
	assert.Nil(t, rams[0].Entries)
	report, err := a.Check(background())
	require.NoError(t, err)
	assert.Equal(t, []Fault{{What: "ram 1 (Ram 3)", Why: "does not match its digest"}}, report.Faults)
	mended, err := a.SaveRam(background(), r.ID, r.Version, r.Ram)
	require.NoError(t, err, "a whole one may be saved over it")
	assert.Equal(t, r.Digest, mended.Digest)
}
