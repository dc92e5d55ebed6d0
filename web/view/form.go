package view

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words/screen"
	"ramplan/web/page"
)

// subgroups are the parts of a section that stand in a frame of their own, each
// with the entries, or what holds them, that belong to it.
var subgroups = []struct {
	label func(screen.Words) string
	paths []string
}{
	{screen.Words.Curve, []string{"ram.curve"}},
	{screen.Words.Deviations, []string{"joint.hole", "joint.shaft"}},
	{screen.Words.Friction, []string{"joint.friction_low", "joint.friction_high", "joint.holding_friction"}},
	{screen.Words.Hub, []string{"joint.hub"}},
	{screen.Words.Insert, []string{"joint.insert"}},
	{screen.Words.ServiceTemperature, []string{"joint.service_change"}},
}

// upFront are the optional fields that are asked at once and not on demand.
var upFront = []string{
	"title.number", "ram.direction", "station.home", "joint.stop", "joint.fit",
	"requirement.min_seating_force", "motion.clearance",
}

// form builds the form of what was typed, with every fault beside its field.
type form struct {
	typed  Typed
	faults press.Problems
	kind   string
	text   map[string]string // by path, the first entry of each
	count  map[string]int    // rows by path
	places places
	paste  *page.Paste
	growth Growth
	curve  *page.CurveEditor
	doubts []page.Doubt // about the points just read

	strayed map[int]strayed // steps that do not end in their zone
}

func newForm(t Typed, faults press.Problems) *form {
	f := &form{typed: t, faults: faults, text: map[string]string{}, count: map[string]int{}, places: places{}}
	for _, e := range t.Draft.Entries {
		if _, twice := f.text[e.Path]; !twice {
			f.text[e.Path] = e.Text
		}
		if base, row, ok := rowOf(e.Path); ok && hasPlace(e.Path) {
			f.count[base] = max(f.count[base], row+1)
		}
	}
	f.kind = strings.TrimSpace(f.text["joint.kind"])
	return f
}

// page gives the form as the page prints it.
func (f *form) page() page.Form {
	var out page.Form
	sections := stated().sections
	out.Sections = make([]page.Section, 0, len(sections))
	for i := range sections {
		out.Sections = append(out.Sections, f.section(&sections[i]))
	}
	out.Hidden = f.hidden()
	out.Parked = f.parked()
	out.Others = f.others()
	return out
}

func (f *form) section(s *sectionStated) page.Section {
	out := page.Section{ID: anchor(s.Path), Label: s.Label, Help: s.Help, Word: SectionLink(s.Path)}
	f.places[s.Path] = out.ID
	var first, more page.Group
	subs := make([]page.Group, len(subgroups))
	var rows []page.Group
	opened := f.opened(s.Path)
	for _, one := range s.fields {
		field, sub := one.Field, one.sub
		if !f.has(field) || !opened && !opens(field) {
			continue
		}
		switch {
		case field.Kind == press.Rows:
			rows = append(rows, page.Group{Rows: f.rows(field)})
		case strings.Contains(field.Path, "[]"):
			// A column of the rows above.
		case sub >= 0:
			subs[sub].Fields = append(subs[sub].Fields, f.field(field, field.Path))
		case !s.some || field.Required || slices.Contains(upFront, field.Path):
			first.Fields = append(first.Fields, f.field(field, field.Path))
		default:
			more.Fields = append(more.Fields, f.field(field, field.Path))
		}
	}
	add := func(g page.Group) {
		if len(g.Fields) > 0 {
			out.Groups = append(out.Groups, g)
		}
	}
	add(first)
	for i, g := range subs {
		if len(g.Fields) > 0 {
			g.ID, g.Label = anchor(subgroups[i].paths[0])+"-sub", subgroups[i].label(say)
			for _, path := range subgroups[i].paths {
				if _, taken := f.places[path]; !taken {
					f.places[path] = g.ID
				}
			}
			add(g)
		}
	}
	out.Groups = append(out.Groups, rows...)
	if len(more.Fields) > 0 {
		f.fold(&more, s.Section)
		if slices.ContainsFunc(more.Fields, func(field page.Field) bool { return field.Name == growthPath }) {
			more.Growth = f.growthAid()
			more.Open = more.Open || more.Growth.Open
		}
		add(more)
	}
	out.From = f.ramFrom(s.Path)
	out.Faults, out.Wrong = f.standing(s.Path)
	return out
}

// fold makes a group that opens on demand, and opens it where something in it
// was typed or is wrong.
func (f *form) fold(g *page.Group, s press.Section) {
	given := 0
	for _, field := range g.Fields {
		if field.Value != "" || field.Checked || field.Wrong() {
			given++
		}
	}
	g.ID, g.Label, g.Folded = anchor(s.Path)+"-more", say.MoreAbout(strings.ToLower(s.Label)), true
	g.Open = given > 0
	g.Note = strconv.Itoa(given) + " of " + strconv.Itoa(len(g.Fields)) + " given"
	if given == 0 {
		g.Note = say.NoneGiven()
	}
}

// has tells whether the chosen kind of joint has the field.
func (f *form) has(field *press.Field) bool {
	return field.For == nil || slices.Contains(field.For, f.kind)
}

// within tells whether a path is another one or lies in it.
func within(path, outer string) bool {
	rest, ok := strings.CutPrefix(path, outer)
	return ok && (rest == "" || rest[0] == '.' || rest[0] == '[')
}

func subgroupOf(path string) int {
	for i, g := range subgroups {
		for _, p := range g.paths {
			if within(path, p) {
				return i
			}
		}
	}
	return -1
}

// standing says how a section stands: its faults, and how much is still needed.
func (f *form) standing(path string) (text string, wrong bool) {
	faults, needed := 0, 0
	for _, p := range f.faults {
		switch {
		case !within(p.Path, path):
		case p.Code == press.CodeRequired:
			needed++
		default:
			faults++
		}
	}
	var said []string
	if faults > 0 {
		said = append(said, counted(faults, "fault", "faults"))
	}
	if needed > 0 {
		said = append(said, strconv.Itoa(needed)+" needed")
	}
	return strings.Join(said, ", "), faults > 0
}
