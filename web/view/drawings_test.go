package view

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press/draw"
)

// Every drawing that can be had alone has a label on the page of the sheet; the card has
// a page of its own.
func TestEveryDrawingHasALabel(t *testing.T) {
	for _, what := range draw.Names() {
		if what != "card" {
			assert.NotEmpty(t, drawingLabels[what], what)
		}
	}
}
