package web

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestSearchWithoutHit says that nothing was found, and leads to everything.
func TestSearchWithoutHit(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	for from, to := range map[string]string{"/": "/", "/bin": "/bin", "/rams": "/rams", "/plans/1/ram": "/plans/1/ram"} {
		found := s.get(from + "?q=zzz")
		main := found.byID("main")
		assert.Contains(t, text(main), "Nothing holds “zzz”.", from)
		var links []string
		for _, p := range elements(main, "p") {
			if attr(p, "class") == "nothing" {
				for _, a := range elements(p, "a") {
					links = append(links, attr(a, "href"))
				}
			}
		}
		assert.Equal(t, []string{to}, links, from)
		assert.NotContains(t, text(s.get(from).byID("main")), "Nothing holds", from)
	}
	assert.NotContains(t, text(s.get("/?q=bearing").byID("main")), "Nothing holds")
	assert.Contains(t, text(s.get("/bin?q=+").byID("main")), "The bin is empty.", "blanks search for nothing")
}

// TestOpenMenu: files and the example are opened under one name that says so.
func TestOpenMenu(t *testing.T) {
	form := start(t).get("/").byID("opening")
	require.NotNil(t, form)
	require.Len(t, elements(form, "summary"), 1)
	assert.Equal(t, "Open", text(elements(form, "summary")[0]))
	assert.Contains(t, text(form), "A file: a plan, a draft or an exported sheet")
	assert.Contains(t, text(form), "The example")
}
