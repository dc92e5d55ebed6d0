package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestCatalogueSaysWhoNeverComesToThePush: parts that are met in the approach are
// in none of its rows.
func TestCatalogueSaysWhoNeverComesToThePush(t *testing.T) {
	assert.NotContains(t, CatalogueLead(press.Evaluate(example(t, nil))), "in the approach")
	r := press.Evaluate(example(t, changes{"window.approach_end": "109.5"}))
	assert.Contains(t, CatalogueLead(r), PPM(r.Risk.EarlyContactPPM)+" of all parts are met in the approach")
}
