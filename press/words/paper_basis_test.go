package words

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestBasisHasEveryField: every field of the table that a plan has stands on the page
// with its unit, and a default is called one. The table itself says which there are.
func TestBasisHasEveryField(t *testing.T) {
	for _, name := range []string{"example-plan", "pivot-pin", "rain-gauge-lid"} {
		p := fromExample(t, name)
		table := paperOf(t, "basis", p)
		for _, e := range press.Evaluate(p).Stated() {
			if e.Field.Kind == press.Rows {
				continue
			}
			found := false
			for _, row := range table.Rows {
				of, every := say.placeOf(e.Path), listOf(e.Path)+", every row"
				if (row[0] == of || row[0] == every) && row[1] == e.Field.Label {
					found = true
					if f, number := e.Value.(float64); number {
						assert.Equal(t, Full(f), row[2], e.Path)
						assert.Equal(t, e.Field.Unit, strings.Replace(row[3], none, "", 1), e.Path)
					}
					assert.Equal(t, e.From == press.FromDefault && e.Value != "", row[4] == "default", e.Path)
				}
			}
			assert.True(t, found, "%s: %s", name, e.Path)
		}
	}
}

// listOf is listLabel for a path that may lie in no list.
func listOf(path string) string {
	if _, _, in := rowOf(path); !in {
		return ""
	}
	return listLabel(path)
}

// TestBasisSaysWhere: what was given, what stands in and what is proposed are told
// apart (by hand from the example: its window is empty, its step is not given).
func TestBasisSaysWhere(t *testing.T) {
	all := allOf(paperOf(t, "basis", decoded(t)))
	for _, line := range []string{
		"Ram|Stroke|150|mm|given", "Station|Position step|0.01|mm|default", "Window|Setting|66|%|proposed", "Parts, row 3|Nominal|6.4|mm|given",
		"Parts, every row|Datum|no|–|default", "Curve points, row 7|Force|2620|N|given", "Joint|Hub expansion|–|–|not given",
		"Joint|Hole, lower deviation|0|µm|default: from the fit code", "Faults|Own faults|–|–|no rows", "Title|Notes|–|–|not given",
		"Shares of all parts|Refused although good|1600|ppm|computed; target: at most 2000" + thin + "ppm",
	} {
		assert.Contains(t, all, line)
	}
	assert.Contains(t, allOf(paperOf(t, "basis", decoded(t, `"window": {}`, `"window": {"setting": 60}`))), "Window|Setting|60|%|by hand")

	data, err := os.ReadFile("../../testdata/plans/derived/20.json") // its ends are not known
	require.NoError(t, err)
	unknown, faults := press.Decode(data)
	require.Empty(t, faults)
	assert.Contains(t, allOf(paperOf(t, "basis", unknown)), "Accepted, of wrong height|–|–|")
	assert.Contains(t, allOf(paperOf(t, "basis", unknown)), "no proposal")
}

// TestSharesAddUp: what is accepted and what is refused are all parts together.
// By hand: 90 % within the drawing, 2 % of all good and refused, 1 % bad and accepted.
func TestSharesAddUp(t *testing.T) {
	consumer, producer := 10000.0, 20000.0
	risk := press.Risk{ConformingShare: 0.9, ConsumerPPM: &consumer, ProducerPPM: &producer}
	share, known := risk.Accepted()
	assert.True(t, known)
	assert.InDelta(t, 0.89, share, 1e-12)
	_, known = (&press.Risk{}).Accepted()
	assert.False(t, known)
}

// TestLongTextsFindRoom: nothing of a long text is lost, and no cell is higher than a
// page.
func TestLongTextsFindRoom(t *testing.T) {
	long := strings.Repeat("unbroken", 40) + "\n\nsecond line\r\n" + strings.Repeat("word after word ", 60)
	cut := pieces(long)
	require.Greater(t, len(cut), 5)
	for _, piece := range cut {
		assert.LessOrEqual(t, len([]rune(piece)), 160)
		assert.NotContains(t, piece, "\n")
	}
	bare := func(s string) string { return strings.NewReplacer(" ", "", "\n", "", "\r", "", "/", "").Replace(s) }
	assert.Equal(t, bare(long), bare(strings.Join(cut, "")))
	assert.Equal(t, []string{""}, pieces(""))
}

// TestBasisOfAnIssue: the names on the page are those of the title block, whether the plan
// gives names or not.
func TestBasisOfAnIssue(t *testing.T) {
	for _, p := range []*press.Plan{decoded(t), decoded(t, `"number": "WS-210"`, `"number": "WS-210", "prepared_by": "P. Planner"`)} {
		table := paperOf(t, "basis", p).SignedBy(Signed{Prepared: "A. Anders", Checked: "B. Brandt"})
		all := allOf(table)
		assert.Contains(t, all, "Title|Prepared by|A. Anders|–|named at issue")
		assert.Contains(t, all, "Title|Checked by|B. Brandt|–|named at issue")
		assert.Contains(t, all, "Title|Approved by|–|–|named at issue")
		assert.NotContains(t, all, "Planner")
	}
}
