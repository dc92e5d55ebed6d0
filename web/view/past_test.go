package view

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/web/page"
)

// Paper tells every change of a state one by one; the screen tells the first of them.
func TestPaperUnfoldsTheHistory(t *testing.T) {
	var all []Change
	for i := range mostChanges + 3 {
		all = append(all, Change{Path: "notes" + strconv.Itoa(i), Was: "1", Is: "2", Had: true, Has: true})
	}
	p := History{States: []State{{N: 2, Changes: all}, {N: 1, Changes: all[:2]}}}.Page(page.Assets{})
	require.Len(t, p.States, 2)
	assert.Len(t, p.States[0].Changes, mostChanges)
	assert.Len(t, p.States[0].Folded, 3)
	assert.Empty(t, p.States[1].Folded)
}
