package view

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/draw"
	"ramplan/press/words"
	"ramplan/press/words/screen"
	"ramplan/web/page"
)

// A Ram is one on the shelf of rams.
type Ram struct {
	ID      int64
	Version int64
	Told    map[string]string // what is said of it, by the path of its fault
	Entries []press.Entry
	Changed time.Time
	Damaged bool
}

// RamAddress is that of the page of a ram.
func RamAddress(id int64) string { return "/rams/" + strconv.FormatInt(id, 10) }

// telling are the fields of what is said of a ram.
var telling = []struct {
	path, kind  string
	limit       int
	label, help func(screen.Words) string
}{
	{drafts.PathRamName, "text", drafts.MostText, screen.Words.NameOnTheShelf, screen.Words.NameOnTheShelfHelp},
	{drafts.PathRamSource, "text", drafts.MostText, screen.Words.Source, screen.Words.SourceHelp},
	{drafts.PathRamMeasured, "text", drafts.MostText, screen.Words.MeasuredOn, screen.Words.MeasuredOnHelp},
	{drafts.PathRamMethod, "text", drafts.MostText, screen.Words.HowMeasured, screen.Words.HowMeasuredHelp},
	{drafts.PathRamNotes, "area", drafts.MostNotes, screen.Words.Notes, screen.Words.NotesHelp},
}

// tellingFields are the form of what is said of a ram.
func tellingFields(told map[string]string, faults press.Problems) []page.Field {
	var out []page.Field
	for _, f := range telling {
		out = append(out, page.Field{
			ID: strings.ReplaceAll(f.path, ".", "-"), Name: page.NameSigned + f.path, Label: f.label(say), Kind: f.kind, Help: f.help(say),
			Value: told[f.path], Required: f.path == drafts.PathRamName, Limit: strconv.Itoa(f.limit), Messages: faults.At(f.path),
		})
	}
	return out
}

// trouble are the faults that belong to none of the fields.
func trouble(faults press.Problems) []string {
	var out []string
	for _, p := range faults {
		if !strings.HasPrefix(p.Path, "shelf.") {
			out = append(out, sentence(p.Message))
		}
	}
	return out
}

func (r Ram) draft() *press.Draft { return &press.Draft{Entries: r.Entries} }

// page is a ram as a list shows it.
func (r Ram) page() page.Ram {
	out := page.Ram{
		ID: strconv.FormatInt(r.ID, 10), Address: RamAddress(r.ID), Version: strconv.FormatInt(r.Version, 10), Damaged: r.Damaged,
		Name: r.Told[drafts.PathRamName], Source: r.Told[drafts.PathRamSource], Measured: r.Told[drafts.PathRamMeasured], Method: r.Told[drafts.PathRamMethod], Notes: r.Told[drafts.PathRamNotes],
		When: say.When(r.Changed), Stamp: words.Stamp(r.Changed),
	}
	out.Called, _ = r.draft().Get("ram.name")
	if trace := r.draft().CurveTrace(); trace != nil {
		var svg bytes.Buffer
		_ = draw.NewCurve(trace, nil, draw.Options{ID: "ram-" + out.ID}).SVG(&svg) // a buffer takes everything
		out.Curve = svg.String()
	}
	return out
}

// shelfFields say where a plan's ram was copied from; they are not typed.
var shelfFields = []string{drafts.PathShelfName, drafts.PathShelfDigest}

// figures are the entries of a ram with their labels, those not given as what
// holds in their place.
func (r Ram) figures() []page.RamFigure {
	var out []page.RamFigure
	d := r.draft()
	for i := range press.Fields {
		f := &press.Fields[i]
		if !strings.HasPrefix(f.Path, "ram.") || f.Kind == press.Rows || strings.Contains(f.Path, "[]") || slices.Contains(shelfFields, f.Path) {
			continue
		}
		text, _ := d.Get(f.Path)
		one := page.RamFigure{Label: f.Label, Value: bareEntry(f.Path, text), Unit: f.Unit}
		if strings.TrimSpace(text) == "" {
			one.Value, one.Empty = standIn(f), true
			if f.Derived != "" && f.Default == nil {
				one.Unit = "" // words, and no figure
			}
			if one.Value == "" {
				one.Value, one.Unit = none, ""
			}
		}
		out = append(out, one)
	}
	return out
}

// points are the typed points of the curve, row by row.
func (r Ram) points() [][2]string {
	var out [][2]string
	for _, e := range r.Entries {
		base, row, ok := rowOf(e.Path)
		if !ok || base != curveRows || row >= press.MaxEntries {
			continue
		}
		for len(out) <= row {
			out = append(out, [2]string{})
		}
		switch {
		case strings.HasSuffix(e.Path, "][0]"):
			out[row][0] = bareEntry(e.Path, e.Text)
		case strings.HasSuffix(e.Path, "][1]"):
			out[row][1] = bareEntry(e.Path, e.Text)
		}
	}
	return out
}

// words are what the ram's controller calls the setpoints, row by row.
func (r Ram) words() []page.RamWord {
	var out []page.RamWord
	d := r.draft()
	for _, e := range r.Entries {
		base, row, ok := rowOf(e.Path)
		if !ok || base != "controller.words" || row >= press.MaxEntries {
			continue
		}
		for len(out) <= row {
			at := rowPath(base, len(out)) + "."
			told := func(field string) string { text, _ := d.Get(at + field); return text }
			out = append(out, page.RamWord{Setpoint: choiceLabel(told("setpoint")), Called: told("name"), Unit: told("unit"), Factor: told("factor")})
		}
	}
	return out
}

// RamShelf is the list of the rams.
type RamShelf struct {
	Rams    []Ram
	Text    string // that is searched for
	Removed *Ram   // taken off just now
	Back    string // that ram as a document, to put it back
}

// Page gives the page of the list.
func (s RamShelf) Page(assets page.Assets) page.RamsPage {
	out := page.RamsPage{Assets: assets, Text: s.Text, Count: counted(len(s.Rams), "ram", "rams"), Empty: len(s.Rams) == 0 && strings.TrimSpace(s.Text) == ""}
	if s.Text != "" {
		out.Count += " found"
	}
	out.NoHit = noHit(s.Text, len(s.Rams))
	for _, r := range s.Rams {
		out.Rams = append(out.Rams, r.page())
	}
	if s.Removed != nil {
		out.Removed, out.Back = say.TakenOffShelf(s.Removed.Told[drafts.PathRamName]), s.Back
	}
	return out
}

// OneRam is the page of one ram.
type OneRam struct {
	Ram    Ram
	Typed  map[string]string // what was typed and not saved; nil for nothing
	Faults press.Problems
	Done   string       // what was done just now: DoneTold, DoneAnew or nothing
	Plans  []PlanOption // whose figures it may take
}

// What may have been done to a ram just now.
const (
	DoneTold = "told"
	DoneAnew = "anew"
)

// A PlanOption is a plan to choose.
type PlanOption struct {
	ID                     int64
	Name, Number, Revision string
	Changed                time.Time
}

// label tells plans apart, also those of one name, and in a narrow list.
func (p PlanOption) label() string {
	name := Title{Name: p.Name}.page().Name
	issued := say.NothingIssued()
	if p.Revision != "" {
		issued = "revision " + p.Revision
	}
	of := say.Changed(issued, p.Changed)
	if number := strings.TrimSpace(p.Number); number != "" {
		return number + ", " + of + ": " + name
	}
	return name + ", " + of
}

// Page gives the page of the ram.
func (o OneRam) Page(assets page.Assets) page.RamPage {
	told := o.Ram.Told
	if o.Typed != nil {
		told = o.Typed
	}
	out := page.RamPage{
		Assets: assets, Ram: o.Ram.page(), Fields: tellingFields(told, o.Faults), Trouble: trouble(o.Faults),
	}
	switch o.Done {
	case DoneTold:
		out.Done = "Saved."
	case DoneAnew:
		out.Done = say.FiguresTakenAnew()
		out.Look = o.earlier(out.Fields)
	}
	if !o.Ram.Damaged {
		out.Figures, out.Points, out.Words = o.Ram.figures(), o.Ram.points(), o.Ram.words()
	}
	for _, p := range o.Plans {
		out.Plans = append(out.Plans, page.Option{Value: strconv.FormatInt(p.ID, 10), Label: p.label(), Chosen: o.Typed["ram.plan"] == strconv.FormatInt(p.ID, 10)})
	}
	return out
}

// ofFigures are the fields that speak of where the figures come from.
var ofFigures = []string{drafts.PathRamSource, drafts.PathRamMeasured, drafts.PathRamMethod}

// earlier marks what still speaks of the figures of before, and says so.
func (o OneRam) earlier(fields []page.Field) string {
	said := false
	for _, path := range ofFigures {
		if strings.TrimSpace(o.Ram.Told[path]) == "" {
			continue
		}
		said = true
		for k := range fields {
			if fields[k].Name == page.NameSigned+path {
				fields[k].Help = say.OfEarlierFigures(fields[k].Help)
			}
		}
	}
	if !said {
		return ""
	}
	return say.LookAtWhatIsSaid()
}

// PlanRam is the page on which a plan takes a ram, or gives its own.
type PlanRam struct {
	Title   Title
	Address string
	Version int64
	Rams    []Ram
	Text    string // that is searched for
	Entries []press.Entry
	From    string // the shelf's ram that it was copied from
	Typed   map[string]string
	Faults  press.Problems
	Put     *Ram // put on the shelf just now
}

// Page gives that page.
func (v PlanRam) Page(assets page.Assets) page.PlanRamPage {
	out := page.PlanRamPage{
		Assets: assets, Title: v.Title.page(), Address: v.Address, Version: strconv.FormatInt(v.Version, 10), Text: v.Text,
		Count: counted(len(v.Rams), "ram", "rams"), Empty: len(v.Rams) == 0 && strings.TrimSpace(v.Text) == "", From: v.From,
		Nothing: len(v.Entries) == 0, Trouble: trouble(v.Faults),
	}
	if v.Text != "" {
		out.Count += " found"
	}
	out.NoHit = noHit(v.Text, len(v.Rams))
	for _, r := range v.Rams {
		out.Rams = append(out.Rams, r.page())
	}
	told := v.Typed
	if told == nil {
		d := &press.Draft{Entries: v.Entries}
		name, _ := d.Get("ram.name")
		source, _ := d.Get("ram.curve.source")
		told = map[string]string{drafts.PathRamName: name, drafts.PathRamSource: clipped(source, 200)}
	}
	out.Fields = tellingFields(told, v.Faults)
	if v.Put != nil {
		out.Put, out.PutID = v.Put.Told[drafts.PathRamName], strconv.FormatInt(v.Put.ID, 10)
	}
	return out
}

func clipped(s string, most int) string {
	if runes := []rune(s); len(runes) > most {
		return string(runes[:most])
	}
	return s
}
