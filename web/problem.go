package web

import (
	"encoding/json"
	"errors"
	"net/http"
	"strings"

	"ramplan/press"
	"ramplan/press/archive"
)

// A problem is a refusal as programs read it (RFC 9457). It has no type of its
// own: the status says what kind it is.
type problem struct {
	Title   string         `json:"title"`
	Status  int            `json:"status"`
	Detail  string         `json:"detail"`
	Errors  []problemError `json:"errors,omitempty"`  // every fault of the document that was sent
	Version int64          `json:"version,omitempty"` // the one that stands, when the one named is older
}

// A problemError is one fault; in a table it stands at a line.
type problemError struct {
	press.Problem
	Line int `json:"line,omitempty"` // from 1; the path is then the column
}

func sendProblem(w http.ResponseWriter, e refusal, cause error) {
	p := problem{Title: http.StatusText(e.status), Status: e.status, Detail: e.text}
	var faults press.Problems
	if errors.As(cause, &faults) {
		for _, f := range faults {
			p.Errors = append(p.Errors, problemError{Problem: f})
		}
	}
	var table faultyLines
	if errors.As(cause, &table) {
		for _, f := range table.faults {
			p.Errors = append(p.Errors, problemError{press.Problem{Path: f.Column, Code: press.CodeSyntax, Message: f.Message}, f.Line})
		}
	}
	var stale *archive.Stale
	if errors.As(cause, &stale) {
		p.Version = stale.Head.Version
	}
	body, _ := json.Marshal(p)
	h := w.Header()
	h.Set("Content-Type", "application/problem+json")
	h.Set("Cache-Control", "no-store")
	w.WriteHeader(e.status)
	_, _ = w.Write(append(body, '\n'))
}

// faulty is a document that was sent and is refused with its faults.
type faulty struct {
	refusal
	faults press.Problems
}

func (e faulty) Unwrap() []error { return []error{e.refusal, e.faults} }

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
