package proving

import (
	"slices"
	"strings"

	"ramplan/press/proving"
	"ramplan/press/words/proof"
	"ramplan/web/page"
)

// say writes what the pages say of studies, in metric English.
var say proof.Words

// heads are the fields of a study as a whole, by kind, in the order in which they are asked;
// folded are those that are seldom given.
var heads = map[string]struct{ asked, folded []string }{
	proving.LoadCell:  {[]string{"taken_at", "cell", "cell_uncertainty", "calibrated_at"}, []string{"calibration_days", "taken_by", "ram", "plan_digest", "notes"}},
	proving.Stiffness: {[]string{"taken_at", "height", "height_uncertainty"}, []string{"cell", "cell_uncertainty", "taken_by", "ram", "plan_digest", "notes"}},
	proving.Master:    {[]string{"taken_at", "height", "height_uncertainty"}, []string{"setting", "resolution", "taken_by", "ram", "plan_digest", "notes"}},
	proving.Restart:   {[]string{"taken_at", "height", "height_uncertainty"}, []string{"setting", "resolution", "taken_by", "ram", "plan_digest", "notes"}},
	proving.Trial:     {[]string{"taken_at", "height_uncertainty", "plan_digest"}, []string{"taken_by", "ram", "notes"}},
	proving.Samples:   {[]string{"taken_at", "height_uncertainty", "plan_digest"}, []string{"taken_by", "ram", "notes"}},
	proving.Event:     {[]string{"taken_at", "event"}, []string{"taken_by", "ram", "plan_digest", "notes"}},
}

// columns that a kind can have, in the order in which they are offered.
var columns = map[string][]string{
	proving.LoadCell:  {"setting", "force", "condition", "speed", "time", "remark"},
	proving.Stiffness: {"setting", "force", "reading", "height", "time", "remark"},
	proving.Master:    {"reading", "time", "remark"},
	proving.Restart:   {"start", "reading", "condition", "time", "remark"},
	proving.Trial:     {"reading", "arrival", "zone", "height", "force", "time", "remark"},
	proving.Samples:   {"sample", "height", "arrival", "zone", "reading", "time", "remark"},
}

// bare is the name of a column or a head without its unit.
func bare(name string) string {
	name, _, _ = strings.Cut(name, "[")
	return strings.TrimSpace(name)
}

// unitOf is the unit that stands behind a name; empty where none does.
func unitOf(name string) string {
	_, unit, _ := strings.Cut(name, "[")
	return strings.TrimSuffix(strings.TrimSpace(unit), "]")
}

// kindOf tells what is typed into a field.
func kindOf(name string) string {
	switch name {
	case "arrival", "zone":
		return "lamp"
	case "condition":
		return "condition"
	case "taken_at", "taken_by", "ram", "plan_digest", "cell", "calibrated_at", "event", "sample":
		return "text"
	case "notes", "remark":
		return "remark"
	}
	return "number"
}

// HeadName is the name of a field of the head in a form.
func HeadName(name string) string { return "head." + name }

// headFields are the fields of a typed study, those that are always asked and the others. What
// was given and is none of them comes with the others, so that nothing is lost.
func headFields(t *proving.Typed, faults proving.TypedFaults) (asked, folded []page.Field) {
	known := heads[t.Kind]
	more := slices.Clone(known.folded)
	for _, h := range t.Heads {
		if n := bare(h.Name); !slices.Contains(known.asked, n) && !slices.Contains(more, n) && n != "kind" && n != "format" {
			more = append(more, n)
		}
	}
	make := func(names []string) []page.Field {
		var out []page.Field
		for _, n := range names {
			out = append(out, headField(t, n, faults))
		}
		return out
	}
	return make(known.asked), make(more)
}

func headField(t *proving.Typed, name string, faults proving.TypedFaults) page.Field {
	f := say.HeadOf(t.Kind, name)
	out := page.Field{ID: "h-" + name, Name: HeadName(name), Label: f.Label, Unit: f.Unit, Spoken: f.Spoken, Help: f.Help, Kind: "text", Value: t.Head(name), Messages: faults.At(0, name)}
	switch kindOf(name) {
	case "number":
		out.Kind = "number"
	case "remark":
		out.Kind = "area"
	}
	for _, h := range t.Heads {
		if u := unitOf(h.Name); u != "" && bare(h.Name) == name {
			out.Name, out.Unit = HeadName(name+" ["+u+"]"), u
		}
	}
	out.Required = name == "taken_at" || name == "event" || name == "height" && (t.Kind == proving.Master || t.Kind == proving.Restart)
	out.Missing = out.Required && out.Value == ""
	return out
}
