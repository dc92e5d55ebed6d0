package proving

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/strict"
)

// instead says what a document of another format is, where a study is asked for.
var instead = strict.Others{
	press.Format:      ", a plan; a study is needed",
	press.DraftFormat: ", an unfinished plan; a study is needed",
	AssessmentFormat:  ", the assessment of studies; a study itself is needed",
}

// Decode reads one study from JSON and checks it, as strictly as a plan is read. Every
// fault that can be told at once is told at once, up to [press.MostListed]; the study is
// nil where there is one.
func Decode(data []byte) (*Study, press.Problems) {
	doc, ps := strict.Read(data, Format, instead)
	if doc == nil || ps.Fatal() {
		return nil, ps.Listed()
	}
	d := decoder{study: &Study{Format: Format}, problems: ps}
	d.read(doc)
	if len(d.problems) > 0 {
		return nil, d.problems.Listed()
	}
	return d.study, nil
}

type decoder struct {
	study    *Study
	known    string // its kind, empty while that is not known
	kind     table
	problems press.Problems
}

func (d *decoder) add(path, code, message string) {
	d.problems = append(d.problems, press.Problem{Path: path, Code: code, Message: message})
}

// read reads the document's tree.
func (d *decoder) read(doc *strict.Node) {
	kind := ""
	if n := doc.Get("kind"); n != nil && n.Shape == strict.Text && slices.Contains(Kinds, n.Text) {
		kind = n.Text
	}
	d.known, d.kind = kind, tables[kind]
	d.keys(doc.Keys, d.kind.heads, head, "format")
	for _, f := range d.kind.heads {
		n := doc.Get(f.Name)
		switch {
		case n == nil && f.Required && (kind != "" || f.For == nil):
			d.add(f.Path, press.CodeRequired, "not given; "+f.Allowed())
		case n == nil:
		case f.Kind == press.Rows:
			d.rows(f, n, doc.Get("height") != nil)
		default:
			d.cell(f, nil, n, head)
		}
	}
}

// head stands for the study itself where a row is named by its number.
const head = -1

// at is the path of an entry, written where something is wrong there.
func at(row int, key string) string {
	if row == head {
		return strict.Join("", key)
	}
	return strict.Join(rowPath(row), key)
}

func rowPath(row int) string { return "rows[" + strconv.Itoa(row) + "]" }

// keys refuses the keys that an object does not have.
func (d *decoder) keys(keys []string, fields []*Field, row int, other string) {
	for _, key := range keys {
		if key == other || slices.ContainsFunc(fields, func(f *Field) bool { return f.Name == key }) {
			continue
		}
		similar := slices.IndexFunc(fields, func(f *Field) bool { return strings.EqualFold(f.Name, key) })
		switch {
		case similar >= 0:
			d.add(at(row, key), press.CodeCase, "no such entry; it is written "+fields[similar].Name)
		case other != "" && strings.EqualFold(other, key):
			d.add(at(row, key), press.CodeCase, "no such entry; it is written "+other)
		default:
			d.add(at(row, key), press.CodeUnknown, d.unknown(key, row != head))
		}
	}
}

// unknown says that there is no such key, or not in this kind of study.
func (d *decoder) unknown(key string, inRows bool) string {
	all := tables[""].heads
	if inRows {
		all = tables[""].columns
	}
	if slices.ContainsFunc(all, func(f *Field) bool { return f.Name == key }) {
		return "no such entry in a study of kind " + d.known
	}
	return "no such entry"
}

// cell reads one value, and tells whether the field takes it.
func (d *decoder) cell(f *Field, r *Row, n *strict.Node, row int) bool {
	if p := f.fault(n, ""); p != nil {
		p.Path = at(row, f.Name)
		d.problems = append(d.problems, *p)
		return false
	}
	f.set(d.study, r, n)
	if n.Shape == strict.Text && n.Text == "" {
		d.study.noteEmpty(at(row, f.Name))
	}
	return true
}

// rows reads the pushes, and what they must keep together.
func (d *decoder) rows(f *Field, n *strict.Node, height bool) {
	if n.Shape != strict.Array {
		d.add(f.Path, press.CodeType, "found "+n.Found()+"; "+f.Allowed())
		return
	}
	if len(n.Items) < f.MinRows || len(n.Items) > f.MaxRows {
		d.add(f.Path, press.CodeRows, "found "+strict.Count(len(n.Items), "row")+"; "+f.Allowed())
		return
	}
	d.study.Rows = make([]Row, len(n.Items))
	c := rules{study: d.study, kind: d.kind, height: height, given: make([]given, len(n.Items)), sound: make([]given, len(n.Items))}
	for i, item := range n.Items {
		if item.Shape != strict.Object {
			d.add(rowPath(i), press.CodeType, "found "+item.Found()+"; an object is needed")
			c.given[i] = ^given(0) // nothing more is said of it
			continue
		}
		d.keys(item.Keys, d.kind.columns, i, "")
		for k, f := range d.kind.columns {
			if n := item.Get(f.Name); n != nil {
				c.given[i] |= 1 << k
				if d.cell(f, &d.study.Rows[i], n, i) {
					c.sound[i] |= 1 << k
				}
			}
		}
	}
	if d.known == "" {
		return
	}
	for _, s := range c.check() {
		d.add(at(s.row, s.column.Name), s.code, s.message)
	}
}
