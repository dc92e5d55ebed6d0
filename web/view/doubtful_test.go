package view

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

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
