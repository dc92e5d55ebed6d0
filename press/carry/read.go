package carry

import (
	"bytes"
	"errors"

	"ramplan/press"
)

// MaxFile is the largest file that is looked into.
const MaxFile = 64 << 20

// maxPlans is the most plans that are taken from one file.
const maxPlans = 1000

// maxUnpacked is the most bytes that the plans of one file may unpack to, all
// together: a small file could hold many large ones.
const maxUnpacked = 4 * maxDocument

// kinds are the formats, known by the first bytes of their files.
var kinds = []struct {
	is   func([]byte) bool
	read func([]byte) ([]Carried, error)
}{
	{isPNG, readPNG},
	{isPDF, readPDF},
	{isSVG, readSVG},
}

// Is tells whether a file may hold a plan, by its first bytes: an SVG, a PNG or a
// PDF.
func Is(data []byte) bool {
	for _, k := range kinds {
		if k.is(data) {
			return true
		}
	}
	return false
}

// Foreign tells whether a file that was given as a plan is something else: neither
// a picture that may hold one nor a document that names a format of this program.
// One that is larger than any plan is not looked into: its size says enough.
func Foreign(data []byte) bool {
	if Is(data) || len(data) > press.MaxBytes {
		return false
	}
	return !bytes.HasPrefix(trimmed(data), []byte("{")) || !bytes.Contains(data, []byte(`"ramplan.`))
}

// Extract takes the one plan out of a file. The error is one of those named in
// this package, or tells what is wrong with the plan.
func Extract(data []byte) (Carried, error) {
	all, err := All(data)
	switch {
	case err != nil:
		return Carried{}, err
	case len(all) > 1:
		return Carried{}, ErrMany
	}
	return all[0], nil
}

// All takes every plan out of a file, in the order in which they stand there,
// the same plan once.
func All(data []byte) ([]Carried, error) {
	if len(data) > MaxFile {
		return nil, ErrLarge
	}
	for _, k := range kinds {
		if !k.is(data) {
			continue
		}
		all, err := k.read(data)
		if all = distinct(all); len(all) > 0 {
			return all, nil
		}
		if err == nil {
			err = ErrNoPlan
		}
		return nil, err
	}
	return nil, ErrKind
}

func distinct(all []Carried) []Carried {
	var out []Carried
	seen := map[string]bool{}
	for _, c := range all {
		if name := string(c.Encode()); !seen[name] {
			seen[name] = true
			out = append(out, c)
		}
	}
	return out
}

// graver keeps the error that tells more: that a plan is damaged says more than
// that there is none.
func graver(old, now error) error {
	if old == nil || errors.Is(old, ErrNoPlan) {
		return now
	}
	return old
}

// trimmed is data without what may stand before the first byte that counts.
func trimmed(data []byte) []byte {
	return bytes.TrimLeft(bytes.TrimPrefix(data, []byte("\xEF\xBB\xBF")), " \t\r\n")
}
