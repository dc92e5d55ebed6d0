package press

import (
	"fmt"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Entries of any size that the field table allows lead to a result, without a
// panic and without end.
func TestExtremeEntriesHaveAResult(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	sizes := []string{"0", "1e-300", "1e-12", "1e-6", "0.001", "1", "7", "1000", "1e6", "1e9", "-1", "-1e9", "0.49", "99.9"}
	evaluated := 0
	for _, base := range bases(t) {
		rounds := 1500
		if base.Sequence != nil { // a probe takes a hundred times as long
			rounds = 400
		}
		for range rounds {
			d := base.Draft()
			for range 1 + r.IntN(4) {
				f := Fields[r.IntN(len(Fields))]
				if path := RowPath(f.Path, r.IntN(2)); f.Kind == Number && base.Given(path) {
					d.Set(path, sizes[r.IntN(len(sizes))])
				}
			}
			p, _ := d.Check()
			if p == nil {
				continue
			}
			evaluated++
			done := make(chan any, 1)
			go func() {
				defer func() { done <- recover() }()
				r := Evaluate(p)
				if _, err := r.JSON(false); err != nil {
					panic(err)
				}
				r.Traces()
			}()
			select {
			case fault := <-done:
				require.Nil(t, fault, "%s", p.JSON())
			case <-time.After(20 * time.Second):
				require.Fail(t, "no end", "%s", p.JSON())
			}
		}
	}
	require.Greater(t, evaluated, 1000, fmt.Sprint(evaluated))
}
