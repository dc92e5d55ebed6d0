// Package static holds what the program carries inside itself: styles, scripts,
// fonts and the example plans.
package static

import "embed"

// FS is everything that is embedded, by its path in this folder.
//
//go:embed css examples fonts js
var FS embed.FS

// ExamplePlan is the plan that the documentation speaks of.
const ExamplePlan = "examples/example-plan.json"

// examples are the plans that stand on a new shelf: an interference fit, a joint
// with measured forces, parts that only touch, and a whole run: a probe before the push,
// and the ram's cycle as steps.
var examples = []string{ExamplePlan, "examples/pivot-pin.json", "examples/rain-gauge-lid.json", "examples/pivot-bush.json"}

// In examples/studies are invented studies of the station of [ExamplePlan]: the curve and the
// scatter of its force, its stiffness and nest, and forty parts.

// Example returns the plan that the documentation speaks of.
func Example() []byte { return Examples()[0] }

// Examples returns every example plan.
func Examples() [][]byte {
	var out [][]byte
	for _, name := range examples {
		data, err := FS.ReadFile(name)
		if err != nil {
			panic("static: " + err.Error())
		}
		out = append(out, data)
	}
	return out
}
