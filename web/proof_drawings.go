package web

import (
	"strings"

	"ramplan/press/draw"
	"ramplan/press/draw/proof"
)

// drawStudy draws what a study says, as it fits beside its table.
func (s *site) drawStudy(d *studyDesk, a against) error {
	if d.v.Judged == nil || a.result == nil {
		return nil
	}
	subject := proof.Subject{Plan: a.result, Study: d.v.Study, Judged: d.v.Judged}
	for _, one := range proof.Drawings(d.v.Kind) {
		var svg strings.Builder
		if err := one.New(subject, draw.Options{Compact: true, ID: "proof-" + one.Name}).SVG(&svg); err != nil {
			return err
		}
		d.v.Drawings = append(d.v.Drawings, svg.String())
	}
	return nil
}
