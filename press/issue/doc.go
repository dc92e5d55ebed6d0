// Package issue is what holds of issued revisions, wherever they are kept: what may
// be issued and who signs for it, which letter comes next, whether the drill is the
// same, and what a line of revisions can be.
package issue
