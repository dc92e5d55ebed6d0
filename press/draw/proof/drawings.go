package proof

import (
	"errors"
	"io"
	"strings"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/proving"
)

// A Subject is what is drawn: what a plan leads to, a study, and what was found in it.
type Subject struct {
	Plan   *press.Result
	Study  *proving.Study
	Judged *proving.Judged // nil: nothing was found yet
}

// A Drawing is one way to look at studies of a kind.
type Drawing struct {
	Name string // as the command line and addresses write it
	Kind string // of the studies that it is of
	make func(Subject, draw.Options) *canvas.Picture
}

// Title names what it shows, in two or three words.
func (d Drawing) Title() string { return say.ProofDrawing(d.Name) }

// New makes the drawing. Where a study says nothing of the kind it is a sentence.
func (d Drawing) New(s Subject, o draw.Options) *canvas.Picture { return d.make(s, o) }

// Write writes it in one of the formats of package canvas.
func (d Drawing) Write(w io.Writer, format string, s Subject, o draw.Options) error {
	if err := canvas.CheckFormat(format); err != nil {
		return err
	}
	return d.New(s, o).Write(w, format)
}

// drawings are all that can be drawn, in the order in which they are offered.
var drawings = []Drawing{
	{"forces", proving.LoadCell, newForces},
	{"block", proving.Stiffness, newBlock},
	{"master", proving.Master, newMaster},
	{"starts", proving.Restart, newStarts},
	{"trial", proving.Trial, newTrial},
	{"seen", proving.Trial, newSeen},
	{"lamps", proving.Samples, newLamps},
}

// Drawings are those of studies of a kind; none of an event.
func Drawings(kind string) []Drawing {
	var out []Drawing
	for _, d := range drawings {
		if d.Kind == kind {
			out = append(out, d)
		}
	}
	return out
}

// Names lists all drawings of studies.
func Names() []string {
	var out []string
	for _, d := range drawings {
		out = append(out, d.Name)
	}
	return out
}

// Named gives a drawing by its name.
func Named(name string) (Drawing, error) {
	for _, d := range drawings {
		if d.Name == name {
			return d, nil
		}
	}
	return Drawing{}, errors.New(say.NoProofDrawing(name, strings.Join(Names(), ", ")))
}

// resultOf is what was found in a study, where it is of this type.
func resultOf[R any](s Subject) *R {
	if s.Judged == nil || s.Plan == nil || s.Study == nil {
		return nil
	}
	r, _ := s.Judged.Result.(*R)
	return r
}

// nothing says why a drawing shows nothing.
func nothing(kind string, o draw.Options) *canvas.Picture {
	return draw.Sentence(kind, say.NothingToDraw(say.ProofDrawing(kind)), o)
}
