package words

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestSafetySentences: what can hurt is said in the product and on every sheet, on the
// page of set-up, and in the README.
func TestSafetySentences(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	p := example(t, nil)
	setUp := strings.Join(flat(paperOf(t, "proving", p)), "\n")
	for name, text := range map[string]string{"product and sheet": strings.Join(Cautions, "\n"), "README": strings.Join(strings.Fields(string(readme)), " ")} {
		for _, want := range []string{
			"even at the lowest setting", "return, homing and jogging crush", "freed with the power off", "emergency stop holds the ram or lets it go",
			"stopping time", "ISO 13855", "two-hand control protects the one person", "ISO 13851", "burst or jump out", "shield", "load cell can kick out", "centre it and fix it", "forced input is removed", "signed for",
		} {
			assert.Contains(t, text, want, name)
		}
	}
	for _, want := range []string{
		"homing and jogging crush", "freed with the power off", "emergency stop holds the ram or lets it go", "stopping time is measured", "ISO 13855", "ISO 13851",
		"centred and fixed so that it cannot kick out", "burst or jump out", "Remove every forced input", "signed by both",
	} {
		assert.Contains(t, setUp, want)
	}
	assert.Contains(t, strings.Join(CardCautions, " "), "going back too")
}
