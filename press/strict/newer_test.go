package strict

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestNewerFormats(t *testing.T) {
	for _, c := range []struct {
		got, want string
		newer     bool
	}{
		{"ramplan.plan/2", "ramplan.plan/1", true},
		{"ramplan.plan/10", "ramplan.plan/1", true},
		{"ramplan.plan/1", "ramplan.plan/1", false},
		{"ramplan.plan/11", "ramplan.plan/10", true},
		{"ramplan.plan/9", "ramplan.plan/10", false},
		{"ramplan.plan/10", "ramplan.plan/10", false},
		{"ramplan.draft/2", "ramplan.plan/1", false},
		{"ramplan.plan/", "ramplan.plan/1", false},
		{"ramplan.plan", "ramplan.plan/1", false},
		{"ramplan.plan/2x", "ramplan.plan/1", false},
	} {
		assert.Equal(t, c.newer, newer(c.got, c.want), "%s beside %s", c.got, c.want)
	}
}
