package carry

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"io"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"ramplan/press"
)

// Format is the name of the document that travels.
const Format = "ramplan.sheet/1"

// An Issue is what an issued revision adds to its plan. A nil Issue is a draft.
type Issue struct {
	Revision string `json:"revision"`
	Date     string `json:"date"` // as printed, such as 2026-11-25
	Prepared string `json:"prepared"`
	Checked  string `json:"checked"`
	Approved string `json:"approved"`
	Reason   string `json:"reason"`  // for the change
	Despite  string `json:"despite"` // why it was issued although there were blockers; empty without any
	Second   string `json:"second"`  // who answers for that beside the approver
}

// Carried is a plan on its way, with what was issued of it.
type Carried struct {
	Plan   []byte // the plan's own bytes
	Digest string // of the plan, as [press.Plan.Digest] gives it
	Issue  *Issue // nil: a draft
}

// document is Carried as it is written.
type document struct {
	Format string `json:"format"`
	Plan   string `json:"plan"`
	Digest string `json:"digest"`
	Issue  *Issue `json:"issue,omitempty"`
	Check  string `json:"check"` // SHA-256 of the document with this left empty
}

// Encode writes the document. The plan must be one that [press.Decode] takes.
func (c Carried) Encode() []byte {
	d := document{Format: Format, Plan: string(c.Plan), Digest: c.Digest, Issue: c.Issue}
	d.Check = d.sum()
	return d.marshal()
}

func (d document) marshal() []byte {
	data, err := json.Marshal(d, json.Deterministic(true))
	if err != nil {
		panic("carry: a plan that is no UTF-8 was to be carried: " + err.Error())
	}
	return data
}

func (d document) sum() string {
	d.Check = ""
	sum := sha256.Sum256(d.marshal())
	return hex.EncodeToString(sum[:])
}

// opening is how every document begins, up to the number of its format.
var opening = []byte(`{"format":"ramplan.sheet/`)

// maxDocument is the most bytes of a document: a plan of the largest size, every
// byte of it escaped.
const maxDocument = 6*press.MaxBytes + 1<<16

// decode reads one document and leaves what stands behind it. It checks that the
// plan is one, and that it is the plan whose digest is given.
func decode(r io.Reader) (Carried, error) {
	limited := &io.LimitedReader{R: r, N: maxDocument}
	value, err := jsontext.NewDecoder(limited).ReadValue()
	switch {
	case err != nil && limited.N <= 0:
		return Carried{}, ErrBomb
	case err != nil:
		return Carried{}, ErrDamaged
	case !bytes.HasPrefix(value, opening):
		return Carried{}, ErrNoPlan
	}
	var d document
	if err := json.Unmarshal(value, &d); err != nil {
		return Carried{}, ErrDamaged
	}
	if d.Format != Format {
		return Carried{}, ErrNewer
	}
	if d.Check != d.sum() {
		return Carried{}, ErrDamaged
	}
	plan, problems := press.Decode([]byte(d.Plan))
	if len(problems) > 0 {
		return Carried{}, unsound(problems)
	}
	if plan.Digest() != d.Digest {
		return Carried{}, ErrDamaged
	}
	return Carried{Plan: []byte(d.Plan), Digest: d.Digest, Issue: d.Issue}, nil
}

// Says names what is carried, in one line.
func (c Carried) Says() string {
	if c.Issue == nil {
		return "a draft, " + c.Digest
	}
	return "revision " + c.Issue.Revision + " of " + c.Issue.Date + ", " + c.Digest
}
