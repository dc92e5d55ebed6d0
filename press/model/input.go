package model

import (
	"slices"

	"ramplan/curves"
)

// An Input is what the model needs to know of a station, complete and sound: every
// number inside its field's range, every relation held. Pointers are nil where an
// entry is absent and nothing stands in for it.
type Input struct {
	Ram         Ram         `json:"ram"`
	Station     Station     `json:"station"`
	Parts       []Part      `json:"parts"`
	Joint       Joint       `json:"joint"`
	Requirement Requirement `json:"requirement"`
	Motion      Motion      `json:"motion"`
	Window      Window      `json:"window"`
	Faults      Faults      `json:"faults"`
	Targets     Targets     `json:"targets"`
	Probe       *Probing    `json:"probe"`    // nil where the section is absent
	Sequence    *Sequence   `json:"sequence"` // likewise

	// Drive is the push of the ram against its setting, through the points of its
	// curve.
	Drive *curves.Curve `json:"-"`

	// Unstated are those of [Perfect] that nobody gave.
	Unstated []string `json:"-"`
}

// Perfect are the fields whose absence means that the station has no such fault.
var Perfect = []string{"station.nest_drift", "station.reference_uncertainty", "ram.force_scatter", "motion.settle_time"}

// Ram is the driven rod with its tool, and what its controller can be set to.
type Ram struct {
	Name              string   `json:"name"`
	ShelfName         string   `json:"shelf_name"`         // of the ram on the shelf that it was copied from
	ShelfDigest       string   `json:"shelf_digest"`       // of that ram when it was copied
	Stroke            float64  `json:"stroke"`             // mm
	MaxSpeed          float64  `json:"max_speed"`          // mm/s
	MaxAccel          float64  `json:"max_accel"`          // mm/s²
	Repeatability     float64  `json:"repeatability"`      // ± mm, two standard deviations
	ForceTolerance    float64  `json:"force_tolerance"`    // ± % of the curve force, two standard deviations
	ForceScatter      float64  `json:"force_scatter"`      // ± N, two standard deviations
	MovingMass        float64  `json:"moving_mass"`        // kg hanging on the ram
	InertiaMass       float64  `json:"inertia_mass"`       // kg that its motion carries; moving_mass when absent
	Direction         string   `json:"direction"`          // Down, Up or Level
	SettingMin        float64  `json:"setting_min"`        // %; the curve's first setting when absent
	SettingMax        float64  `json:"setting_max"`        // %; the curve's last setting when absent
	SettingStep       float64  `json:"setting_step"`       // %
	SettingContinuous *float64 `json:"setting_continuous"` // %
	Curve             Curve    `json:"curve"`
}

// Pressing directions.
const (
	Down  = "down"
	Up    = "up"
	Level = "level"
)

// Curve is the push force against the setting, as entered.
type Curve struct {
	Interpolation string       `json:"interpolation"` // monotone or linear
	Measured      string       `json:"measured"`      // MeasuredDrive or MeasuredTool
	Taken         string       `json:"taken"`         // Down, Up or Level; empty: not stated
	Source        string       `json:"source"`
	Points        [][2]float64 `json:"points"` // %, N
}

// What the figures of a curve hold.
const (
	MeasuredDrive = "drive" // the weight is not in them
	MeasuredTool  = "tool"  // taken with a load cell as mounted, weight included
)

// Station is the frame around the ram: where the nest stands and how it gives.
type Station struct {
	Home                 float64 `json:"home"`                  // mm
	Nest                 float64 `json:"nest"`                  // mm
	NestDrift            float64 `json:"nest_drift"`            // ± mm, uniform
	Stiffness            float64 `json:"stiffness"`             // N/mm
	StiffnessTolerance   float64 `json:"stiffness_tolerance"`   // ± %, two standard deviations
	NestForce            float64 `json:"nest_force"`            // N
	ReferenceUncertainty float64 `json:"reference_uncertainty"` // ± mm, two standard deviations
	PresenceCheck        string  `json:"presence_check"`
	MaxForce             float64 `json:"max_force"`     // N
	PositionStep         float64 `json:"position_step"` // mm
}

// Part is one row of the tolerance stack.
type Part struct {
	Name    string  `json:"name"`
	Nominal float64 `json:"nominal"` // mm
	Minus   float64 `json:"minus"`   // mm, ≥ 0
	Plus    float64 `json:"plus"`    // mm, ≥ 0
	Contact float64 `json:"contact"` // coefficient in the contact height
	Seat    float64 `json:"seat"`    // coefficient in the seated height
	Shape   string  `json:"shape"`   // Uniform, Triangular or Normal
	Sigmas  float64 `json:"sigmas"`  // standard deviations in the half-width, for Normal
	Insert  bool    `json:"insert"`  // goes away with the insert
	Datum   bool    `json:"datum"`   // lies under the face from which the drawing measures

	DatumCount float64 `json:"datum_count"` // coefficient in the datum's height; the seat's when absent, 0 without Datum
}

// Carries tells whether the row lies between nest and tool when the part is
// seated: it is in the reading.
func (row Part) Carries() bool { return row.Seat != 0 }

// MarksInsert tells whether some row goes away with the insert. Where none does,
// nothing is known of where the ram stops without one.
func (in *Input) MarksInsert() bool {
	return slices.ContainsFunc(in.Parts, func(row Part) bool { return row.Insert })
}

// Shapes of a row's distribution.
const (
	Uniform    = "uniform"
	Triangular = "triangular"
	Normal     = "normal"
)

// Joint is what holds the two parts together, and what the press-in takes.
type Joint struct {
	Kind string `json:"kind"` // Touch, Measured or Interference
	Stop string `json:"stop"` // Shoulder or NoStop

	Counterforce float64 `json:"counterforce"` // N, at the seat, every kind

	ForceLow     float64 `json:"force_low"`     // N, measured
	ForceTypical float64 `json:"force_typical"` // N, measured
	ForceHigh    float64 `json:"force_high"`    // N, measured

	Diameter        float64    `json:"diameter"`   // mm
	Engagement      float64    `json:"engagement"` // mm
	Pilot           *float64   `json:"pilot"`      // mm; press-in travel less engagement when absent
	Fit             string     `json:"fit"`        // such as H7/s6
	Hole            [2]float64 `json:"hole"`       // µm, low and high deviation
	Shaft           [2]float64 `json:"shaft"`      // µm, low and high deviation
	SmoothingMost   float64    `json:"smoothing_most"`
	SmoothingLeast  float64    `json:"smoothing_least"`
	Hub             Hub        `json:"hub"`
	Insert          Insert     `json:"insert"`
	FrictionLow     float64    `json:"friction_low"`
	FrictionHigh    float64    `json:"friction_high"`
	HoldingFriction float64    `json:"holding_friction"` // friction_low when absent
	Drag            float64    `json:"drag"`             // N
	HoldingRequired float64    `json:"holding_required"` // N
	HoldingSafety   float64    `json:"holding_safety"`
	ServiceChange   [2]float64 `json:"service_change"` // K from room temperature
}

// Kinds of joint.
const (
	Touch        = "touch"
	Measured     = "measured"
	Interference = "interference"
)

// What ends the press-in.
const (
	Shoulder = "shoulder"
	NoStop   = "none"
)

// Hub is the outer ring of an interference joint.
type Hub struct {
	OutsideDiameter float64 `json:"outside_diameter"` // mm
	Modulus         float64 `json:"modulus"`          // MPa
	Poisson         float64 `json:"poisson"`
	Yield           float64 `json:"yield"`        // MPa
	RoughnessRz     float64 `json:"roughness_rz"` // µm
	Expansion       float64 `json:"expansion"`    // 1/K
}

// Insert is the inner part of an interference joint.
type Insert struct {
	Bore        float64 `json:"bore"`    // mm, 0 for solid
	Modulus     float64 `json:"modulus"` // MPa
	Poisson     float64 `json:"poisson"`
	Yield       float64 `json:"yield"`        // MPa
	RoughnessRz float64 `json:"roughness_rz"` // µm
	Expansion   float64 `json:"expansion"`    // 1/K
}

// Requirement is what the drawing asks for.
type Requirement struct {
	HeightLow       float64 `json:"height_low"`        // mm above the datum
	HeightHigh      float64 `json:"height_high"`       // mm above the datum
	MinSeatingForce float64 `json:"min_seating_force"` // N
}

// Motion is how the ram is to move.
type Motion struct {
	ApproachSpeed float64 `json:"approach_speed"` // mm/s
	Accel         float64 `json:"accel"`          // mm/s²
	Decel         float64 `json:"decel"`          // mm/s²
	SlowSpeed     float64 `json:"slow_speed"`     // mm/s
	RetractSpeed  float64 `json:"retract_speed"`  // mm/s
	SettleTime    float64 `json:"settle_time"`    // s
	ConfirmTime   float64 `json:"confirm_time"`   // s
	HoldTime      float64 `json:"hold_time"`      // s
	HandlingTime  float64 `json:"handling_time"`  // s
	ScanTime      float64 `json:"scan_time"`      // s
	Clearance     float64 `json:"clearance"`      // mm
}

// Window holds what is set by hand instead of proposed.
type Window struct {
	Setting     *float64 `json:"setting"`      // %
	ApproachEnd *float64 `json:"approach_end"` // mm, A
	PushStroke  *float64 `json:"push_stroke"`  // mm
	ZoneStart   *float64 `json:"zone_start"`   // mm, Z1
	ZoneEnd     *float64 `json:"zone_end"`     // mm, Z2
	GuardFactor float64  `json:"guard_factor"`
	EdgeMargin  *float64 `json:"edge_margin"` // mm

	Rule       string  `json:"rule"`        // ByGuard, ByTarget or ByProcess; empty as ByGuard
	ProcessSD  float64 `json:"process_sd"`  // standard deviations, for ByProcess
	SettingFor string  `json:"setting_for"` // ForForce or ForTarget; empty as ForForce
	TargetsFor string  `json:"targets_for"` // OnAverage or OnWorstDay; empty as OnAverage
}

// Rules by which zone start and push end are proposed.
const (
	ByGuard   = "guard"   // inside the drawing by the uncertainty of a reading
	ByTarget  = "target"  // so that the targets for false accept and false reject are met
	ByProcess = "process" // around what the process makes, no wider than by the guard
)

// What the setting is proposed for.
const (
	ForForce  = "force"
	ForTarget = "target"
)

// On which day the targets are to be met.
const (
	OnAverage  = "average"
	OnWorstDay = "worst_day"
)

// Faults sizes the rows of the fault catalogue.
type Faults struct {
	Chip              float64      `json:"chip"`      // mm
	Gap               float64      `json:"gap"`       // mm
	NestWear          float64      `json:"nest_wear"` // mm
	SampleProbability float64      `json:"sample_probability"`
	Other             []OtherFault `json:"other"`
}

// OtherFault is a row of the user's own.
type OtherFault struct {
	Name   string  `json:"name"`
	Height float64 `json:"height"` // mm by which the part stands taller
	Good   bool    `json:"good"`
}

// Targets are the shares above which the plan is questioned.
type Targets struct {
	FalseAcceptPPM  float64 `json:"false_accept_ppm"`
	FalseRejectPPM  float64 `json:"false_reject_ppm"`
	EarlyContactPPM float64 `json:"early_contact_ppm"`
	ConformingShare float64 `json:"conforming_share"`
}
