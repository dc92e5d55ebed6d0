// Package carry puts a plan inside the pictures that are made of it, and takes
// it out again: to the byte, so that paper, picture and plan share one digest.
//
// What travels is one JSON document, ramplan.sheet/1: the plan's own bytes as a
// string, their digest, and of an issued revision its letter, date, names and
// reason. An SVG holds it as base64 in its metadata, a PNG in a text chunk before
// the picture, a PDF as an attachment. Whoever reads one trusts nothing in it:
// sizes are limited, and the plan is checked and its digest compared.
package carry
