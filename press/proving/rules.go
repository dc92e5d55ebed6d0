package proving

import (
	"ramplan/press"
	"ramplan/press/strict"
)

// A given set tells which columns of a kind a row has, right or wrong, by their place in
// the table of the kind.
type given uint16

func (g given) has(column int) bool { return column >= 0 && g&(1<<column) != 0 }

// A slip is a fault of one row that shows only beside other entries.
type slip struct {
	row     int
	column  *Field
	code    string
	message string
}

// rules are what the rows of a study must keep together.
type rules struct {
	study  *Study
	kind   table
	given  []given // of each row
	sound  []given // the same, without cells in which something is wrong
	absent given   // columns that were missed already, and are not missed row by row
	height bool    // the study itself has a height, right or wrong
	slips  []slip
}

// check tells every fault of the rows that is not one of a single cell.
func (c *rules) check() []slip {
	for row := range c.study.Rows {
		for i, f := range c.kind.columns {
			if f.Required && !c.given[row].has(i) && !c.absent.has(i) {
				c.miss(row, i, f.Allowed())
			}
		}
		switch c.study.Kind {
		case Samples:
			c.sampleHeight(row)
		case Stiffness:
			c.blockHeight(row)
		}
	}
	if c.study.Kind == Stiffness {
		c.forces()
	}
	c.times()
	return c.slips
}

// column is the place of a column in the table, or -1.
func (c *rules) column(name string) int {
	for i, f := range c.kind.columns {
		if f.Name == name {
			return i
		}
	}
	return -1
}

func (c *rules) miss(row, column int, why string) {
	c.slips = append(c.slips, slip{row, c.kind.columns[column], press.CodeRequired, "not given; " + why})
}

// sampleHeight wants the height of every sample that is one.
func (c *rules) sampleHeight(row int) {
	sample, height := c.column("sample"), c.column("height")
	name := c.study.Rows[row].Sample
	if c.sound[row].has(sample) && name != NoInsert && name != BareNest && !c.given[row].has(height) {
		c.miss(row, height, "the height of a sample is needed, unless it is "+NoInsert+" or "+BareNest)
	}
}

// blockHeight wants a height for every push, here or for the study.
func (c *rules) blockHeight(row int) {
	if height := c.column("height"); !c.height && !c.given[row].has(height) && !c.absent.has(height) {
		c.miss(row, height, "the height of the block is needed, here or for the study")
	}
}

// forces wants a force in all rows or in none, and a setting where there is no force.
func (c *rules) forces() {
	force, setting := c.column("force"), c.column("setting")
	measured := c.any(force)
	for row := range c.study.Rows {
		switch {
		case measured && !c.given[row].has(force):
			c.miss(row, force, "other rows have a force: it is needed in all rows or in none")
		case !measured && !c.given[row].has(force) && !c.given[row].has(setting) && !c.absent.has(setting) && !c.absent.has(force):
			c.miss(row, setting, "a setting is needed where no force was measured")
		}
	}
}

// times wants a time in all rows or in none, and no time twice.
func (c *rules) times() {
	column := c.column("time")
	if !c.any(column) {
		return
	}
	before := make(map[float64]int, len(c.study.Rows))
	for row, r := range c.study.Rows {
		if !c.given[row].has(column) {
			c.miss(row, column, "other rows have a time: it is needed in all rows or in none")
			continue
		}
		if !c.sound[row].has(column) {
			continue
		}
		if _, twice := before[*r.Time]; twice {
			c.slips = append(c.slips, slip{row, c.kind.columns[column], press.CodeConflict, "found " + strict.PlainNumber(*r.Time) + ", as in a row before; a time of its own is needed"})
			continue
		}
		before[*r.Time] = row
	}
}

// any tells whether some row has the column, and nothing is wrong with it there.
func (c *rules) any(column int) bool {
	for _, g := range c.sound {
		if g.has(column) {
			return true
		}
	}
	return false
}
