package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestSeenShare: rounded, by hand; in ppm below 1 %.
func TestSeenShare(t *testing.T) {
	for p, want := range map[float64]string{
		0: "0", 1: "100\u202f%", 0.0015845: "1600\u202fppm", 0.000465: "470\u202fppm", 0.985646: "98.6\u202f%", 0.9997: "99.97\u202f%", 0.25: "25\u202f%", 0.0881: "8.8\u202f%",
	} {
		assert.Equal(t, want, (Printer{}).SeenShare(p), "%v", p)
	}
}
