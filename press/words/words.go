// Package words holds all wording: sentences of findings and verdicts from code
// and figures, numbers and units for people.
package words

import "ramplan/press"

// Explain writes the sentence of every finding into its Message.
func Explain(r *press.Result) {}

// Headline says in plain words what the plan catches and what it never sees.
func Headline(p *press.Plan, r *press.Result) string { return "" }
