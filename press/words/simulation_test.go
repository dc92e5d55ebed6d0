package words

import (
	"context"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/simulate"
)

// Everything that is said has a sentence, with its figures in it.
func TestSayings(t *testing.T) {
	parts, under, closed, simulated := int64(1000000), 3.0, 1584.49, 120.5
	s := &press.Simulation{Says: []press.Saying{
		{Code: press.TailAssumed}, {Code: press.TailHard}, {Code: press.NotInModel},
		{Code: press.CountedNone, Parts: &parts, UnderPPM: &under},
	}}
	for _, cause := range []string{press.ByStalls, press.ByLoose, press.ByEarly, press.ByForce} {
		s.Says = append(s.Says, press.Saying{Code: press.WhyDifferent, ClosedPPM: &closed, PPM: &simulated, Cause: cause})
	}
	ExplainSimulation(s)
	seen := map[string]bool{}
	for _, one := range s.Says {
		assert.True(t, strings.HasSuffix(one.Message, "."), one.Message)
		assert.False(t, seen[one.Message], one.Message)
		seen[one.Message] = true
	}
	assert.Equal(t, "None in 1\u202f000\u202f000 simulated parts: under 3.00\u202fppm with 95\u202f% confidence, if the model holds.", s.Says[3].Message)
	assert.Contains(t, s.Says[4].Message, "The closed form says 1580\u202fppm, the simulation 121\u202fppm")
}

// A simulated share is never rounded to all or to nothing.
func TestSimulatedPPM(t *testing.T) {
	for x, want := range map[float64]string{
		0: "0", 1e-9: "<\u202f0.0001", 0.00360488: "0.00360", 1.31307: "1.31", 15917: "15\u202f900", 1e6: "1\u202f000\u202f000",
		999999.99: ">\u202f999\u202f999", 998429.4: "998\u202f429", 999998.69: "999\u202f999",
	} {
		assert.Equal(t, want, SimulatedPPM(x), "%v", x)
	}
}

// The tables have a row for every truth and every named share, in their order.
func TestSimulationText(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, problems := press.Decode(data)
	require.Empty(t, problems)
	r := press.Evaluate(p)
	s := r.Simulate(context.Background(), press.SimulationOptions{Parts: 1000, Seed: 1, Precision: 1})
	text := SimulationText(r, s)
	rows := map[string]int{}
	for _, table := range text {
		for _, row := range table.Rows {
			assert.Len(t, row, len(table.Head), table.Title)
			rows[row[0]]++
		}
	}
	for i, name := range NamedShares {
		assert.Positive(t, rows[name], name)
		assert.NotEmpty(t, name, simulate.Share(i))
	}
	assert.Len(t, text[1].Rows, 1+len(Truths))
	assert.Contains(t, strings.Join(text[0].Notes, " "), "16 × 512 points")

	s.Complete = false
	assert.Contains(t, strings.Join(SimulationText(r, s)[0].Notes, " "), "Stopped before the end")
}
