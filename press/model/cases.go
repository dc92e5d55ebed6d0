package model

import "slices"

// A Case is what stands fixed for a row of the fault catalogue, whatever the plan: the
// model, the words and the drill read it here. A row of the user's own has none.
type Case struct {
	Name   string
	Good   bool    // it should be accepted
	Edge   bool    // it reads at the very edge of the window: what the signals say is a toss-up
	Absent bool    // it rests on a missing insert
	Blind  bool    // the signals may not find it
	First  bool    // what a beginner is asked about
	Stuck  Stuck   // signals that do not follow the ram
	Looks  Picture // how its picture differs from that of a sound part
	meets  meeting // where the tool first meets the part
}

// A Picture is what is seen of a row in a section through the station.
type Picture int

// What can be seen.
const (
	LooksSound      Picture = iota
	LooksEmpty              // no insert
	LooksDouble             // a second insert on the first
	LooksSeated             // seated before the push
	LooksOnChip             // a chip under the part
	LooksLoose              // a bore that does not grip
	LooksTight              // a bore that is too narrow
	LooksOffSeat            // stopped short of its seat
	LooksOnWornNest         // on a nest that gave way
)

// Stuck are signals that do not follow the ram; nil follows.
type Stuck struct{ Arrival, Zone *bool }

// Any tells whether some signal is stuck.
func (s Stuck) Any() bool { return s != Stuck{} }

// On tells whether some signal is stuck on.
func (s Stuck) On() bool { return s.Arrival != nil && *s.Arrival || s.Zone != nil && *s.Zone }

// meeting is where the tool first meets the part of a row.
type meeting int

const (
	meetsTaller  meeting = iota // as much earlier or later as the part reads: it stands taller or lower as a whole
	meetsNominal                // where it meets the nominal part
	meetsSeated                 // where the nominal part is seated
	meetsItself                 // where the row's own contact is
)

// Names of the rows of the fault catalogue, in their order. The user's own rows
// stand between RowGap and RowSettingLow under their own names.
const (
	RowNominal         = "nominal"
	RowTallest         = "tallest-accepted"
	RowShortest        = "shortest-accepted"
	RowLong            = "long"
	RowShort           = "short"
	RowMissing         = "missing"
	RowTwoInserts      = "two-inserts"
	RowAlreadyPressed  = "already-pressed"
	RowTight           = "tight"
	RowLoose           = "loose"
	RowChip            = "chip"
	RowGap             = "gap"
	RowSettingLow      = "setting-low"
	RowSettingHigh     = "setting-high"
	RowNestWorn        = "nest-worn"
	RowArrivalStuckOn  = "arrival-stuck-on"
	RowArrivalStuckOff = "arrival-stuck-off"
	RowZoneStuckOn     = "zone-stuck-on"
	RowZoneStuckOff    = "zone-stuck-off"
)

var stuckOn, stuckOff = true, false

// Cases are the rows of the fault catalogue, in their order.
var Cases = []Case{
	{Name: RowNominal, Good: true, First: true, meets: meetsNominal},
	{Name: RowTallest, Good: true, Edge: true},
	{Name: RowShortest, Good: true, Edge: true},
	{Name: RowLong, Edge: true},
	{Name: RowShort, Edge: true},
	{Name: RowMissing, Absent: true, Blind: true, First: true, Looks: LooksEmpty, meets: meetsItself},
	{Name: RowTwoInserts, First: true, Looks: LooksDouble, meets: meetsItself},
	{Name: RowAlreadyPressed, Blind: true, Looks: LooksSeated, meets: meetsSeated},
	{Name: RowTight, Blind: true, Looks: LooksTight, meets: meetsNominal},
	{Name: RowLoose, Blind: true, Looks: LooksLoose, meets: meetsNominal},
	{Name: RowChip, Blind: true, Looks: LooksOnChip},
	{Name: RowGap, Blind: true, Looks: LooksOffSeat, meets: meetsNominal},
	{Name: RowSettingLow, Good: true, meets: meetsNominal},
	{Name: RowSettingHigh, Good: true, meets: meetsNominal},
	{Name: RowNestWorn, Blind: true, Looks: LooksOnWornNest},
	{Name: RowArrivalStuckOn, Absent: true, Blind: true, Stuck: Stuck{Arrival: &stuckOn}, Looks: LooksEmpty, meets: meetsItself},
	{Name: RowArrivalStuckOff, Blind: true, Stuck: Stuck{Arrival: &stuckOff}, meets: meetsNominal},
	{Name: RowZoneStuckOn, Blind: true, Stuck: Stuck{Zone: &stuckOn}},
	{Name: RowZoneStuckOff, Blind: true, Stuck: Stuck{Zone: &stuckOff}, meets: meetsNominal},
}

// Case gives what stands fixed for the row; nothing for one of the user's own.
func (f FaultRow) Case() Case {
	if f.Own {
		return Case{}
	}
	return caseOf(f.Name)
}

func caseOf(name string) Case {
	i := slices.IndexFunc(Cases, func(c Case) bool { return c.Name == name })
	if i < 0 {
		return Case{}
	}
	return Cases[i]
}
