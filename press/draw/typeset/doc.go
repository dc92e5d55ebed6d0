// Package typeset puts texts into boxes: paragraphs that are broken into lines and poured
// into columns, chapters whose heading is said again, blocks, tables, and labels that stand
// beside a line without lying over one another.
package typeset
