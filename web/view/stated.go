package view

import (
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"ramplan/press"
	"ramplan/web/page"
)

// stated is what the form says of the field table whatever was typed: worked out once, and
// not for every key.
var stated = sync.OnceValue(func() *statements {
	s := &statements{fields: map[*press.Field]page.Field{}, columns: map[string][]*press.Field{}, heads: map[string][]page.Column{}}
	for i := range press.Fields {
		f := &press.Fields[i]
		s.fields[f] = statedOf(f)
		if f.Kind == press.Rows {
			s.lists = append(s.lists, f.Path)
			s.columns[f.Path] = findColumns(f.Path)
			s.heads[f.Path] = headsOf(s.columns[f.Path])
		}
	}
	for _, section := range press.Sections {
		s.sections = append(s.sections, statedIn(section))
	}
	return s
})

type statements struct {
	fields   map[*press.Field]page.Field
	lists    []string // paths of the lists of rows
	columns  map[string][]*press.Field
	heads    map[string][]page.Column
	sections []sectionStated // as press.Sections has them
}

// sectionStated is what a section is made of.
type sectionStated struct {
	press.Section
	fields []fieldStated
	some   bool // of its fields of its own are required and some are not: these go into a fold
}

type fieldStated struct {
	*press.Field
	sub int // of the subgroups; -1 for none
}

func statedIn(s press.Section) sectionStated {
	out := sectionStated{Section: s}
	required, optional := false, false
	for i := range press.Fields {
		f := &press.Fields[i]
		if !within(f.Path, s.Path) {
			continue
		}
		sub := subgroupOf(f.Path)
		if f.Path != s.Path && f.Kind != press.Rows && sub < 0 && !strings.Contains(f.Path, "[]") {
			required, optional = required || f.Required, optional || !f.Required
		}
		if !isShelfField(f) {
			out.fields = append(out.fields, fieldStated{f, sub})
		}
	}
	out.some = required && optional
	return out
}

// statedOf is the input of a field before anything is typed.
func statedOf(f *press.Field) page.Field {
	out := page.Field{
		Label:    f.Label,
		Unit:     f.Unit,
		Help:     f.Help,
		Range:    sentence(f.Range()),
		StandIn:  standIn(f),
		Required: f.Required,
	}
	if utf8.RuneCountInString(out.StandIn) > longestStandIn {
		out.Help += say.LeftEmpty(out.StandIn)
		out.StandIn = ""
	}
	if !strings.Contains(f.Path, "[]") { // rows explain their columns once
		out.Word = entryLink(f)
	}
	if f.Unit != "" {
		out.Spoken = "in " + f.Unit
	}
	switch f.Kind {
	case press.Number:
		out.Kind = "number"
	case press.Flag:
		out.Kind = "flag"
	case press.Choice:
		out.Kind = "choice"
	default:
		out.Kind = "text"
		if f.Lines > 1 {
			out.Kind = "area"
		}
		out.Wide = wideText(f)
	}
	return out
}

func findColumns(base string) []*press.Field {
	var out []*press.Field
	for i := range press.Fields {
		if strings.HasPrefix(press.Fields[i].Path, base+"[]") {
			out = append(out, &press.Fields[i])
		}
	}
	return out
}

func columnsOf(base string) []*press.Field { return stated().columns[base] }

// headsOf are the heads of columns.
func headsOf(columns []*press.Field) []page.Column {
	var out []page.Column
	for _, c := range columns {
		help := c.Help
		if d, ok := c.Default.(string); ok && c.Kind == press.Choice {
			help += say.InBrackets(c.Path, d)
		}
		out = append(out, page.Column{Label: c.Label, Unit: c.Unit, Help: help, Word: entryLink(c)})
	}
	return out
}

// listOf gives the list of rows that a path lies in, and what follows its bracket.
func listOf(path string) (base, rest string, ok bool) {
	if strings.IndexByte(path, '[') < 0 {
		return "", "", false
	}
	lists := stated().lists
	i := slices.IndexFunc(lists, func(base string) bool {
		rest, ok = strings.CutPrefix(path, base)
		return ok && strings.HasPrefix(rest, "[")
	})
	if i < 0 {
		return "", "", false
	}
	return lists[i], rest[1:], true
}
