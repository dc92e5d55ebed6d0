package press

import (
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func example(t testing.TB) *Plan {
	t.Helper()
	data, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := Decode(data)
	require.Empty(t, ps)
	return p
}

func TestDraftKeepsTheDigest(t *testing.T) {
	p := example(t)
	back, ps := p.Draft().Check()
	require.Empty(t, ps)
	assert.Equal(t, p.Digest(), back.Digest())
	again, ps := Decode(p.JSON())
	require.Empty(t, ps)
	assert.Equal(t, p.Digest(), again.Digest())
	t.Log(p.Digest())
	d := &Draft{}
	_, ps = d.Check()
	for _, q := range ps {
		t.Log(q)
	}
	d.Set("joint.kind", "interference")
	d.Set("parts[1].name", "x")
	d.Set("window", "{}")
	d.Set("joint.hole[1]", "5")
	d.Set("ram.stroke", "abc")
	d.Set("ram.curve.points[1][0]", "1e400")
	_, ps = d.Check()
	for _, q := range ps {
		t.Log(q)
	}
}

func TestShow(t *testing.T) {
	r := Evaluate(example(t))
	r.Faults = r.Faults[:0]
	data, err := json.MarshalIndent(r, "", " ")
	require.NoError(t, err)
	t.Log(string(data))
}

func BenchmarkEvaluate(b *testing.B) {
	p := example(b)
	b.ReportAllocs()
	for b.Loop() {
		Evaluate(p)
	}
}
