package archive

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/issue"
)

// The shelf finds a plan by the digest of any of its revisions, as it stands on
// paper, and says which that is.
func TestSearchForADigest(t *testing.T) {
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t), with(example(t), "title.name", "decade facade 11")}})
	signed := issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "first"}
	first, err := a.Issue(background(), 1, At(1), signed)
	require.NoError(t, err)
	_, err = a.Save(background(), 1, At(1), with(example(t), "station.nest", "141"), "")
	require.NoError(t, err)
	signed.Reason = "second"
	second, err := a.Issue(background(), 1, At(2), signed)
	require.NoError(t, err)
	for _, r := range []issue.Revision{first, second} {
		digits := strings.TrimPrefix(r.PlanDigest, drafts.DigestName)[:12]
		for _, typed := range []string{digits, strings.ToUpper(digits[:6] + " " + digits[6:])} {
			items, total, err := a.List(background(), Query{Text: typed, Limit: 5})
			require.NoError(t, err)
			require.Equal(t, 1, total)
			require.Len(t, items, 1)
			assert.Equal(t, ID(1), items[0].ID)
			assert.Equal(t, r.Letter, items[0].Asked)
			assert.Equal(t, "B", items[0].Revision)
		}
	}
	items, _, err := a.List(background(), Query{Text: "decade facade 11", Limit: 5})
	require.NoError(t, err)
	require.Len(t, items, 1, "words that could be digits are words all the same")
	assert.Equal(t, ID(2), items[0].ID)
	assert.Empty(t, items[0].Asked)
	_, total, err := a.List(background(), Query{Text: "000000000000", Limit: 5})
	require.NoError(t, err)
	assert.Zero(t, total)
}
