// Package drafts is what is done with drafts without keeping them: what changed
// between two, by which words one is found, and the ram of one put into another.
package drafts
