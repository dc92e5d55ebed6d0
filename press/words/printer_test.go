package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// say writes metric English for the tests.
var say Printer

// inch is another system of units, as a page could ask for it: 1 in = 25.4 mm exactly, and
// 1 lbf = 4.448 221 615 260 5 N (international yard and pound agreement, 1959; standard gravity).
var inch = Printer{Units: Units{
	Length:   Scale{Unit: "in", PerOne: 1 / 25.4, Digits: 2},
	Velocity: Scale{Unit: "in/s", PerOne: 1 / 25.4, Digits: 2},
	Force:    Scale{Unit: "lbf", PerOne: 1 / 4.4482216152605},
}}

// TestPrinterUnits holds that another system of units needs nothing but another printer:
// positions, rounded limits and forces follow, and what has no other unit stays.
func TestPrinterUnits(t *testing.T) {
	var p press.Plan
	p.Station.PositionStep = 0.01
	pos := inch.Positions(&p)
	// Computed by hand from the two factors.
	assert.Equal(t, "4.5307\u202fin", pos.At(115.08))
	assert.Equal(t, "4.5307", pos.Bare(115.08))
	assert.Equal(t, "4.5308\u202fin", pos.Above(115.081))
	assert.Equal(t, "4.5307\u202fin", pos.Below(115.081))
	assert.Equal(t, "4.5307 to 4.5315\u202fin", pos.between(115.08, 115.10))
	assert.Equal(t, "225\u202flbf", inch.Force(1000))
	assert.Equal(t, "1000\u202fN", say.Force(1000))
	assert.Equal(t, "40\u202f%", inch.Setting(40))
}

// TestPrinterReachesSentences: the printer that a sentence is asked of writes all of its
// figures, down to those of a finding and of a page beside the sheet.
func TestPrinterReachesSentences(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	texts := []string{inch.Headline(p, r)}
	for name := range map[string]bool{"proving": true, "shift": true, "samples": true} {
		table, ok := inch.Paper(name, p, r)
		assert.True(t, ok)
		texts = append(texts, table.Lead)
		texts = append(texts, table.Notes...)
		for _, row := range table.Rows {
			texts = append(texts, row...)
		}
	}
	for _, x := range texts {
		assert.NotRegexp(t, `\d\x{202f}(mm|mm/s|N)(\s|[.,;)]|$)`, x)
	}
}
