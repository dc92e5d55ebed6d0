// Package strict reads JSON documents without forgiving anything: what was given and what
// was not, key by key and in order, with every fault that can be told at once and where it
// stands. It knows no document: what the keys are and what they may hold is the business of
// who reads one, such as packages press (plans) and proving (studies).
package strict
