package archive

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	lib "modernc.org/sqlite/lib"
)

// A Report is what a check of a whole archive found.
type Report struct {
	Plans, Binned, States, Revisions, Rams, Trainings int // Plans counts those in the bin too
	Studies, Checks                                   int // signed or not; of shifts
	Faults                                            []Fault
	NotTaken                                          []Fault // what is as it was stored, and refused by today's rules
}

// A Fault is one thing that is not as it was stored.
type Fault struct {
	Plan ID     // 0 when it belongs to none
	What string // such as "state 12", "revision B" or "the file"
	Why  string
}

func (f Fault) String() string {
	s := f.What + " " + f.Why
	if f.Plan != 0 {
		s = fmt.Sprintf("plan %d, %s", f.Plan, s)
	}
	return s
}

func (r *Report) String() string {
	parts := []string{counted(r.Plans, "plan"), counted(r.States, "state"), counted(r.Revisions, "revision")}
	if r.Rams > 0 {
		parts = append(parts, counted(r.Rams, "ram"))
	}
	if r.Trainings > 0 {
		parts = append(parts, counted(r.Trainings, "training record"))
	}
	if r.Studies > 0 {
		parts = append(parts, countedStudies(r.Studies))
	}
	if r.Checks > 0 {
		parts = append(parts, counted(r.Checks, "shift check"))
	}
	parts = append(parts, fmt.Sprintf("%d damaged", len(r.Faults)))
	if n := len(r.NotTaken); n > 0 {
		parts = append(parts, fmt.Sprintf("%d whole but not taken by today's rules", n))
	}
	return strings.Join(parts, ", ")
}

func countedStudies(n int) string {
	if n == 1 {
		return "1 study"
	}
	return fmt.Sprintf("%d studies", n)
}

func counted(n int, noun string) string {
	if n != 1 {
		noun += "s"
	}
	return fmt.Sprintf("%d %s", n, noun)
}

// Check looks at everything in the archive: the file itself, every document
// against its digest, the links of each history, the search. It reads one
// moment of the archive, while others go on writing.
func (a *Archive) Check(ctx context.Context) (*Report, error) {
	return check(ctx, a.reader(ctx), Schema())
}

// CheckFolder checks the archive in a folder, of any schema that this program
// knows.
func CheckFolder(ctx context.Context, dir string) (*Report, error) {
	path, err := fileIn(dir)
	if err != nil {
		return nil, explain(err)
	}
	return checkFile(ctx, path)
}

func checkFile(ctx context.Context, path string) (r *Report, err error) {
	path, err = filepath.Abs(path)
	if err != nil {
		return nil, err
	}
	db, schema, err := look(ctx, path)
	if err != nil {
		return nil, lookFault(err)
	}
	defer func() { err = errors.Join(err, db.Close()) }()
	return check(ctx, db, schema)
}

func check(ctx context.Context, db *sql.DB, schema int) (*Report, error) {
	tx, err := db.BeginTx(ctx, nil)
	if err != nil {
		return nil, explain(err)
	}
	defer func() { _ = tx.Rollback() }()
	c := checker{tx: tx, schema: schema}
	for _, step := range []func(context.Context) error{c.file, c.links, c.plans, c.shelf, c.rams, c.trainings, c.studies} {
		if err := step(ctx); err != nil && !c.broken(err) {
			return nil, explain(err)
		}
	}
	return &c.Report, nil
}

// A checker walks through one moment of an archive.
type checker struct {
	Report
	tx     *sql.Tx
	schema int
}

func (c *checker) fault(plan ID, what, why string, args ...any) {
	c.Faults = append(c.Faults, Fault{plan, what, fmt.Sprintf(why, args...)})
}

// broken makes a fault of an error that comes from the file being damaged; the
// rest is looked at all the same.
func (c *checker) broken(err error) bool {
	if code(err) != lib.SQLITE_CORRUPT {
		return false
	}
	c.fault(0, "the file", "cannot be read everywhere: %v", err)
	return true
}

// file asks the database about its pages, tables and the index of the search.
func (c *checker) file(ctx context.Context) error {
	return each(ctx, c.tx, "pragma integrity_check(20)", nil, func(scan scanner) error {
		var line string
		if err := scan(&line); err != nil {
			return err
		}
		if line != "ok" {
			c.fault(0, "the file", "is damaged: %s", line)
		}
		return nil
	})
}

// links asks for rows that belong to no plan.
func (c *checker) links(ctx context.Context) error {
	return each(ctx, c.tx, "pragma foreign_key_check", nil, func(scan scanner) error {
		var table, parent string
		var row, key sql.NullInt64
		if err := scan(&table, &row, &parent, &key); err != nil {
			return err
		}
		c.fault(0, "the file", "holds a %s that belongs to no %s", table, parent)
		return nil
	})
}

// shelf looks for what the search finds without a plan.
func (c *checker) shelf(ctx context.Context) error {
	return each(ctx, c.tx, "select rowid from find where rowid not in (select id from plan) limit 20", nil, func(scan scanner) error {
		var id int64
		if err := scan(&id); err != nil {
			return err
		}
		c.fault(ID(id), "the search", "finds a plan that is not there")
		return nil
	})
}

type scanner = func(...any) error

// each goes through the rows of a query.
func each(ctx context.Context, q querier, query string, args []any, do func(scanner) error) error {
	rows, err := q.QueryContext(ctx, query, args...)
	if err != nil {
		return err
	}
	defer rows.Close()
	for rows.Next() {
		if err := do(rows.Scan); err != nil {
			return err
		}
	}
	return rows.Err()
}
