package web

import (
	"net/http"
	"net/url"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
	"ramplan/web/page"
)

// An event never goes away: it is kept only in a second step, which names what is withdrawn.
// It all works without a script.
func TestEventIsKeptOnlyWhenConfirmed(t *testing.T) {
	store := exampleArchive(t)
	p := plainly(t, New(store))
	kept := func() (events int) {
		all, err := store.Studies(t.Context(), 1)
		require.NoError(t, err)
		for _, k := range all {
			if k.Kind == proving.Event {
				events++
			}
		}
		return events
	}
	said := func() url.Values {
		return url.Values{page.NameWhat: {proving.NestExchanged}, page.NameWhen: {today()}, page.NameWho: {"B. Roth"}, page.NameNotes: {"worn <out>"}}
	}
	typed := &proving.Typed{Kind: proving.Master, Columns: []string{"reading"}, Rows: [][]string{{"100.137"}, {"100.141"}}}
	typed.SetHead("taken_at", today())
	typed.SetHead("height", "40")
	k, err := store.StartStudy(t.Context(), 1, proving.Master, typed)
	require.NoError(t, err)
	_, err = store.SignStudy(t.Context(), 1, k.ID, k.Version, "A. Weber")
	require.NoError(t, err)

	require.Equal(t, http.StatusOK, p.get(provingPath))
	assert.NotContains(t, p.was, `value="keep"`, "one click keeps nothing")
	assert.NotContains(t, p.was, `id="happened" open`)
	require.Equal(t, http.StatusOK, p.send(provingPath, "event", said()))
	assert.Zero(t, kept(), "nothing is kept before it is confirmed")
	for _, want := range []string{`value="keep"`, "Now it withdraws: master of " + today() + ".", "It never goes away", `name="who" value="B. Roth"`, `name="what" value="nest_exchanged"`, "worn &lt;out&gt;"} {
		assert.Contains(t, p.was, want)
	}
	require.Equal(t, http.StatusOK, p.send(provingPath, "change", said()))
	assert.Zero(t, kept())
	assert.Contains(t, p.was, `<option value="nest_exchanged" selected>`, "what was said stands in the form again")
	assert.NotContains(t, p.was, `value="keep"`)

	nobody := said()
	nobody.Set(page.NameWho, " ")
	assert.Equal(t, http.StatusUnprocessableEntity, p.send(provingPath, "event", nobody))
	assert.Equal(t, http.StatusUnprocessableEntity, p.send(provingPath, "keep", nobody), "and neither is what a program leaves out")
	assert.Zero(t, kept())

	other := said() // a change of setpoints leaves a master what it is
	other.Set(page.NameWhat, proving.SetpointsChanged)
	require.Equal(t, http.StatusOK, p.send(provingPath, "event", other))
	assert.Contains(t, p.was, "Of the studies that count now it withdraws none.")

	require.Equal(t, http.StatusOK, p.send(provingPath, "keep", said()))
	assert.Equal(t, 1, kept())
	assert.Contains(t, p.was, "Something happened to the station since: push again")
}
