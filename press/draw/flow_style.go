package draw

// Styles of a sheet. Nothing on it is lettered smaller than sheetLeast.
var (
	sheetLeast = lettered(1.8)
	sheetText  = style{black, sheetLeast, false}
	sheetQuiet = style{quiet, sheetLeast, false}
	sheetBold  = style{black, sheetLeast, true}
	sheetValue = style{black, lettered(2.5), false}
	sheetLarge = style{black, lettered(2.5), true}
	sheetTitle = style{black, lettered(3.5), true}
)

// sheetLeading is the distance of baselines on a sheet, in type sizes.
const sheetLeading = 1.27

// Lines of a sheet, px: 0.5 and 0.25 mm (ISO 128 proportions).
const (
	sheetThick = 0.5 * perMM
	sheetThin  = 0.25 * perMM
)
