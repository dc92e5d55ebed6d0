package paper

import (
	"math"

	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	drawings "ramplan/press/draw/proof"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
)

// RecordPage names the pages of the proof among those behind the sheet. Unlike the others
// they are not of a plan alone.
const RecordPage = "record"

// notProvedMark stands across a sheet of an issued revision whose station is not proved.
const notProvedMark = "NOT PROVED"

// A Proof is what is known of the station of a plan: what its studies say of it, and what it
// took over from them.
type Proof struct {
	Assessment *proving.Assessment
	Studies    []*proving.Study // in the order of the assessment
	Adopted    []proof.Adoption
	Damaged    bool // a kept study cannot be read: nothing is proved by the others
}

// unproved tells that the station is not proved.
func (p *Proof) unproved() bool {
	return p.Damaged || p.Assessment.Proved.State != proving.StateProved
}

// why is why it is not.
func (p *Proof) why() string {
	if p.Damaged {
		return sayProof.StudyDamaged()
	}
	return sayProof.WhyNot(&p.Assessment.Proved)
}

// sayProof writes what studies say.
var sayProof proof.Words

// proved says whether the station of the last revision is proved, and why not; empty where
// that is not known, and where something else stands against the sheet.
func (o SheetOptions) proved() string {
	if o.Issue == nil || o.Proof == nil || o.Superseded != "" {
		return ""
	}
	if o.Proof.unproved() {
		return notProvedMark + ": " + o.Proof.why()
	}
	return sayProof.Brief(&o.Proof.Assessment.Proved)
}

// standing says the same as proved in the few words of the card.
func (o SheetOptions) standing() string {
	if o.Issue == nil || o.Proof == nil || o.Superseded != "" {
		return ""
	}
	return sayProof.CardStanding(o.Issue.Revision, &o.Proof.Assessment.Proved, o.Proof.Damaged)
}

// unproved tells that the station is known not to be proved.
func (o SheetOptions) unproved() bool {
	return o.Issue != nil && o.Proof != nil && o.Superseded == "" && o.Proof.unproved()
}

// record puts the proof of the station on pages behind the others: its tables, and the
// drawings of the studies that count.
func (s *sheet) record() {
	r := proof.Record{Plan: s.r, Proof: s.o.Proof.Assessment, Studies: s.o.Proof.Studies, Adopted: s.o.Proof.Adopted}
	if s.o.Issue != nil {
		r.Revision = s.o.Issue.Revision
	}
	s.last = nil // on a page of its own
	for _, t := range sayProof.RecordTables(r) {
		s.table(t)
	}
	s.studies()
}

// counting are the studies that count, as drawings know them, in the order of their kinds.
func (s *sheet) counting() []drawings.Subject {
	var out []drawings.Subject
	a := s.o.Proof.Assessment
	for _, kind := range proving.Kinds {
		if k := a.Proved.Kinds[kind]; k.Study != nil && *k.Study < len(a.Studies) && *k.Study < len(s.o.Proof.Studies) {
			out = append(out, drawings.Subject{Plan: s.r, Study: s.o.Proof.Studies[*k.Study], Judged: &a.Studies[*k.Study]})
		}
	}
	return out
}

// studies puts the drawings of the studies that count beside and under one another, each into
// the lower of two columns, under the tables where there is room.
func (s *sheet) studies() {
	const abreast = 2
	body := s.body()
	width := (body.Width() - (abreast-1)*sheetGutter) / abreast
	o := draw.Options{Flat: true, Width: math.Max(width/sheetScale+2*canvas.Margin, draw.ChartLeast)}
	g, top := s.last, s.tableEnd+sheetGutter
	ends := [abreast]float64{top, top}
	for _, q := range s.counting() {
		for _, what := range drawings.Drawings(q.Study.Kind) {
			d := what.New(q, o)
			k := fitted(d, width)
			high := k * (d.Height - 2*canvas.Margin)
			if high > body.Height()-sheetGutter { // a long list of samples
				k *= (body.Height() - sheetGutter) / high
				high = k * (d.Height - 2*canvas.Margin)
			}
			column := 0
			if ends[1] < ends[0] {
				column = 1
			}
			if ends[column]+high > body.Y1 && ends[1-column]+high > body.Y1 {
				g = s.page(say.StudiesDrawn())
				ends = [abreast]float64{body.Y0, body.Y0}
				column = 0
			} else if ends[column]+high > body.Y1 {
				column = 1 - column
			}
			x, y := body.X0+float64(column)*(width+sheetGutter), ends[column]
			g.add(func(p *canvas.Pen) { p.Within(x-k*canvas.Margin, y-k*canvas.Margin, k, d.Paint) })
			ends[column] += high + sheetGutter
		}
	}
	s.last, s.tableEnd = g, math.Max(ends[0], ends[1])
}
