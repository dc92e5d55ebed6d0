package proof

import "ramplan/press/proving"

// A Field of a study, for people: of its head, or a column of its rows.
type Field struct {
	Label, Unit, Spoken string
	Help                string
}

// HeadOf names a field of the head of a study of a kind.
func (say Words) HeadOf(kind, name string) Field { return fieldAt(kind, name) }

// ColumnOf names a column of its rows.
func (say Words) ColumnOf(kind, name string) Field { return fieldAt(kind, "rows[0]."+name) }

// fieldAt takes label, unit and help of a field from the field table of studies; what is no
// field is called as it was typed.
func fieldAt(kind, path string) Field {
	f, ok := proving.FieldAt(kind, path)
	if !ok {
		return Field{Label: nameIn(path)}
	}
	return Field{Label: f.Label, Unit: f.Unit, Spoken: spoken[f.Unit], Help: f.Help}
}

func nameIn(path string) string {
	const inRow = "rows[0]."
	if len(path) > len(inRow) && path[:len(inRow)] == inRow {
		return path[len(inRow):]
	}
	return path
}

// spoken are units as they are read out.
var spoken = map[string]string{"mm": "in millimetres", "%": "in percent", "N": "in newtons", "mm/s": "in millimetres per second", "s": "in seconds", "d": "in days"}
