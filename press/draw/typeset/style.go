package typeset

import "ramplan/press/draw/canvas"

// Styles of running text on paper. Nothing is lettered smaller than Least.
var (
	Least  = canvas.Lettered(1.8)
	Text   = canvas.Plain(canvas.Black, Least)
	Quiet  = canvas.Plain(canvas.Quiet, Least)
	Strong = canvas.Bold(canvas.Black, Least)
	Value  = canvas.Plain(canvas.Black, canvas.Lettered(2.5))
	Large  = canvas.Bold(canvas.Black, canvas.Lettered(2.5))
	Title  = canvas.Bold(canvas.Black, canvas.Lettered(3.5))
)

// leading is the distance of baselines on a sheet, in type sizes.
const leading = 1.27

// Lines of a sheet, px: 0.5 and 0.25 mm (ISO 128 proportions).
const (
	Thick = 0.5 * canvas.PerMM
	Thin  = 0.25 * canvas.PerMM
)
