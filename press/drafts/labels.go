package drafts

import (
	"strings"

	"ramplan/press"
)

// Labels are the texts by which a plan is found.
type Labels struct{ Name, Number, Notes, Parts string }

// LabelsOf gives those of a draft.
func LabelsOf(d *press.Draft) Labels {
	var l Labels
	var parts []string
	for _, e := range d.Entries {
		switch {
		case e.Path == "title.name":
			l.Name = strings.TrimSpace(e.Text)
		case e.Path == "title.number":
			l.Number = strings.TrimSpace(e.Text)
		case e.Path == "title.notes":
			l.Notes = e.Text
		case strings.HasPrefix(e.Path, "parts[") && strings.HasSuffix(e.Path, "].name"):
			parts = append(parts, e.Text)
		}
	}
	l.Parts = strings.Join(parts, "\n")
	return l
}
