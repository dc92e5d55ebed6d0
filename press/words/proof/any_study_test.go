package proof_test

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
)

// TestWhateverWasPushedIsSaid: a study that can be read is judged, and every finding of it
// has its sentence, however little or odd its pushes are.
func TestWhateverWasPushedIsSaid(t *testing.T) {
	data, err := os.ReadFile("../../../static/examples/example-plan.json")
	require.NoError(t, err)
	blocked := strings.Replace(string(data), `"max_force": 2900`, `"max_force": 900`, 1)
	require.NotEqual(t, string(data), blocked)
	var plans []*press.Result
	for _, text := range []string{string(data), blocked} {
		plan, faults := press.Decode([]byte(text))
		require.Empty(t, faults)
		plans = append(plans, press.Evaluate(plan))
	}
	rapid.Check(t, func(t *rapid.T) {
		r := plans[rapid.IntRange(0, 1).Draw(t, "plan")]
		var studies []*proving.Study
		for range rapid.IntRange(1, 3).Draw(t, "studies") {
			table := anyTable(t)
			s, lines := proving.ReadCSV([]byte(table))
			if !lines.Sound() {
				t.Skip("some random rows do not go together")
			}
			studies = append(studies, s)
		}
		a := proving.Assess(r, studies, "2026-11-28")
		proof.Words{}.Explain(r, studies, a)
		for _, j := range a.Studies {
			for _, f := range j.Findings {
				assert.NotEmpty(t, f.Message, f.Code)
				assert.NotContains(t, f.Message, "NaN", f.Code)
				assert.NotContains(t, f.Message, "Inf", f.Code)
			}
		}
		assert.True(t, json.Valid(a.JSON()))
	})
}

// anyTable draws a table of a kind: figures that hang together, figures that do not, equal
// ones and extreme ones, from one row on.
func anyTable(t *rapid.T) string {
	kind := rapid.SampledFrom(proving.Kinds[:6]).Draw(t, "kind")
	var b strings.Builder
	fmt.Fprintf(&b, "# kind: %s\n# taken_at: 2026-11-%d\n", kind, rapid.IntRange(10, 28).Draw(t, "day"))
	for _, f := range proving.Heads(kind) {
		switch {
		case f.Name == "height":
			fmt.Fprintf(&b, "# height: %v\n", rapid.SampledFrom([]float64{40, 0, 1e9}).Draw(t, f.Name))
		case f.Kind == press.Number && rapid.IntRange(0, 3).Draw(t, f.Name) == 0:
			fmt.Fprintf(&b, "# %s: %v\n", f.Name, rapid.SampledFrom([]float64{1, 66, 100}).Draw(t, f.Name))
		}
	}
	var columns []*proving.Field
	for _, f := range proving.Columns(kind) {
		if f.Required || f.Kind != press.Text && rapid.Bool().Draw(t, f.Name) || kind == proving.Samples && f.Name == "height" || kind == proving.Stiffness && f.Name == "setting" {
			columns = append(columns, f)
			if len(columns) > 1 {
				b.WriteByte(',')
			}
			b.WriteString(f.Name)
		}
	}
	scatter := rapid.SampledFrom([]float64{0, 0.003, 0.3, 1e8}).Draw(t, "scatter")
	near := rapid.SampledFrom([]float64{100, 115.15}).Draw(t, "near")
	mixed := rapid.Bool().Draw(t, "mixed")
	slope := rapid.SampledFrom([]float64{1, 0, -1}).Draw(t, "slope")
	for i := range rapid.SampledFrom([]int{1, 2, 3, 5, 12, 30, 60}).Draw(t, "rows") {
		b.WriteByte('\n')
		level := float64(i%6 + 1)
		for k, f := range columns {
			if k > 0 {
				b.WriteByte(',')
			}
			off := scatter * rapid.Float64Range(-1, 1).Draw(t, "off")
			switch f.Name {
			case "sample":
				b.WriteString(rapid.SampledFrom([]string{"missing", "empty", "tall"}).Draw(t, f.Name))
			case "arrival", "zone":
				b.WriteString(rapid.SampledFrom([]string{"on", "on", "on", "off"}).Draw(t, f.Name))
			case "condition":
				b.WriteString(rapid.SampledFrom([]string{"cold", "warm", ""}).Draw(t, f.Name))
			case "start":
				fmt.Fprint(&b, rapid.IntRange(1, 4).Draw(t, f.Name))
			case "setting":
				fmt.Fprint(&b, 10*level)
			case "force":
				fmt.Fprint(&b, math.Abs(400*level+off))
			case "reading":
				fmt.Fprint(&b, near+0.024*level*slope+off)
			case "height":
				height := 25.0
				if kind == proving.Stiffness {
					height = 40
				}
				if mixed {
					height = rapid.SampledFrom([]float64{25, 24.5, 40}).Draw(t, f.Name)
				}
				fmt.Fprint(&b, height)
			case "speed":
				fmt.Fprint(&b, rapid.SampledFrom([]float64{8, 20}).Draw(t, f.Name))
			case "time":
				fmt.Fprint(&b, i)
			}
		}
	}
	return b.String() + "\n"
}
