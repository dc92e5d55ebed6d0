package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestSameMeaning: two texts are the same when the check reads them as the same
// (derived from what the check takes).
func TestSameMeaning(t *testing.T) {
	for _, c := range []struct {
		path, a, b string
		same       bool
	}{
		{"ram.moving_mass", "3.5", "3,5", true},
		{"ram.moving_mass", "3.5", " 3,50 kg", true},
		{"ram.moving_mass", "3.5", "3.6", false},
		{"ram.moving_mass", "3.5", "3.5 g", false},       // another unit is no figure
		{"ram.stroke", "150", "150 mm", true},            //
		{"ram.stroke", "150", "1.5e2", true},             //
		{"ram.stroke", "1,200", "1.2", true},             // a comma is a decimal comma
		{"ram.stroke", "1,200", "1200", false},           //
		{"ram.stroke", "1\u202f200", "1200", false},      // groups are not read
		{"ram.stroke", "abc", "abc", true},               //
		{"ram.stroke", "abc", "abd", false},              //
		{"ram.stroke", "2e9", "2000000000", true},        // out of range, yet one figure
		{"station.home", "−0", "0", true},                // a true minus sign
		{"station.home", "−14 mm", "-14.00", true},       //
		{"station.home", "", "  ", true},                 // neither is given
		{"station.home", "", "0", false},                 // the default, typed out
		{"ram.repeatability", "0.02", "", false},         //
		{"ram.direction", "down", " down ", true},        //
		{"ram.direction", "down", "up", false},           //
		{"ram.direction", "down", "", false},             // the default, typed out
		{"parts[1].insert", "true", "true ", true},       //
		{"parts[1].insert", "false", "", false},          //
		{"parts[2]", "{}", " {} ", true},                 //
		{"window", "{}", "", false},                      //
		{"joint.fit", "H7/s6", " H7 / s6 ", true},        //
		{"joint.fit", "H7/s6", "h7/s6", false},           // case matters
		{"title.name", "Sleeve", "Sleeve ", false},       // a text is meant to the letter
		{"title.name", "3.5", "3,5", false},              //
		{"joint.hole[0]", "18 μm", "18,0 µm", true},      // the Greek letter
		{"ram.curve.points[3][1]", "900 N", "900", true}, //
		{"no.such.field", "1", "1", true},                //
		{"no.such.field", "1", "1.0", false},             // nobody reads it
	} {
		assert.Equal(t, c.same, SameMeaning(c.path, c.a, c.b), "%s: %q and %q", c.path, c.a, c.b)
		assert.Equal(t, c.same, SameMeaning(c.path, c.b, c.a), "%s: %q and %q", c.path, c.b, c.a)
	}
}

// TestSameMeaningIsSameDigest: what is the same here leads to the same plan.
func TestSameMeaningIsSameDigest(t *testing.T) {
	d := exampleDraft(t)
	plan, faults := d.Check()
	assert.Empty(t, faults)
	for i, e := range d.Entries {
		f, ok := FieldAt(e.Path)
		if !ok || f.Kind != Number {
			continue
		}
		d.Entries[i].Text = " " + commaOf(e.Text) + " " + f.Unit
		assert.True(t, SameMeaning(e.Path, e.Text, d.Entries[i].Text), "%s: %q", e.Path, d.Entries[i].Text)
	}
	other, faults := d.Check()
	assert.Empty(t, faults)
	assert.Equal(t, plan.Digest(), other.Digest())
}

func commaOf(figure string) string {
	out := []rune(figure)
	for i, r := range out {
		if r == '.' {
			out[i] = ','
		}
	}
	return string(out)
}
