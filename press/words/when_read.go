package words

import "ramplan/press"

// WhenRead says in one line when the lamps count, before anybody is told what they
// mean: on its way back a good part shows the lamps of another verdict, and between
// two parts both lamps are off. It is [ReadingRule] in a few words.
const WhenRead = "Lamps: held from the end of the push, before the ram goes back, to the next start. Signals off between."

// Returning is what the lamps show while the ram goes back through the zone, where
// nothing stops it.
var Returning = Pair{Zone: true}

// OffAtHome tells whether both lamps must be off at home: they must, unless the zone
// of a plan reaches as far as home.
func OffAtHome(p *press.Plan, s press.Signals) bool { return !s.InZone(p.Station.Home) }
