package web

import (
	"bytes"
	"net/http"
	"strconv"
	"strings"

	"github.com/go-chi/chi/v5"

	"ramplan/press/draw"
	"ramplan/press/draw/proof"
	"ramplan/web/page"
)

// subject is what is drawn of a study; false where nothing can be.
func (d *studyDesk) subject(a against) (proof.Subject, bool) {
	return proof.Subject{Plan: a.result, Study: d.v.Study, Judged: d.v.Judged}, d.v.Judged != nil && a.result != nil
}

// drawStudy draws what a study says, as it fits beside its table, and leads to the files.
func (s *site) drawStudy(d *studyDesk, a against) error {
	subject, ok := d.subject(a)
	if !ok {
		return nil
	}
	for _, one := range proof.Drawings(d.v.Kind) {
		var svg strings.Builder
		if err := one.New(subject, draw.Options{Compact: true, ID: "proof-" + one.Name}).SVG(&svg); err != nil {
			return err
		}
		d.v.Drawings = append(d.v.Drawings, svg.String())
		for _, format := range []string{"svg", "png", "pdf"} {
			address := d.v.Address + "/drawings/" + one.Name + "." + format
			if d.draft {
				address += "?against=" + againstDraft
			}
			d.v.Files = append(d.v.Files, page.Link{Address: address, Text: one.Title() + ", " + strings.ToUpper(format)})
		}
	}
	return nil
}

// judgedOf finds a study and what it says.
func (s *site) judgedOf(r *http.Request) (*studyDesk, against, error) {
	d, err := s.studyOf(r)
	if err != nil {
		return nil, against{}, err
	}
	a, err := s.against(r.Context(), d.id, d.draft)
	if err != nil {
		return nil, a, err
	}
	s.judge(d, a)
	return d, a, nil
}

// sendStudyDrawing answers GET /plans/{id}/proving/{study}/drawings/{what}.{format}.
func (s *site) sendStudyDrawing(w http.ResponseWriter, r *http.Request) error {
	d, a, err := s.judgedOf(r)
	if err != nil {
		return err
	}
	format := chi.URLParam(r, "format")
	one, err := proof.Named(chi.URLParam(r, "what"))
	subject, ok := d.subject(a)
	if err != nil || one.Kind != d.kept.Kind || fileTypes[format] == "" || !ok {
		return notFound(w, r)
	}
	var b bytes.Buffer
	if err := board.take(r.Context(), func() error { return one.Write(&b, format, subject, draw.Options{}) }); err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", fileTypes[format])
	h.Set("Cache-Control", "private, no-cache")
	h.Set("Content-Disposition", `inline; filename="`+d.stem()+"-"+one.Name+"."+format+`"`)
	if format == "svg" {
		h.Set("Content-Security-Policy", aloneSVG)
	}
	_, _ = w.Write(b.Bytes())
	return nil
}

// sendStudyTable answers GET /plans/{id}/proving/{study}/table.csv: the rows that can be read.
func (s *site) sendStudyTable(w http.ResponseWriter, r *http.Request) error {
	d, err := s.studyOf(r)
	if err != nil {
		return err
	}
	study := d.v.Study
	if study == nil {
		study, _ = d.v.Typed.Study()
	}
	sendCSV(w, d.stem(), study.CSV())
	return nil
}

// stem starts the name of a file of the study.
func (d *studyDesk) stem() string {
	return "study-" + strings.ReplaceAll(d.kept.Kind, "_", "-") + "-" + strconv.FormatInt(int64(d.kept.ID), 10)
}
