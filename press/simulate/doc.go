// Package simulate presses many parts in, one after the other, at the station that a
// plan describes, and tells what becomes of them: what each one is, and what the two
// signals say of it.
//
// It does so in two ways. [Count] samples plainly: it needs no theory, and resolves
// what is not too rare. [Estimate] integrates exactly what can be integrated and samples
// the rest on scrambled Sobol points: it resolves a share of one part in a million at
// once. Both give limits, and the estimate must lie within those of the count.
//
// What is drawn for a part, and what happens to it in which order, stands in
// [Station]; every draw is independent of the others. Units: mm, N, µm of interference,
// shares from 0 to 1.
package simulate
