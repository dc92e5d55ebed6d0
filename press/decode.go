package press

import "ramplan/press/strict"

// A Problem is one fault of an entry, and Problems is every fault of one document: package
// strict holds their meaning.
type (
	Problem  = strict.Problem
	Problems = strict.Problems
)

// The kinds of fault.
const (
	CodeSyntax    = strict.CodeSyntax
	CodeSize      = strict.CodeSize
	CodeDepth     = strict.CodeDepth
	CodeFormat    = strict.CodeFormat
	CodeNewer     = strict.CodeNewer
	CodeUnknown   = strict.CodeUnknown
	CodeCase      = strict.CodeCase
	CodeDuplicate = strict.CodeDuplicate
	CodeType      = strict.CodeType
	CodeRequired  = strict.CodeRequired
	CodeRange     = strict.CodeRange
	CodeLength    = strict.CodeLength
	CodeRows      = strict.CodeRows
	CodeChoice    = strict.CodeChoice
	CodeOrder     = strict.CodeOrder
	CodeConflict  = strict.CodeConflict
	CodeClass     = strict.CodeClass
	CodeMore      = strict.CodeMore
)

// Limits of a document, and of what is told of one.
const (
	MaxBytes   = strict.MaxBytes
	MaxDepth   = strict.MaxDepth
	MostListed = strict.MostListed
)

// Decode reads one plan and checks it. Every fault that can be told at once is
// told at once, up to [MostListed]; the plan is nil when there is one.
func Decode(data []byte) (*Plan, Problems) {
	doc, ps := readDocument(data, Format)
	if doc == nil || ps.Fatal() {
		return nil, ps.Listed()
	}
	plan, more := check(doc)
	if ps = append(ps, more...); len(ps) > 0 {
		return nil, ps.Listed()
	}
	return plan, nil
}

// readDocument reads a plan or a draft into a tree. Who asks for the one and is given the
// other is told what to do.
func readDocument(data []byte, format string) (*strict.Node, Problems) {
	return strict.Read(data, format, strict.Others{DraftFormat: ", an unfinished draft; open it in the bench, complete it and save it as a plan"})
}
