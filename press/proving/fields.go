package proving

import (
	"slices"
	"strings"

	"ramplan/press"
)

// MostRows is how many pushes a study may hold.
const MostRows = 10000

// A Field is one entry of a study: the single home of its names, label, unit, default,
// allowed range and help. Its Path is that of the document, such as height for the study
// and rows[].height for a push; its For are the kinds of study that have it. One name may
// stand in several fields, for different kinds.
type Field struct {
	press.Field
	Name string   // as in JSON, and at the head of a column
	Also []string // other names of the column

	form func(text string) bool // of a text that has a form of its own
	want string                 // what that form is
	at   func(s *Study, r *Row) any
}

// Allowed says in one sentence what the field takes.
func (f *Field) Allowed() string {
	switch {
	case f.form != nil:
		return f.want + " is needed"
	case f.Kind == press.Rows:
		return "a list of 1 to 10,000 rows is needed"
	}
	return f.Field.Allowed()
}

var (
	zero     = &press.Limit{Value: 0}
	above0   = &press.Limit{Value: 0, Open: true}
	one      = &press.Limit{Value: 1}
	hundred  = &press.Limit{Value: 100}
	mostDays = &press.Limit{Value: 36500}
)

var (
	onMaster = []string{Master, Restart}
	onParts  = []string{Trial, Samples}
	pushed   = []string{LoadCell, Stiffness, Master, Restart, Trial, Samples}
)

const notStated = "not stated" // what stands in where nothing does

// Fields is the field table, the study's own entries first, those of a push in the order in
// which they are typed.
var Fields = fields([]Field{
	{Field: press.Field{Path: "kind", Kind: press.Choice, Required: true, Choices: Kinds, Label: "Kind", Help: "What was done at the station."},
		at: func(s *Study, _ *Row) any { return &s.Kind }},
	{Field: press.Field{Path: "event", Kind: press.Choice, Required: true, Choices: Events, For: []string{Event}, Label: "What happened", Help: "From this moment on, the studies that it touches no longer count."},
		at: func(s *Study, _ *Row) any { return &s.Event }},
	{Field: press.Field{Path: "taken_at", Kind: press.Text, Required: true, Label: "Taken at", Help: "The day, or day and time with their offset from UTC."},
		form: isMoment, want: "a day such as 2026-11-25, or day and time with their offset such as 2026-11-25T14:05:00+01:00,",
		at: func(s *Study, _ *Row) any { return &s.TakenAt }},
	{Field: press.Field{Path: "taken_by", Kind: press.Text, Default: "", Label: "Taken by", Help: "Who pushed, or who saw what happened."},
		at: func(s *Study, _ *Row) any { return &s.TakenBy }},
	{Field: press.Field{Path: "ram", Kind: press.Text, Default: "", Label: "Ram", Help: "What you call the ram; a study of another ram says nothing of this one."},
		at: func(s *Study, _ *Row) any { return &s.Ram }},
	{Field: press.Field{Path: "plan_digest", Kind: press.Text, Derived: notStated, Label: "Plan", Help: "The digest of the plan whose setpoints were in force; its first 12 digits, as a sheet prints them, are enough."},
		form: isDigestStart, want: "sha256: and the first 12 to 64 digits of a plan's digest",
		at: func(s *Study, _ *Row) any { return &s.PlanDigest }},
	{Field: press.Field{Path: "cell", Kind: press.Text, Default: "", For: []string{LoadCell, Stiffness}, Label: "Load cell", Help: "Which load cell stood at the tool."},
		at: func(s *Study, _ *Row) any { return &s.Cell }},
	{Field: press.Field{Path: "cell_uncertainty", Default: 0.0, Low: zero, High: hundred, Unit: "%", For: []string{LoadCell, Stiffness}, Label: "Load cell uncertainty", Help: "± of the reading, two standard deviations, from its calibration certificate. Left empty, the cell is taken as perfect."},
		at: func(s *Study, _ *Row) any { return &s.CellUncertainty }},
	{Field: press.Field{Path: "calibrated_at", Kind: press.Text, Derived: notStated, For: []string{LoadCell}, Label: "Calibrated on", Help: "The day on which the load cell was calibrated."},
		form: IsDay, want: "a day such as 2026-11-25",
		at: func(s *Study, _ *Row) any { return &s.CalibratedAt }},
	{Field: press.Field{Path: "calibration_days", Default: 365.0, Whole: true, Low: one, High: mostDays, Unit: "d", For: []string{LoadCell}, Label: "Calibration holds", Help: "For how many days a calibration is relied on."},
		at: func(s *Study, _ *Row) any { return &s.CalibrationDays }},
	{Field: press.Field{Path: "height", Required: true, Low: zero, Unit: "mm", For: []string{Master}, Label: "Height of the master", Help: "Above the nest, from its certificate."},
		at: headHeight},
	{Field: press.Field{Path: "height", Derived: notStated, Low: zero, Unit: "mm", For: []string{Restart}, Label: "Height of the master", Help: "Above the nest, from its certificate."},
		at: headHeight},
	{Field: press.Field{Path: "height", Derived: "the heights of the rows", Low: zero, Unit: "mm", For: []string{Stiffness}, Label: "Height of the block", Help: "Above the nest. A block of another height in some of the rows stands there."},
		at: headHeight},
	{Field: press.Field{Path: "height_uncertainty", Default: 0.0, Low: zero, Unit: "mm", For: []string{Stiffness, Master, Restart, Trial, Samples}, Label: "Height uncertainty", Help: "± of the heights, two standard deviations."},
		at: func(s *Study, _ *Row) any { return &s.HeightUncertainty }},
	{Field: press.Field{Path: "setting", Derived: "the plan's setting", Unit: "%", For: onMaster, Label: "Setting", Help: "At which setting the master was pushed."},
		at: func(s *Study, _ *Row) any { return &s.Setting }},
	{Field: press.Field{Path: "resolution", Default: 0.0, Low: zero, Unit: "mm", For: onMaster, Label: "Resolution", Help: "The smallest step of the readings on the display."},
		at: func(s *Study, _ *Row) any { return &s.Resolution }},
	{Field: press.Field{Path: "notes", Kind: press.Text, Default: "", MaxRunes: 4000, Lines: 3, Label: "Notes", Help: "Anything the next reader should know."},
		at: func(s *Study, _ *Row) any { return &s.Notes }},
	{Field: press.Field{Path: "rows", Kind: press.Rows, Required: true, MinRows: 1, MaxRows: MostRows, For: pushed, Label: "Pushes", Help: "One row a push, in the order in which they were made."}},

	{Field: press.Field{Path: "rows[].sample", Kind: press.Text, Required: true, For: []string{Samples}, Label: "Sample", Help: "Any name; missing is a nest without the insert, empty a bare nest."},
		Also: []string{"name"}, at: func(_ *Study, r *Row) any { return &r.Sample }},
	{Field: press.Field{Path: "rows[].start", Required: true, Whole: true, Low: one, For: []string{Restart}, Label: "Start", Help: "After which restart this push was made, counted from 1."},
		at: func(_ *Study, r *Row) any { return &r.Start }},
	{Field: press.Field{Path: "rows[].setting", Required: true, Unit: "%", For: []string{LoadCell}, Label: "Setting", Help: "The motor current of this push, in percent of its rating."},
		Also: settingToo, at: rowSetting},
	{Field: press.Field{Path: "rows[].setting", Derived: notStated, Unit: "%", For: []string{Stiffness}, Label: "Setting", Help: "The motor current of this push; needed where no force was measured."},
		Also: settingToo, at: rowSetting},
	{Field: press.Field{Path: "rows[].force", Required: true, Low: zero, Unit: "N", For: []string{LoadCell}, Label: "Force", Help: "What the load cell at the tool showed."},
		Also: forceToo, at: rowForce},
	{Field: press.Field{Path: "rows[].force", Derived: notStated, Low: zero, Unit: "N", For: []string{Stiffness}, Label: "Force", Help: "What the load cell showed, in all rows or in none."},
		Also: forceToo, at: rowForce},
	{Field: press.Field{Path: "rows[].reading", Required: true, Unit: "mm", For: []string{Stiffness, Master, Restart, Trial}, Label: "Reading", Help: "Where the ram came to rest."},
		Also: readingToo, at: rowReading},
	{Field: press.Field{Path: "rows[].reading", Derived: notStated, Unit: "mm", For: []string{Samples}, Label: "Reading", Help: "Where the ram came to rest, if it was noted."},
		Also: readingToo, at: rowReading},
	{Field: press.Field{Path: "rows[].arrival", Kind: press.Flag, Required: true, For: onParts, Label: "Arrival", Help: "Whether the arrival signal was on."},
		Also: []string{"arrival_signal"}, at: func(_ *Study, r *Row) any { return &r.Arrival }},
	{Field: press.Field{Path: "rows[].zone", Kind: press.Flag, Required: true, For: onParts, Label: "Zone", Help: "Whether the zone signal was on."},
		Also: []string{"zone_signal"}, at: func(_ *Study, r *Row) any { return &r.Zone }},
	{Field: press.Field{Path: "rows[].height", Derived: "the height of the study", Low: zero, Unit: "mm", For: []string{Stiffness}, Label: "Height of the block", Help: "Above the nest, where this push had a block of its own."},
		Also: heightToo, at: rowHeight},
	{Field: press.Field{Path: "rows[].height", Derived: notStated, Unit: "mm", For: []string{Trial}, Label: "Seated height", Help: "Above the datum, if this part was measured."},
		Also: heightToo, at: rowHeight},
	{Field: press.Field{Path: "rows[].height", Derived: notStated, Unit: "mm", For: []string{Samples}, Label: "Height", Help: "Of the sample above the datum; not for missing and empty."},
		Also: heightToo, at: rowHeight},
	{Field: press.Field{Path: "rows[].force", Derived: notStated, Low: zero, Unit: "N", For: []string{Trial}, Label: "Force", Help: "What a load cell showed, if there was one."},
		Also: forceToo, at: rowForce},
	{Field: press.Field{Path: "rows[].condition", Kind: press.Choice, Derived: notStated, Choices: []string{Cold, Warm}, For: []string{LoadCell, Restart}, Label: "Condition", Help: "Whether the station was cold or warm."},
		at: func(_ *Study, r *Row) any { return &r.Condition }},
	{Field: press.Field{Path: "rows[].speed", Derived: notStated, Low: above0, Unit: "mm/s", For: []string{LoadCell}, Label: "Speed", Help: "How fast the ram was going into this push."},
		at: func(_ *Study, r *Row) any { return &r.Speed }},
	{Field: press.Field{Path: "rows[].time", Derived: notStated, Low: zero, Unit: "s", For: pushed, Label: "Time", Help: "When this push was made, in all rows or in none: rows then count in its order. A clock time such as 14:05 will do."},
		at: func(_ *Study, r *Row) any { return &r.Time }},
	{Field: press.Field{Path: "rows[].remark", Kind: press.Text, Default: "", For: pushed, Label: "Remark", Help: "Anything odd about this push."},
		Also: []string{"note", "comment"}, at: func(_ *Study, r *Row) any { return &r.Remark }},
})

var (
	settingToo = []string{"current"}
	forceToo   = []string{"load"}
	readingToo = []string{"position"}
	heightToo  = []string{"true_height", "seated_height"}
)

func headHeight(s *Study, _ *Row) any { return &s.Height }
func rowSetting(_ *Study, r *Row) any { return &r.Setting }
func rowForce(_ *Study, r *Row) any   { return &r.Force }
func rowReading(_ *Study, r *Row) any { return &r.Reading }
func rowHeight(_ *Study, r *Row) any  { return &r.Height }

const inRow = "rows[]."

// fields fills in what every row of the table has.
func fields(table []Field) []Field {
	for i := range table {
		f := &table[i]
		f.Name = strings.TrimPrefix(f.Path, inRow)
		if f.Kind == press.Text && f.MaxRunes == 0 {
			f.MaxRunes = 200
		}
	}
	return table
}

// A table is the part of the field table that one kind of study has. That of the kind ""
// is what is known of a study that does not say of which kind it is.
type table struct{ heads, columns []*Field }

var tables = func() map[string]table {
	out := map[string]table{"": tableOf("")}
	for _, kind := range Kinds {
		out[kind] = tableOf(kind)
	}
	return out
}()

func tableOf(kind string) (t table) {
	for i := range Fields {
		switch f := &Fields[i]; {
		case kind != "" && f.For != nil && !slices.Contains(f.For, kind) || kind == "" && named(append(t.heads, t.columns...), f.Path) != nil:
		case strings.HasPrefix(f.Path, inRow):
			t.columns = append(t.columns, f)
		default:
			t.heads = append(t.heads, f)
		}
	}
	return t
}

// named finds a field by its path.
func named(fields []*Field, path string) *Field {
	for _, f := range fields {
		if f.Path == path {
			return f
		}
	}
	return nil
}

// Heads are the entries of a study of this kind, the format and the rows left out.
func Heads(kind string) []*Field {
	return slices.DeleteFunc(slices.Clone(tables[kind].heads), func(f *Field) bool { return f.Kind == press.Rows })
}

// Columns are the cells of a push of this kind, none for an event.
func Columns(kind string) []*Field { return slices.Clone(tables[kind].columns) }

// FieldAt gives the field of a path of a study of this kind, such as height or
// rows[3].reading.
func FieldAt(kind, path string) (*Field, bool) {
	if rest, inside := strings.CutPrefix(path, "rows["); inside {
		_, name, _ := strings.Cut(rest, "].")
		path = inRow + name
	}
	f := named(append(tables[kind].heads[:len(tables[kind].heads):len(tables[kind].heads)], tables[kind].columns...), path)
	return f, f != nil
}
