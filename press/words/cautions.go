package words

// Cautions stand on every sheet and in the product.
var Cautions = []string{
	"This is a planning aid: its figures are estimates from the data that were entered. Prove force and position on the station, with a load cell and limit samples, before use.",
	"A force-limited ram still crushes. Guarding, two-hand control, stopping and lock-out follow the machinery rules in force where the station stands (ISO 12100 and ISO 13849 are the usual starting points) and the judgement of a qualified person.",
	"Never put a hand into the work space to try a plan.",
	"Signals that judge parts are not safety functions.",
	"The approach is not force-limited.",
	"A vertical ram may sink or drop without power or brake: prop it before working under it.",
	"A self-locking screw keeps clamping when the power is off.",
	"Where the station counts as a press, the press standards apply (ISO 16092 series).",
}

// TradeCautions are said where they matter. Common practice, no source.
var TradeCautions = []string{
	"Stick-slip near the limit can raise the arrival signal before the ram has come to rest.",
	"The force falls at standstill when a controller lowers its holding current.",
	"Cold grease takes force away: warm up before proving.",
	"A curve holds for its own speed, dwell and temperature.",
	"Near the limit the force builds up slowly and the ram slows down, so pressing takes longer than planned.",
	"Tilt, a missing chamfer, shaving and galling void the friction values.",
	"Air trapped in a blind bore adds force and lifts the insert afterwards: give it a vent.",
	"Come to a taught position always from the same side, because of backlash.",
	"A chip may be crushed and then reads thinner than it was.",
	"Plastics creep: heights measured later are not those that were pressed.",
}
