// Package canvas is what the drawings are drawn on and with: the inks of one theme, a
// [Pen], letters and their widths, and one code for every output, SVG, PNG and PDF, on the
// canvas of gonum.org/v1/plot/vg. It knows no plan: what it draws is a [Layout].
//
// # Classes
//
// Every SVG has the class drawing on its root, beside that of its kind (strip,
// force, pressin or cycle), and compact in the narrow form. A page that wants
// both forms of a drawing puts them into one element of the class drawings, each
// with an ID of its own, and lets its style sheet choose by the room there is.
//
// Every shape carries its colour twice: as attributes, which are the light theme
// of an exported file, and as a class, so that the page's style sheet can put on
// another theme:
//
//	fill-NAME   a filled shape, and every text
//	line-NAME   a stroked line
//
// where NAME is one of paper, ground, ink, quiet, faint, good, long, short,
// accent and alert. Tints are the same classes with a fill-opacity attribute,
// which style sheets leave alone. No shape has a style attribute: a page whose
// content security policy forbids inline styles shows the drawing as it is.
package canvas
