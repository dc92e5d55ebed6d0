package proving

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

func typedRows(rows ...[]string) *proving.Typed {
	return &proving.Typed{Kind: proving.LoadCell, Columns: []string{"setting", "force"}, Rows: rows}
}

// TestBlock: a pasted block goes to the right and down from its cell, over what stood there;
// what it was put into stays as it was (by hand).
func TestBlock(t *testing.T) {
	was := typedRows([]string{"10", "200"}, []string{"20", "500"})
	is, n := WithBlock(was, 1, 0, "30\t900\r\n40\t1300,5\n\n")
	assert.Equal(t, 2, n)
	assert.Equal(t, [][]string{{"10", "200"}, {"30", "900"}, {"40", "1300,5"}}, is.Rows)
	assert.Equal(t, [][]string{{"10", "200"}, {"20", "500"}}, was.Rows)
	is, _ = WithBlock(was, 3, 1, "7")
	assert.Equal(t, [][]string{{"10", "200"}, {"20", "500"}, {"", ""}, {"", "7"}}, is.Rows, "rows between are blank")
	is, _ = WithBlock(was, 0, 1, "1\t2")
	assert.Equal(t, "1 2", is.Rows[0][1], "a cell too many is not lost")
	is, _ = WithBlock(was, 0, 0, "1;2,5")
	assert.Equal(t, []string{"1", "2,5"}, is.Rows[0], "semicolons stand between cells where no tab does")
}

func TestRowsAndColumns(t *testing.T) {
	was := typedRows([]string{"10", "200"}, []string{"20", "500"}, []string{"", ""}, []string{"30", ""})
	assert.Equal(t, [][]string{{"10", "200"}, {"20", "500"}}, func() [][]string {
		out := WithoutRow(was, 3)
		return out.Rows
	}(), "blank rows behind the last are none")
	assert.Len(t, WithoutRow(was, 9).Rows, 4)
	wide := WithColumn(was, "time")
	require.NotNil(t, wide)
	assert.Equal(t, []string{"setting", "force", "time"}, wide.Columns)
	assert.Len(t, wide.Rows[0], 3)
	assert.Equal(t, wide, WithColumn(wide, "time"), "once is enough")
	assert.Nil(t, WithColumn(was, "arrival"), "a study of this kind has none")
}

// TestTableInto: a table that is read into a study goes behind its rows, column by column, and
// one of another kind is refused.
func TestTableInto(t *testing.T) {
	is, n, why := WithTable(typedRows([]string{"10", "200"}), "force;setting\n500;20\n", "a.csv")
	require.Empty(t, why)
	assert.Equal(t, 1, n)
	assert.Equal(t, [][]string{{"10", "200"}, {"20", "500"}}, is.Rows)
	is, _, why = WithTable(typedRows(), "# kind: master\n# taken_at: 2026-11-20\n# height: 40\nreading\n100\n", "a.csv")
	assert.Nil(t, is)
	assert.Contains(t, why[0], "of the kind Master")
	is, _, why = WithTable(typedRows(), "what;is;this\n1;2;3\n", "a.csv")
	if is == nil {
		assert.NotEmpty(t, why)
	}
}

// TestLeaves: a leaf has 200 rows, the last one more while it is typed into (by hand).
func TestLeaves(t *testing.T) {
	for _, c := range []struct{ from, total, first, end int }{
		{0, 0, 0, 0}, {0, 200, 0, 200}, {0, 201, 0, 200}, {200, 201, 200, 201}, {0, 10_000, 0, 200}, {9800, 10_000, 9800, 10_000}, {600, 1000, 600, 1000}, {-3, 10, 0, 10}, {99, 10, 0, 10},
	} {
		first, end := LeafOf(c.from, c.total)
		assert.Equal(t, []int{c.first, c.end}, []int{first, end}, "from %d of %d", c.from, c.total)
	}
}

// TestEveryKindHasItsFields: each field that the page asks for, and each column that it offers,
// is one of the field table, and none of the table is left out.
func TestEveryKindHasItsFields(t *testing.T) {
	for _, kind := range proving.Kinds {
		asked := map[string]bool{"kind": true}
		for _, n := range append(append([]string{}, heads[kind].asked...), heads[kind].folded...) {
			asked[n] = true
			_, known := proving.FieldAt(kind, n)
			assert.True(t, known, "%s has no %s", kind, n)
		}
		for _, f := range proving.Heads(kind) {
			assert.True(t, asked[f.Name], "%s: %s is not asked for", kind, f.Name)
		}
		offered := map[string]bool{}
		for _, n := range columns[kind] {
			offered[n] = true
			_, known := proving.FieldAt(kind, "rows[0]."+n)
			assert.True(t, known, "%s has no column %s", kind, n)
		}
		for _, f := range proving.Columns(kind) {
			assert.True(t, offered[f.Name], "%s: column %s is not offered", kind, f.Name)
		}
	}
}
