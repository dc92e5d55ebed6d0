package words

// Cautions stand on every sheet and in the product.
var Cautions = []string{
	"A force-limited ram still crushes, even at the lowest setting. The approach is not force-limited; approach, return, homing and jogging crush as well. Never put a hand into the work space to try a plan.",
	"This is a planning aid: its figures are estimates from the data that were entered. Prove force and position on the station, with a load cell and limit samples, before use.",
	"Signals that judge parts are not safety functions. Every forced input is removed, and signed for, before release.",
	"Guarding, stopping and lock-out follow the machinery rules in force (ISO 12100 and ISO 13849 are the usual starting points; ISO 16092 where the station counts as a press) and a qualified person. " +
		"Guards and buttons stand off by the measured stopping time (ISO 13855); two-hand control protects the one person who uses it (ISO 13851).",
	"Know how a trapped person is freed with the power off, and whether the emergency stop holds the ram or lets it go. A self-locking screw keeps clamping. A vertical ram may sink or drop without power or brake: prop it before working under it.",
	"Parts may burst or jump out: shield the work space. A load cell can kick out: centre it and fix it.",
}

// CautionsInShort stand where [Cautions] have no room and follow on another page.
const CautionsInShort = "A planning aid: prove force and position with a load cell and limit samples before use. The ram crushes at every setting, on the way back, when homing and when jogging too: " +
	"never a hand in the work space. Guarding, stopping and lock-out by the machinery rules in force and a qualified person. Signals that judge parts are not safety functions. Prop a vertical ram."

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
