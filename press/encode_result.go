package press

import (
	"math"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"ramplan/press/model"
)

// finite writes numbers without loss; one that is none is null, as a figure that
// does not exist.
var finite = json.MarshalToFunc(func(e *jsontext.Encoder, v float64) error {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return e.WriteToken(jsontext.Null)
	}
	if v == 0 {
		v = 0 // minus zero is zero
	}
	return e.WriteToken(jsontext.Float(v))
})

// JSON writes the result as one object: on one line, or laid out for reading.
func (r *Result) JSON(lines bool) ([]byte, error) {
	options := []json.Options{json.WithMarshalers(finite), json.FormatNilSliceAsNull(true)}
	if lines {
		options = append(options, jsontext.WithIndent("  "))
	}
	data, err := json.Marshal(r.document(), options...)
	if err != nil {
		return nil, err
	}
	return append(data, '\n'), nil
}

// written is the document of a result.
type written struct {
	Format     string `json:"format"`
	PlanDigest string `json:"plan_digest"`
	File       string `json:"file,omitempty"`
	*model.Outcome
}

// document is what is written of a result: where nothing can be pressed in, what
// would rest on a seated part is null.
func (r *Result) document() any {
	all := written{ResultFormat, r.PlanDigest(), r.File, &r.Outcome}
	if r.Window.Target != nil {
		return struct {
			written
			Window Readings `json:"window"`
		}{all, r.withChanges()}
	}
	if r.Pressable() {
		return all
	}
	return struct {
		written
		Travel *Travel   `json:"travel"`
		Window *Readings `json:"window"`
		Risk   *Risk     `json:"risk"`
	}{written: all}
}

// withChanges are the readings with the changes that would meet the targets worked out.
func (r *Result) withChanges() Readings {
	win, target := r.Window, *r.Window.Target
	target.Changes = r.TargetChanges()
	win.Target = &target
	return win
}
