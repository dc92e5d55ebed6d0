package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A draft that was issued is called by the letter that it got. By hand.
func TestAgainNamesTheDraftByItsLetter(t *testing.T) {
	assert.Equal(t, "Passed on the draft that became A. D changed the drill.", Again{Passed: true, Became: "A", Since: "D", Told: true}.String())
	assert.Equal(t, "Passed on a draft. D changed the drill.", Again{Passed: true, Since: "D", Told: true}.String())
}
