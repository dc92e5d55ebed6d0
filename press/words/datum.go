package words

import (
	"unicode/utf8"

	"ramplan/press"
)

// longName is from how many characters on a name of a row does not go into a
// sentence.
const longName = 40

// Datum says in a plan's own words from where its seated heights are measured.
func (say Printer) Datum(p *press.Plan) string {
	under := ""
	for _, row := range p.Parts {
		switch {
		case !row.Datum:
		case under != "":
			return "the datum"
		default:
			under = row.Name
		}
	}
	switch {
	case under == "":
		return "the nest"
	case utf8.RuneCountInString(under) > longName:
		return "the datum"
	}
	return "the datum face of “" + under + "”"
}

// SeatedHeight names what a height of this plan is, so that nobody takes it for a
// reading of the ram.
func (say Printer) SeatedHeight(p *press.Plan) string { return "seated height above " + say.Datum(p) }
