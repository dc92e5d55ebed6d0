package strict

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Members of an object are found the same way in a small one and in a large one.
func TestManyKeysAreFound(t *testing.T) {
	for _, n := range []int{1, manyKeys - 1, manyKeys, manyKeys + 1, 5 * manyKeys} {
		o := &Node{Shape: Object}
		for i := range n {
			assert.Nil(t, o.Get(fmt.Sprint(i)))
			o.Set(fmt.Sprint(i), &Node{Shape: Number, Num: float64(i)})
			for k := range i + 1 {
				require.Equal(t, float64(k), o.Get(fmt.Sprint(k)).Num)
			}
		}
	}
}
