package proving

import (
	"math"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// written are numbers without loss, those that are none as null, and an answer that was not
// given as null.
var written = json.WithMarshalers(json.JoinMarshalers(
	json.MarshalToFunc(func(e *jsontext.Encoder, v float64) error {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return e.WriteToken(jsontext.Null)
		}
		if v == 0 {
			v = 0 // minus zero is zero
		}
		return e.WriteToken(jsontext.Float(v))
	}),
	json.MarshalToFunc(func(e *jsontext.Encoder, v Answer) error {
		if v == "" {
			return e.WriteToken(jsontext.Null)
		}
		return e.WriteToken(jsontext.String(string(v)))
	}),
))

// JSON writes the assessment as one object, laid out for reading. The same assessment gives
// the same bytes.
func (a *Assessment) JSON() []byte {
	data, err := json.Marshal(a, written, json.Deterministic(true), jsontext.WithIndent("  "))
	if err != nil {
		panic("proving: an assessment cannot be written: " + err.Error())
	}
	return append(data, '\n')
}
