package press

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"
)

// Whatever stands in probe and sequence of a plan is refused with a reason, or leads to a
// result; what is taken goes through a draft and back without a change.
func FuzzSteps(f *testing.F) {
	plan := example(f).JSON()
	end := bytes.LastIndexByte(plan, '}')
	run := exampleRun(f)
	f.Add(run.doc.At("sequence").JSON())
	f.Add([]byte(`{"steps":[{"kind":"press"},{"kind":"shift","by":-5,"times":3,"pause":0.1,"zone":[90,100]},{"kind":"move","to":0,"hand_over":true}]}`))
	f.Add([]byte(`{"steps":[{"kind":"shift","by":1e-9,"speed":1e9,"accel":1e-9,"decel":1e9},{"kind":"press"}],"hold":{"step":0,"at":0,"time":1}}`))
	f.Add([]byte(`{"relative_from":"target","station_zone":[1,2],"steps":[{"kind":"probe"},{"kind":"press"}]}`))
	f.Fuzz(func(t *testing.T, sequence []byte) {
		for _, probe := range []string{``, `,"probe":{"use":true,"zone_live":true}`} {
			data := append(append(append([]byte(nil), plan[:end]...), (probe+`,"sequence":`)...), append(append([]byte(nil), sequence...), '}')...)
			p, ps := Decode(data)
			if p == nil {
				require.NotEmpty(t, ps)
				continue
			}
			q, ps := p.Draft().Check()
			require.Empty(t, ps)
			require.Equal(t, string(p.Canonical()), string(q.Canonical()))
			_, err := Evaluate(p).JSON(false)
			require.NoError(t, err)
		}
	})
}
