package words

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
)

// basisTable lists every entry of the plan as the figures rest on it, given or not,
// and what comes of them: so that all of it can be computed again. It is made from
// the field table; a new field stands here by itself.
func (say Printer) basisTable(p *press.Plan, r *press.Result) Table {
	t := Table{say: say,
		Lead: "Every entry of the plan with its unit, as the figures of the sheet rest on it: what was given, what stands in where nothing was, and what the program proposes. " +
			"Behind them stand the shares of parts that are accepted and refused.",
		Columns: []Column{{"Of", 1.15, false}, {"Entry", 1.45, false}, {"Value", 1.45, false}, {"Unit", 0.55, false}, {"Comes from", 1.4, false}},
		Grouped: true,
		Abreast: 2,
		Bare:    []string{"Value"},
		Notes: []string{
			"The plan's digest is taken of what was given. Two plans of one digest lead to the same figures in the same version of the program.",
			"± figures of ram and station are two standard deviations; the nest drift is a limit, any value within it as likely as another.",
		},
	}
	all := r.Stated()
	for i, e := range all {
		switch {
		case !alike(all, e):
			t.add(r, say.placeOf(e.Path), e)
		case firstOf(all, i):
			t.add(r, listLabel(e.Path)+", every row", e)
		}
	}
	targets := slices.Repeat([]string{none}, len(t.Rows))
	for _, o := range say.outcomes(p, r) {
		from := computed
		if o.target != none {
			from += "; target: " + o.target
		}
		t.Rows, targets = append(t.Rows, []string{"Shares of all parts", o.label, o.number, o.unit, from}), append(targets, o.target)
	}
	t.Filed = []FiledColumn{{Head: "Target", Cells: targets}}
	return t
}

// add writes an entry into rows of its own: more than one where its text is long.
func (t *Table) add(r *press.Result, of string, e press.Stated) {
	value, unit := statedValue(e)
	if unit == "" {
		unit = none
	}
	label := e.Field.Label
	for i, piece := range pieces(value) {
		if i > 0 {
			label = e.Field.Label + ", continued"
		}
		t.Rows = append(t.Rows, []string{of, label, piece, unit, t.say.origin(r, e)})
	}
}

// placeOf names the section of an entry, or its list and row.
func (say Printer) placeOf(path string) string {
	list, row, inList := rowOf(path)
	if inList {
		return listLabel(list) + ", row " + strconv.Itoa(row+1)
	}
	section, _, _ := strings.Cut(path, ".")
	for _, s := range press.Sections {
		if s.Path == section {
			return s.Label
		}
	}
	return section
}

// rowOf takes the list and the row, from 0, out of the path of an entry in rows.
func rowOf(path string) (list string, row int, ok bool) {
	for at := 0; ; {
		open := strings.IndexByte(path[at:], '[')
		if open < 0 {
			return "", 0, false
		}
		open += at
		if f, known := press.FieldAt(path[:open]); known && f.Kind == press.Rows {
			digits, _, _ := strings.Cut(path[open+1:], "]")
			n, err := strconv.Atoi(digits)
			return path[:open], n, err == nil
		}
		at = open + 1
	}
}

// listLabel is what the list is called that a path names or lies in.
func listLabel(path string) string {
	if list, _, ok := rowOf(path); ok {
		path = list
	}
	f, _ := press.FieldAt(path)
	return f.Label
}

// alike tells whether an entry was given in no row of its list, of which there are
// several: it is then said once for all of them.
func alike(all []press.Stated, e press.Stated) bool {
	if _, _, inList := rowOf(e.Path); !inList {
		return false
	}
	rows := 0
	for _, other := range all {
		if other.Field != e.Field {
			continue
		}
		if other.From == press.FromPlan || other.Value != e.Value {
			return false
		}
		rows++
	}
	return rows > 1
}

// firstOf tells whether no entry before this one is of its field.
func firstOf(all []press.Stated, i int) bool {
	for _, e := range all[:i] {
		if e.Field == all[i].Field {
			return false
		}
	}
	return true
}

// statedValue writes the value of an entry, and its unit beside it.
func statedValue(e press.Stated) (value, unit string) {
	switch v := e.Value.(type) {
	case float64:
		if e.Path == "sequence.hold.step" {
			v++ // a file counts from 0, people from 1
		}
		return Full(v), e.Field.Unit
	case bool:
		if v {
			return "yes", ""
		}
		return "no", ""
	case string:
		if e.Path == "ram.shelf_digest" {
			v = ShortDigest(v)
		}
		if strings.TrimSpace(v) != "" {
			return v, ""
		}
	}
	return none, ""
}

// origin says where the value of an entry comes from.
func (say Printer) origin(r *press.Result, e press.Stated) string {
	window := strings.HasPrefix(e.Path, "window.")
	switch e.From {
	case press.FromPlan:
		if window && e.Field.Default == nil {
			return byHand
		}
		return "given"
	case press.FromDefault:
		if e.Value == "" {
			return "not given"
		}
		return "default"
	case press.FromOthers:
		return "default: " + e.Field.Derived
	case press.FromProposal:
		if e.Value == nil {
			return "no proposal"
		}
		return chosen(r, false)
	}
	if e.Field.Kind == press.Rows {
		return "no rows"
	}
	return "not given"
}

// pieces cuts a long text into parts that find room in a cell each.
func pieces(text string) []string {
	const most = 160 // characters
	var lines []string
	for line := range strings.Lines(strings.ReplaceAll(text, "\r", "\n")) {
		if line = strings.TrimSpace(line); line != "" {
			lines = append(lines, line)
		}
	}
	rest := []rune(strings.Join(lines, " / "))
	var out []string
	for len(rest) > most {
		at := most
		for at > most/2 && rest[at] != ' ' {
			at--
		}
		if rest[at] != ' ' {
			at = most
		}
		out = append(out, strings.TrimSpace(string(rest[:at])))
		rest = rest[at:]
	}
	return append(out, strings.TrimSpace(string(rest)))
}

// An outcome is a share of parts that comes of the plan, and what it is to be.
type outcome struct{ label, number, unit, target string }

// outcomes are the shares of parts that come of the plan.
func (say Printer) outcomes(p *press.Plan, r *press.Result) []outcome {
	share := func(label, said, target string) outcome {
		number, unit := said, none
		if i := strings.LastIndex(said, thin); i >= 0 {
			number, unit = said[:i], said[i+len(thin):]
		}
		return outcome{label, number, unit, target}
	}
	ppm := func(x *float64) string {
		if x == nil {
			return none
		}
		return say.PPM(*x)
	}
	accepted, refused := none, none
	if a, ok := r.Risk.Accepted(); ok {
		accepted, refused = say.Share(a), say.PPM((1-a)*1e6)
	}
	within, early := none, none
	if r.Pressable() {
		within, early = say.Share(r.Risk.ConformingShare), say.PPM(r.Risk.EarlyContactPPM)
	}
	t := &p.Targets
	return []outcome{
		share("Within the drawing", within, "at least "+say.TargetShare(t.ConformingShare)),
		share("Accepted", accepted, none),
		share("Accepted, of wrong height", ppm(r.Risk.ConsumerPPM), "at most "+say.TargetPPM(t.FalseAcceptPPM)),
		share("Refused", refused, none),
		share("Refused although good", ppm(r.Risk.ProducerPPM), "at most "+say.TargetPPM(t.FalseRejectPPM)),
		share("Met in the approach", early, "at most "+say.TargetPPM(t.EarlyContactPPM)),
	}
}
