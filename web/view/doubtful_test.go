package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestReadAs holds which figures are doubtful, and what is said of them to what
// the plan itself takes them for.
func TestReadAs(t *testing.T) {
	field, _ := press.FieldAt("station.nest")
	for text, want := range map[string]string{
		"1,200": "1.2", " 140,125 ": "140.125", "12,000": "12", "-1,250": "-1.25", "−1,250": "-1.25", "+2,500": "2.5", "1234,500": "1234.5",
		"1.200": "", "0,125": "", "1,20": "", "1,2000": "", "1,200,000": "", "1,200.5": "", "1200": "", "": "", "1,2oo": "", "1,200 mm": "1.2", "1,200 in": "",
	} {
		got := readAs(field, text)
		if want == "" {
			assert.Empty(t, got, text)
			continue
		}
		assert.Equal(t, "read as "+want, got, text)
		p, _ := evaluated(t, example(t))
		d := p.Draft()
		d.Set("station.nest", text)
		plan, faults := d.Check()
		require.Empty(t, faults, text)
		read, _ := plan.Draft().Get("station.nest")
		assert.Equal(t, read, strings.TrimPrefix(got, "read as "), text)
	}
	name, _ := press.FieldAt("title.name")
	assert.Empty(t, readAs(name, "1,200"), "a text is no figure")
}

// TestReadAsBeside wants it beside the field, in rows too.
func TestReadAsBeside(t *testing.T) {
	f := newForm(Take([]press.Entry{{Path: "station.stiffness", Text: "18,000"}, {Path: "parts[0].nominal", Text: "1,200"}, {Path: "ram.curve.points[0][1]", Text: "1,200"}}, nil), nil)
	got := inputs(f.page())
	assert.Equal(t, "read as 18", got["station.stiffness"].ReadAs)
	assert.Equal(t, "read as 1.2", got["parts[0].nominal"].ReadAs)
	assert.Equal(t, "force read as 1.2", got["ram.curve.points[0][1]"].ReadAs)
	assert.Empty(t, got["station.nest"].ReadAs)
}

func TestCounted(t *testing.T) {
	f := newForm(Typed{Parked: make([]press.Entry, 3)}, nil)
	assert.Contains(t, f.parked(), ": 3 entries.")
	f.typed.Parked = f.typed.Parked[:1]
	assert.Contains(t, f.parked(), ": 1 entry.")
}
