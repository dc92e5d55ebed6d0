package main

import (
	"context"
	"errors"
	"slices"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw/paper"
	"ramplan/press/draw/proof"
	"ramplan/press/proving"
	saying "ramplan/press/words/proof"
)

// proving looks at what the command line says of studies.
func (d *drawn) proving() error {
	ofStudy, kept := slices.Contains(proof.Names(), d.what), d.kept.number != ""
	d.record = slices.Contains(d.tables, paper.RecordPage) || d.what == sheetName && (len(d.studies) > 0 || d.every && kept)
	d.tables = slices.DeleteFunc(slices.Clone(d.tables), func(name string) bool { return name == paper.RecordPage })
	csv := d.format == rowsFormat || strings.HasSuffix(strings.ToLower(d.to), "."+rowsFormat)
	switch {
	case len(d.studies) > 0 && kept:
		return errors.New(say.KeptHasItsStudies())
	case len(d.studies) > 0 && d.what != sheetName && !ofStudy:
		return errors.New(say.StudyNotDrawn(d.what))
	case ofStudy && !kept && len(d.studies) != 1:
		return errors.New(say.OneStudyNeeded(d.what))
	case d.record && csv && !d.every:
		return errors.New(say.RecordHasNoRows(paper.RecordPage))
	case d.record && len(d.studies) == 0 && !kept:
		return errors.New(say.RecordNeedsStudies(paper.RecordPage))
	}
	return nil
}

// readStudies reads the studies that were named, or says what is wrong with them.
func (s *source) readStudies(c console, files []string) bool {
	sound := true
	for _, name := range files {
		study, ok := c.readStudy(name)
		sound = sound && ok
		s.studies = append(s.studies, study)
	}
	s.asked = len(files) > 0
	return sound
}

// A past of a kept plan is what was taken over from studies, and the draft that it led to.
type past struct {
	steps []saying.Taking
	led   *press.Draft
}

// keptStudies takes the studies that a kept plan's station is judged by, and the steps that took
// values of studies into its draft, or into the revision of a letter.
func (s *source) keptStudies(ctx context.Context, a *archive.Archive, id archive.ID, letter string) (err error) {
	s.studies, err = a.CountingStudies(ctx, id)
	if damaged := (*archive.Damaged)(nil); errors.As(err, &damaged) {
		s.studies, s.damaged, err = nil, true, nil
	}
	if s.asked = true; err != nil {
		return err
	}
	steps, draft, err := a.StepsTo(ctx, id, letter, saying.Took)
	for _, st := range steps {
		s.past.steps = append(s.past.steps, saying.Taking{At: st.At, Did: st.Did, Was: st.Was, Is: st.Draft})
	}
	s.past.led = draft
	return err
}

// proof is what the studies say today; nil where none could be there.
func (s source) proof(r *press.Result) *paper.Proof {
	if !s.asked {
		return nil
	}
	return &paper.Proof{
		Assessment: proving.Assess(r, s.studies, time.Now().UTC().Format(time.DateOnly)), Studies: s.studies, Damaged: s.damaged,
		Adopted: saying.Words{}.Adoptions(r.Plan, s.past.steps, s.past.led),
	}
}

// layStudy lays out a drawing of a study: of the one that was named, or of the one of its
// kind that counts.
func (d *drawn) layStudy(c console, r *press.Result, o paper.SheetOptions) (*paper.Document, bool) {
	drawing, err := proof.Named(d.what)
	if err != nil {
		c.complain("%v", err)
		return nil, false
	}
	at := -1
	if len(d.studies) > 0 {
		at = 0
		if kind := o.Proof.Studies[0].Kind; kind != drawing.Kind {
			var there []string
			for _, other := range proof.Drawings(kind) {
				there = append(there, other.Name)
			}
			c.complain("%s", say.StudyHasNoSuchDrawing(d.what, kind, strings.Join(append(there, sheetName), ", ")))
			return nil, false
		}
	} else if k := o.Proof.Assessment.Proved.Kinds[drawing.Kind]; k.Study != nil {
		at = *k.Study
	}
	if at < 0 {
		c.complain("%s", say.NoStudyOfKind(d.what, drawing.Kind))
		return nil, false
	}
	subject := proof.Subject{Plan: r, Study: o.Proof.Studies[at], Judged: &o.Proof.Assessment.Studies[at]}
	doc, err := paper.NewStudy(drawing, subject, d.width, !d.title, o)
	if err != nil {
		c.complain("%v", err)
	}
	return doc, err == nil
}
