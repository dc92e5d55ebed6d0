package web

import (
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
	"ramplan/web/page"
)

// Who comes to the page of proving for the first time sees one thing to do first, what is
// needed and what is not, how it is taken and at which setting, and what is dangerous in it.
func TestProvingForANewcomer(t *testing.T) {
	store := exampleArchive(t)
	p := plainly(t, New(store))
	need := func(kind string) string {
		_, row, found := strings.Cut(p.was, `id="need-`+kind+`"`)
		require.True(t, found, kind)
		row, _, _ = strings.Cut(row, "</tr>")
		return row
	}
	first := func(want string) {
		t.Helper()
		for _, kind := range proving.Kinds[:6] {
			if kind == want {
				assert.Regexp(t, `class="(small|button) primary"`, need(kind), kind)
			} else {
				assert.NotContains(t, need(kind), "primary", "%s: one button stands out", kind)
			}
		}
	}
	require.Equal(t, 200, p.get(provingPath))
	first(proving.LoadCell)
	for _, kind := range []string{proving.Restart, proving.Trial} {
		assert.Contains(t, need(kind), "not begun")
		assert.NotContains(t, need(kind), "missing")
	}
	assert.Contains(t, need(proving.Master), "missing", "what is needed and not there is still called so")
	assert.Contains(t, need(proving.Master), "at the plan&#39;s setting of 66\u202f%", "published with the example plan: its setting is 66 %")
	assert.Contains(t, p.was, "Hands out of the work space")
	assert.Contains(t, p.was, "held so that it cannot kick out")
	assert.Contains(t, p.was, `href="/plans/1/sheet?behind=proving"`)
	require.Equal(t, 200, p.get("/plans/1/sheet?behind=proving"), "the link leads to the printed page")

	p.get(provingPath)
	require.Equal(t, 200, p.send(provingPath, "start load_cell", nil))
	at := p.at
	assert.Contains(t, p.was, "3 settings or more on both sides of the plan&#39;s own (66\u202f%)", "how it is taken stands on its own page")
	assert.Contains(t, p.was, "held so that it cannot kick out")
	fields := url.Values{}
	for i, setting := range []string{"40", "40", "40", "66", "66", "66", "80", "80"} {
		fields.Set("rows["+string(rune('0'+i))+"].0", setting)
		fields.Set("rows["+string(rune('0'+i))+"].1", "1500")
	}
	require.Equal(t, 200, p.send(at, "save", fields))
	assert.Contains(t, p.was, `id="how"`, "8 rows are too few: 3 settings of 3 pushes, by hand")
	for _, name := range []string{page.NameVersion, page.NameFrom, page.NameCount, page.NameColumns} {
		fields.Del(name) // as the page has them now
	}
	fields.Set("rows[8].0", "80")
	fields.Set("rows[8].1", "1500")
	require.Equal(t, 200, p.send(at, "save", fields))
	assert.NotContains(t, p.was, `id="how"`, "then the table needs the room")
	require.Equal(t, 200, p.get(provingPath))
	first(proving.LoadCell)
	assert.Contains(t, need(proving.LoadCell), "Go on, 9 rows")

	require.Equal(t, 200, p.send(provingPath, "start trial", nil))
	assert.Contains(t, p.was, "Hands out of the work space")
	assert.NotContains(t, p.was, "kick out", "nothing is put in that could")
}
