// Package presstest is for tests: published answers with their sources, one
// way to compare with them, and a count of what was compared.
//
// A published answer is a [Want]: a value, the tolerance that its print allows,
// and the [Source] it comes from. [Equal] compares one; a [Ledger] compares and
// counts, so that a test can say how many values of how many sources agree.
// [Read] reads the tables in testdata/published. A [Document] is a result in which a text
// finds its figures by their keys.
//
// A value has a [Status], and the three are never added up: values of a source
// that was read, values recalled from memory, and values that only our own
// computation gave.
package presstest
