// Package static holds what the program carries inside itself: styles, scripts,
// fonts and the example plans.
package static

import "embed"

// FS is everything that is embedded, by its path in this folder.
//
//go:embed css examples fonts js
var FS embed.FS

// ExamplePlan is the plan that a first start opens.
const ExamplePlan = "examples/example-plan.json"

// Example returns the plan that a first start opens.
func Example() []byte {
	data, err := FS.ReadFile(ExamplePlan)
	if err != nil {
		panic("static: " + err.Error())
	}
	return data
}
