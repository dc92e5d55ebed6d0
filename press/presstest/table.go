package presstest

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"testing"
)

// Row is one line of a table, by column name. Columns are asked for with Text,
// Number and Empty, each of which fails the test when there is no such column.
type Row struct {
	t     testing.TB
	table string
	line  int
	cells map[string]string
}

// Read returns the rows of testdata/published/NAME.csv. It fails the test when
// the file cannot be read or has no rows.
func Read(t testing.TB, name string) []Row {
	t.Helper()
	f, err := os.Open(filepath.Join(Folder(t), "published", name+".csv"))
	if err != nil {
		t.Fatalf("presstest: %v", err)
	}
	defer f.Close()
	records, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatalf("presstest: table %s: %v", name, err)
	}
	if len(records) < 2 {
		t.Fatalf("presstest: table %s has no rows", name)
	}
	var rows []Row
	for i, record := range records[1:] {
		cells := make(map[string]string)
		for k, column := range records[0] {
			cells[column] = record[k]
		}
		rows = append(rows, Row{t: t, table: name, line: i + 2, cells: cells})
	}
	return rows
}

// Find returns the one row of a table whose columns have the given texts,
// named in pairs: column, text, column, text.
func Find(t testing.TB, rows []Row, pairs ...string) Row {
	t.Helper()
	var found []Row
	for _, r := range rows {
		match := true
		for pair := range slices.Chunk(pairs, 2) {
			match = match && r.Text(pair[0]) == pair[1]
		}
		if match {
			found = append(found, r)
		}
	}
	if len(found) != 1 {
		t.Fatalf("presstest: %d rows match %q, want 1", len(found), pairs)
	}
	return found[0]
}

// Text is a cell as it stands.
func (r Row) Text(column string) string {
	r.t.Helper()
	cell, ok := r.cells[column]
	if !ok {
		r.t.Fatalf("presstest: table %s has no column %q", r.table, column)
	}
	return cell
}

// Empty says whether a cell is empty.
func (r Row) Empty(column string) bool {
	r.t.Helper()
	return r.Text(column) == ""
}

// Number is a cell as a number.
func (r Row) Number(column string) float64 {
	r.t.Helper()
	v, err := strconv.ParseFloat(r.Text(column), 64)
	if err != nil || !finite(v) {
		r.t.Fatalf("presstest: table %s, line %d, column %q: %q is not a number", r.table, r.line, column, r.Text(column))
	}
	return v
}

// Folder returns the folder testdata at the root of the module, found from the
// working directory, which for a test is the folder of its package.
func Folder(t testing.TB) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatalf("presstest: %v", err)
	}
	for ; dir != filepath.Dir(dir); dir = filepath.Dir(dir) {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return filepath.Join(dir, "testdata")
		}
	}
	t.Fatal("presstest: no go.mod above the working directory")
	return ""
}
