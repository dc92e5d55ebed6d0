package curves_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/curves"
)

// TestHeading holds which column is which, by the heading. Worked out by hand.
func TestHeading(t *testing.T) {
	straight, turned := []curves.Point{{10, 95}, {20, 200}}, []curves.Point{{95, 10}, {200, 20}}
	for head, c := range map[string]struct{ named, forceFirst bool }{
		"Force;Setting":                     {true, true},
		"Setting;Force":                     {true, false},
		"FORCE\tCURRENT":                    {true, true},
		"Push force (N), motor current (%)": {true, true},
		"N;%":                               {true, true},
		"(%)\t(N)":                          {true, false},
		"Force in N Setting in %":           {true, true},
		"Force limit, %;Force, N":           {true, false}, // the units say more than the words
		"Force limit % Force N":             {true, false},
		"# measured 2026\nForce;Setting":    {true, true},
		"Force;Setting\n%;N":                {true, false}, // the line beside the figures counts
		"Force;as measured":                 {},            // the other column stays open
		"Force of the force;Force":          {},
		"Force at the current;Force":        {}, // the first names both
		"a;b":                               {},
		"norm;percentile":                   {}, // words, not letters in words
	} {
		t.Run(head, func(t *testing.T) {
			table, faults := curves.ReadColumns(head + "\n10;95\n20;200")
			assert.Empty(t, faults)
			want := straight
			if c.forceFirst {
				want = turned
			}
			assert.Equal(t, c.named, table.Heading != "")
			assert.Equal(t, c.forceFirst, table.ForceFirst)
			assert.Equal(t, want, table.Points)
		})
	}
}

// TestHeadingOfFaults: lines behind a heading are judged in its order.
func TestHeadingOfFaults(t *testing.T) {
	table, faults := curves.ReadColumns("Force;Setting\n95 N;10 %\n10 %;95 N\n7\n200;20")
	assert.Equal(t, []curves.Point{{10, 95}, {20, 200}}, table.Points)
	assert.Equal(t, []curves.LineError{
		{Line: 3, Text: "10 %;95 N", Message: `setting "95N": settings in %, forces in newtons`},
		{Line: 4, Text: "7", Message: "1 column, want 2: force and setting"},
	}, faults)
	_, faults = curves.ReadColumns("Setting %;Force kN\n10;0.095")
	assert.Equal(t, []curves.LineError{{Line: 1, Text: "Setting %;Force kN", Message: `the heading gives the unit "kN": settings in %, forces in newtons`}}, faults)
}

func TestFalling(t *testing.T) {
	for text, want := range map[string]bool{
		"": false, "10 95": false, "20 200\n10 95": true, "10 95\n20 200": false, "30 300\n10 95\n20 200": false, "20 200\n20 200": false,
	} {
		table, _ := curves.ReadColumns(text)
		assert.Equal(t, want, table.Falling(), text)
	}
}
