// Package training is what holds of exams and people, wherever records are kept:
// what a record and an exam under way are, whose name is whose, when an exam is
// left, and who is due again.
package training
