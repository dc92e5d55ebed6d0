package view

import (
	"fmt"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// copied writes the setpoints as lines of text, columns apart by tabs, with what
// the plan is to its revisions. What must not be typed into a controller says so on
// top.
func copied(p *press.Plan, r *press.Result, setpoints []page.Figure, standing string, older bool) string {
	var b strings.Builder
	if r.Blocked() {
		fmt.Fprintf(&b, "NOT READY: %s\n", words.NotReady(r))
	}
	if older {
		b.WriteString("older than the entries\n")
	}
	fmt.Fprintf(&b, "%s\t%s\t%s\n", p.Title.Name, p.Title.Number, standing)
	for _, f := range setpoints {
		fmt.Fprintf(&b, "%s\t%s\t%s", f.Label, f.Value, f.Unit)
		if f.Label == words.SettingLabel && !r.Force.SettingFeasible {
			b.WriteString("\t" + f.Note)
		}
		if f.Own != "" {
			b.WriteString("\t" + f.Own)
		}
		b.WriteByte('\n')
	}
	fmt.Fprintf(&b, "Plan\t%s\n", words.ShortDigest(r.PlanDigest))
	return b.String()
}
