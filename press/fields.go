package press

// A Kind tells what an entry is.
type Kind int

// The kinds of entry.
const (
	Number Kind = iota // a number
	Text               // a line, or for Lines > 1 a few lines, of text
	Choice             // one of a few words
	Flag               // true or false
	Rows               // a list of rows
)

// Limit is one end of an allowed range.
type Limit struct {
	Value float64
	Open  bool // the value itself is not allowed
}

// Field is one input of the plan: the single home of its path, label, unit,
// default, allowed range and help. The checker, the form, the messages and the
// manual read it.
type Field struct {
	Path     string   // parts[].plus; [] stands for the number of a row
	Kind     Kind     //
	Label    string   // for people
	Unit     string   // as printed; empty for a plain number
	Help     string   // one line
	Required bool     //
	Default  any      // float64, string or bool; nil: nothing stands in, or Derived says what
	Derived  string   // what stands in when absent, in words
	Low      *Limit   // numbers
	High     *Limit   // numbers
	Choices  []string // choices
	MaxRunes int      // texts
	Lines    int      // texts of more than one line
	MinRows  int      // rows
	MaxRows  int      // rows
	For      []string // kinds of joint that have this field; nil: all
	Steps    []string // kinds of step that have this field; nil: all
	Whole    bool     // numbers: no part of one is allowed
}

// Largest is the size that no number of a plan may exceed.
const Largest = 1e9

// Sections are the groups of fields in the order of the engineer's questions.
// Each is a prefix of paths.
var Sections = []Section{
	{"title", "Title", "What the plan is called and who answers for it."},
	{"ram", "Ram", "The driven rod, its limits and its push force against the motor current."},
	{"station", "Station", "The frame and the nest that the ram pushes against."},
	{"parts", "Parts", "Every length between the nest and the tool, one row each."},
	{"joint", "Joint", "What pressing the parts together takes."},
	{"requirement", "Requirement", "What the drawing asks for."},
	{"motion", "Motion", "How the ram moves, and how long it waits."},
	{"window", "Window", "What you set by hand. Left empty, it is proposed."},
	{"probe", "Probe", "A first push at a low setting, which a loose part fails."},
	{"sequence", "Sequence", "The whole cycle as steps of the ram, where it is more than approach, push and retract."},
	{"faults", "Faults", "How large the faults of the catalogue are."},
	{"targets", "Targets", "The shares above which the plan is questioned."},
	{"quality", "Quality plan", "What the pages beside the sheet say about checking and reacting."},
	{"controller", "Controller", "What your own controller calls the setpoints."},
}

// Section is a group of fields.
type Section struct{ Path, Label, Help string }

var (
	zero       = &Limit{Value: 0}
	aboveZero  = &Limit{Value: 0, Open: true}
	half       = &Limit{Value: 0.5}
	belowHalf  = &Limit{Value: 0.5, Open: true}
	one        = &Limit{Value: 1}
	belowOne   = &Limit{Value: 1, Open: true}
	two        = &Limit{Value: 2}
	below100   = &Limit{Value: 100, Open: true}
	hundred    = &Limit{Value: 100}
	million    = &Limit{Value: 1e6}
	thousandth = &Limit{Value: 1e-3}
)

var (
	onlyMeasured     = []string{Measured}
	onlyInterference = []string{Interference}
	pressed          = []string{Measured, Interference}

	moveSteps  = []string{StepMove}
	shiftSteps = []string{StepShift}
	goingSteps = []string{StepMove, StepShift}
	waitSteps  = []string{StepWait}
)

// Fields is the field table, in the order of the engineer's questions.
var Fields = []Field{
	{Path: "title.name", Kind: Text, Required: true, Label: "Name", Help: "What the plan is called, such as the part that is pressed."},
	{Path: "title.number", Kind: Text, Default: "", Label: "Number", Help: "The plan's identification number."},
	{Path: "title.part_number", Kind: Text, Default: "", Label: "Part number", Help: "The number of the finished part."},
	{Path: "title.part_revision", Kind: Text, Default: "", Label: "Part revision", Help: "The revision of the part drawing that the plan is made for."},
	{Path: "title.characteristic", Kind: Text, Default: "", Label: "Characteristic", Help: "The characteristic of the drawing that the station ensures."},
	{Path: "title.owner", Kind: Text, Default: "", Label: "Legal owner", Help: "The organisation that owns the plan."},
	{Path: "title.prepared_by", Kind: Text, Default: "", Label: "Prepared by", Help: "Who made the plan."},
	{Path: "title.checked_by", Kind: Text, Default: "", Label: "Checked by", Help: "Who checked the figures."},
	{Path: "title.approved_by", Kind: Text, Default: "", Label: "Approved by", Help: "Who released the plan."},
	{Path: "title.notes", Kind: Text, Default: "", MaxRunes: 4000, Lines: 4, Label: "Notes", Help: "Anything the next reader should know; it stands on the sheet."},

	{Path: "ram.name", Kind: Text, Default: "", Label: "Ram", Help: "What you call this ram."},
	{Path: "ram.shelf_name", Kind: Text, Default: "", Label: "From the shelf", Help: "The ram of the shelf that these entries were copied from."},
	{Path: "ram.shelf_digest", Kind: Text, Default: "", MaxRunes: 80, Label: "Copied as", Help: "What the shelf's ram held then, as a digest; filled in when it is copied."},
	{Path: "ram.stroke", Required: true, Low: aboveZero, Unit: "mm", Label: "Stroke", Help: "The last position that the ram can reach."},
	{Path: "ram.max_speed", Required: true, Low: aboveZero, Unit: "mm/s", Label: "Greatest speed", Help: "The ram's own limit."},
	{Path: "ram.max_accel", Required: true, Low: aboveZero, Unit: "mm/s²", Label: "Greatest acceleration", Help: "The ram's own limit."},
	{Path: "ram.repeatability", Default: 0.02, Low: zero, Unit: "mm", Label: "Repeatability", Help: "± about one position, two standard deviations."},
	{Path: "ram.force_tolerance", Default: 15.0, Low: zero, High: below100, Unit: "%", Label: "Force tolerance", Help: "± of the curve force from ram to ram and day to day, two standard deviations."},
	{Path: "ram.force_scatter", Default: 0.0, Low: zero, Unit: "N", Label: "Force scatter", Help: "± in newtons, mostly screw friction, two standard deviations."},
	{Path: "ram.moving_mass", Required: true, Low: zero, Unit: "kg", Label: "Moving mass", Help: "What hangs on the ram, tool included: its weight adds to or takes from the push."},
	{Path: "ram.inertia_mass", Low: zero, Derived: "the moving mass", Unit: "kg", Label: "Inertia mass", Help: "What the ram's motion carries, the rotor included, as a mass at the tool: often many times the moving mass. Left empty, every blow is shown without the rotor, as a lower bound."},
	{Path: "ram.direction", Kind: Choice, Default: Down, Choices: []string{Down, Up, Level}, Label: "Direction", Help: "Where the ram pushes. Pushing up, something else has to hold the parts down."},
	{Path: "ram.setting_min", Derived: "the curve's first setting", Unit: "%", Label: "Least setting", Help: "The least motor current that can be set, inside the curve."},
	{Path: "ram.setting_max", Derived: "the curve's last setting", Unit: "%", Label: "Greatest setting", Help: "The greatest motor current that can be set, inside the curve."},
	{Path: "ram.setting_step", Default: 1.0, Low: aboveZero, Unit: "%", Label: "Setting step", Help: "Settings are whole multiples of it."},
	{Path: "ram.setting_continuous", Low: aboveZero, Derived: "not stated", Unit: "%", Label: "Continuous setting", Help: "The motor current that may be held without end."},
	{Path: "ram.curve.interpolation", Kind: Choice, Default: "monotone", Choices: []string{"monotone", "linear"}, Label: "Between the points", Help: "A smooth curve that never overshoots, or straight lines."},
	{Path: "ram.curve.measured", Kind: Choice, Default: MeasuredDrive, Choices: []string{MeasuredDrive, MeasuredTool}, Label: "Force taken at", Help: "drive: the weight is not in the figures. tool: load cell as mounted, in this plan's direction, weight included."},
	{Path: "ram.curve.taken", Kind: Choice, Derived: "not stated", Choices: []string{Down, Up, Level}, Label: "Taken while pressing", Help: "For a curve taken at the tool: how the ram stood then. The weight in its figures holds for that direction only. Taken pressing down, a curve gives a ram that presses up twice the weight too much, a level one once."},
	{Path: "ram.curve.source", Kind: Text, Default: "", Label: "Source of the curve", Help: "Where the figures come from, and how they were taken."},
	{Path: "ram.curve.points", Kind: Rows, Required: true, MinRows: 2, MaxRows: 500, Label: "Curve points", Help: "Push force against setting, both rising from row to row."},
	{Path: "ram.curve.points[][0]", Required: true, Unit: "%", Label: "Setting", Help: "Motor current, in percent of its rating."},
	{Path: "ram.curve.points[][1]", Required: true, Low: aboveZero, Unit: "N", Label: "Force", Help: "Push force at this setting."},

	{Path: "station.home", Default: 0.0, Unit: "mm", Label: "Home", Help: "Where the ram waits and the cycle starts."},
	{Path: "station.nest", Required: true, Unit: "mm", Label: "Nest", Help: "The ram position at which the tool would touch the empty nest, at zero force."},
	{Path: "station.nest_drift", Default: 0.0, Low: zero, Unit: "mm", Label: "Nest drift", Help: "± by which the nest wanders, any value as likely as another."},
	{Path: "station.stiffness", Required: true, Low: aboveZero, Unit: "N/mm", Label: "Stiffness", Help: "Everything between encoder and seat: frame, screw, bearings, tool and parts."},
	{Path: "station.stiffness_tolerance", Default: 10.0, Low: zero, High: below100, Unit: "%", Label: "Stiffness tolerance", Help: "± of the stiffness, two standard deviations."},
	{Path: "station.nest_force", Default: 0.0, Low: zero, Unit: "N", Label: "Nest force", Help: "The force with which the nest position was taught; 0 when it was only touched."},
	{Path: "station.reference_uncertainty", Default: 0.0, Low: zero, Unit: "mm", Label: "Reference uncertainty", Help: "± for homing, warm-up growth and the setting of the nest, two standard deviations."},
	{Path: "station.presence_check", Kind: Text, Default: "", Label: "Presence check", Help: "Another check that finds a missing insert, such as a sensor in the nest. Leave it empty when there is none."},
	{Path: "station.max_force", Required: true, Low: aboveZero, Unit: "N", Label: "Greatest force", Help: "What the part or the tool may bear."},
	{Path: "station.position_step", Default: 0.01, Low: aboveZero, Unit: "mm", Label: "Position step", Help: "Positions are typed in as whole multiples of it."},

	{Path: "parts", Kind: Rows, Required: true, MinRows: 1, MaxRows: 200, Label: "Parts", Help: "Every length between the nest and the tool, one row each."},
	{Path: "parts[].name", Kind: Text, Default: "", Label: "What is measured", Help: "A name for the row, such as base plate; the figure goes into Nominal."},
	{Path: "parts[].nominal", Required: true, Unit: "mm", Label: "Nominal", Help: "The nominal length."},
	{Path: "parts[].minus", Required: true, Low: zero, Unit: "mm", Label: "Minus", Help: "How much shorter it may be, as a positive figure."},
	{Path: "parts[].plus", Required: true, Low: zero, Unit: "mm", Label: "Plus", Help: "How much longer it may be."},
	{Path: "parts[].contact", Required: true, Label: "In contact", Help: "How often it counts in the height at first contact: usually −1, 0 or 1."},
	{Path: "parts[].seat", Required: true, Label: "In seat", Help: "How often it counts in the seated height: usually −1, 0 or 1."},
	{Path: "parts[].shape", Kind: Choice, Default: Uniform, Choices: []string{Uniform, Triangular, Normal}, Label: "Shape", Help: "How the lengths are spread between the limits."},
	{Path: "parts[].sigmas", Default: 3.0, Low: aboveZero, Label: "Sigmas", Help: "Used with the shape normal only: how many standard deviations fill half the tolerance."},
	{Path: "parts[].insert", Kind: Flag, Default: false, Label: "Insert", Help: "The row goes away when the insert is missing."},
	{Path: "parts[].datum", Kind: Flag, Default: false, Label: "Datum", Help: "The row lies under the face from which the drawing measures the height."},
	{Path: "parts[].datum_count", Derived: "as in seat", Label: "Datum count", Help: "For a datum row that does not carry the insert (In seat 0), such as a plate beside it: how often it counts in the height of the datum."},

	{Path: "joint.kind", Kind: Choice, Required: true, Choices: []string{Touch, Measured, Interference}, Label: "Kind", Help: "touch: nothing is pressed in. measured: you know the force at the seat. interference: it is computed from the fit."},
	{Path: "joint.stop", Kind: Choice, Default: Shoulder, Choices: []string{Shoulder, NoStop}, For: pressed, Label: "Stopped by", Help: "shoulder: the parts meet a face. none: pressed to a depth with nothing to stop them."},
	{Path: "joint.counterforce", Default: 0.0, Low: zero, Unit: "N", Label: "Counterforce", Help: "What a seal, a spring or trapped air pushes back with at the seat. It rises from the contact on and holds nothing afterwards."},
	{Path: "joint.force_low", Required: true, Low: zero, For: onlyMeasured, Unit: "N", Label: "Least force at the seat", Help: "The loosest fit that you measured."},
	{Path: "joint.force_typical", Required: true, Low: zero, For: onlyMeasured, Unit: "N", Label: "Typical force at the seat", Help: "The usual fit. Enter the greatest force on the way; a snap has its peak before the seat."},
	{Path: "joint.force_high", Required: true, Low: zero, For: onlyMeasured, Unit: "N", Label: "Greatest force at the seat", Help: "The tightest fit that you measured, by its greatest force on the way."},
	{Path: "joint.diameter", Required: true, Low: aboveZero, High: &Limit{Value: 1e4}, For: onlyInterference, Unit: "mm", Label: "Joint diameter", Help: "Nominal, up to 500 mm with a fit code."},
	{Path: "joint.engagement", Required: true, Low: aboveZero, For: onlyInterference, Unit: "mm", Label: "Engaged length", Help: "The length over which the seated parts hold each other."},
	{Path: "joint.pilot", Low: zero, Derived: "press-in travel less engaged length", For: onlyInterference, Unit: "mm", Label: "Pilot", Help: "How far the insert travels from first contact before the tight length begins."},
	{Path: "joint.fit", Kind: Text, Derived: "give hole and shaft instead", For: onlyInterference, Label: "Fit code", Help: "Hole class, then shaft class after ISO 286, such as H7/s6; or give the deviations below."},
	{Path: "joint.hole[0]", For: onlyInterference, Unit: "µm", Label: "Hole, lower deviation", Help: "From the nominal diameter.", Derived: "from the fit code"},
	{Path: "joint.hole[1]", For: onlyInterference, Unit: "µm", Label: "Hole, upper deviation", Help: "From the nominal diameter.", Derived: "from the fit code"},
	{Path: "joint.shaft[0]", For: onlyInterference, Unit: "µm", Label: "Shaft, lower deviation", Help: "From the nominal diameter.", Derived: "from the fit code"},
	{Path: "joint.shaft[1]", For: onlyInterference, Unit: "µm", Label: "Shaft, upper deviation", Help: "From the nominal diameter.", Derived: "from the fit code"},
	{Path: "joint.smoothing_most", Default: 0.8, Low: zero, High: one, For: onlyInterference, Label: "Most smoothing", Help: "The share of both roughnesses that the pressing takes off the interference at most."},
	{Path: "joint.smoothing_least", Default: 0.0, Low: zero, High: one, For: onlyInterference, Label: "Least smoothing", Help: "The same share at least."},
	{Path: "joint.hub.outside_diameter", Required: true, Low: aboveZero, For: onlyInterference, Unit: "mm", Label: "Hub outside diameter", Help: "Larger than the joint diameter."},
	{Path: "joint.hub.modulus", Required: true, Low: aboveZero, For: onlyInterference, Unit: "MPa", Label: "Hub modulus", Help: "Modulus of elasticity."},
	{Path: "joint.hub.poisson", Required: true, Low: zero, High: belowHalf, For: onlyInterference, Label: "Hub Poisson's ratio", Help: "About 0.3 for metals."},
	{Path: "joint.hub.yield", Required: true, Low: aboveZero, For: onlyInterference, Unit: "MPa", Label: "Hub yield strength", Help: "The least that the material standard guarantees."},
	{Path: "joint.hub.roughness_rz", Default: 0.0, Low: zero, For: onlyInterference, Unit: "µm", Label: "Hub roughness Rz", Help: "Of the bore."},
	{Path: "joint.hub.expansion", Low: zero, High: thousandth, Derived: "not stated", For: onlyInterference, Unit: "1/K", Label: "Hub expansion", Help: "Thermal expansion; needed for a service temperature change."},
	{Path: "joint.insert.bore", Default: 0.0, Low: zero, For: onlyInterference, Unit: "mm", Label: "Insert bore", Help: "0 for a solid insert; smaller than the joint diameter."},
	{Path: "joint.insert.modulus", Required: true, Low: aboveZero, For: onlyInterference, Unit: "MPa", Label: "Insert modulus", Help: "Modulus of elasticity."},
	{Path: "joint.insert.poisson", Required: true, Low: zero, High: belowHalf, For: onlyInterference, Label: "Insert Poisson's ratio", Help: "About 0.3 for metals."},
	{Path: "joint.insert.yield", Required: true, Low: aboveZero, For: onlyInterference, Unit: "MPa", Label: "Insert yield strength", Help: "The least that the material standard guarantees."},
	{Path: "joint.insert.roughness_rz", Default: 0.0, Low: zero, For: onlyInterference, Unit: "µm", Label: "Insert roughness Rz", Help: "Of the outside."},
	{Path: "joint.insert.expansion", Low: zero, High: thousandth, Derived: "not stated", For: onlyInterference, Unit: "1/K", Label: "Insert expansion", Help: "Thermal expansion; needed for a service temperature change."},
	{Path: "joint.friction_low", Required: true, Low: zero, High: two, For: onlyInterference, Label: "Least friction", Help: "While pressing in."},
	{Path: "joint.friction_high", Required: true, Low: zero, High: two, For: onlyInterference, Label: "Greatest friction", Help: "While pressing in."},
	{Path: "joint.holding_friction", Low: zero, High: two, Derived: "the least friction", For: onlyInterference, Label: "Holding friction", Help: "After assembly, when the joint is pulled."},
	{Path: "joint.drag", Default: 0.0, Low: zero, For: onlyInterference, Unit: "N", Label: "Drag", Help: "What the push takes besides the fit all the way, such as the friction of a guide."},
	{Path: "joint.holding_required", Default: 0.0, Low: zero, For: onlyInterference, Unit: "N", Label: "Holding force required", Help: "What the finished joint must hold along its axis."},
	{Path: "joint.holding_safety", Default: 1.0, Low: one, For: onlyInterference, Label: "Holding safety", Help: "The factor on the force that must be held."},
	{Path: "joint.service_change[0]", Default: 0.0, For: onlyInterference, Unit: "K", Label: "Service change, lowest", Help: "Lowest change from room temperature in service."},
	{Path: "joint.service_change[1]", Default: 0.0, For: onlyInterference, Unit: "K", Label: "Service change, highest", Help: "Highest change from room temperature in service."},

	{Path: "requirement.height_low", Required: true, Unit: "mm", Label: "Least height", Help: "Seated height above the datum that the drawing allows at least."},
	{Path: "requirement.height_high", Required: true, Unit: "mm", Label: "Greatest height", Help: "Seated height above the datum that the drawing allows at most."},
	{Path: "requirement.min_seating_force", Default: 0.0, Low: zero, Unit: "N", Label: "Least seating force", Help: "The force on the seat that must be left over when the joint has taken its share."},

	{Path: "motion.approach_speed", Required: true, Low: aboveZero, Unit: "mm/s", Label: "Approach speed", Help: "Of the fast move; it is not force-limited."},
	{Path: "motion.accel", Required: true, Low: aboveZero, Unit: "mm/s²", Label: "Acceleration", Help: "Speeding up."},
	{Path: "motion.decel", Required: true, Low: aboveZero, Unit: "mm/s²", Label: "Deceleration", Help: "Slowing down."},
	{Path: "motion.slow_speed", Required: true, Low: aboveZero, Unit: "mm/s", Label: "Slow speed", Help: "Of the push at limited force; no faster than the approach."},
	{Path: "motion.retract_speed", Required: true, Low: aboveZero, Unit: "mm/s", Label: "Retract speed", Help: "Of the way back home."},
	{Path: "motion.settle_time", Default: 0.0, Low: zero, Unit: "s", Label: "Settle time", Help: "From the seat until the set force stands and arrival comes on: 0.04 to 2 s, to be measured on the controller."},
	{Path: "motion.confirm_time", Default: 0.05, Low: zero, Unit: "s", Label: "Confirm time", Help: "From arrival until the two signals are read."},
	{Path: "motion.hold_time", Default: 0.0, Low: zero, Unit: "s", Label: "Hold time", Help: "How long the ram presses on after that."},
	{Path: "motion.handling_time", Default: 0.0, Low: zero, Unit: "s", Label: "Handling time", Help: "Putting the parts in and taking them out."},
	{Path: "motion.scan_time", Default: 0.01, Low: aboveZero, Unit: "s", Label: "Scan time", Help: "How often the controller looks at its signals."},
	{Path: "motion.clearance", Default: 1.0, Low: zero, Unit: "mm", Label: "Clearance", Help: "Kept between the end of the approach and the earliest contact."},

	{Path: "window.setting", Derived: "proposed", Unit: "%", Label: "Setting", Help: "The motor-current limit of the push."},
	{Path: "window.approach_end", Derived: "proposed", Unit: "mm", Label: "Approach end", Help: "Where the fast approach ends and the slow push begins."},
	{Path: "window.push_stroke", Low: aboveZero, Derived: "proposed", Unit: "mm", Label: "Push stroke", Help: "The travel allowed from the approach end at limited force."},
	{Path: "window.zone_start", Derived: "proposed", Unit: "mm", Label: "Zone start", Help: "Where the zone signal comes on."},
	{Path: "window.zone_end", Derived: "proposed", Unit: "mm", Label: "Zone end", Help: "Where the zone signal goes off again."},
	{Path: "window.guard_factor", Default: 1.0, Low: zero, Label: "Guard factor", Help: "How many expanded uncertainties the window stays inside the drawing's limits."},
	{Path: "window.edge_margin", Low: zero, Derived: "four repeatabilities or two scans of slow travel, the larger", Unit: "mm", Label: "Edge margin", Help: "How far the zone reaches past the push end."},
	{Path: "window.rule", Kind: Choice, Default: ByGuard, Choices: []string{ByGuard, ByTarget, ByProcess}, Label: "Proposed by", Help: "guard: inside the drawing by the uncertainty. target: so that the false accept and reject targets are met. process: around what the process makes."},
	{Path: "window.process_sd", Default: 4.0, Low: aboveZero, High: &Limit{Value: 10}, Label: "Process width", Help: "For the rule process: how many standard deviations of the readings the window reaches on both sides of the nominal one."},
	{Path: "window.setting_for", Kind: Choice, Default: ForForce, Choices: []string{ForForce, ForTarget}, Label: "Setting chosen for", Help: "force: most room to both ends of the force window. target: a step of that window which meets the targets, where the first does not."},
	{Path: "window.targets_for", Kind: Choice, Default: OnAverage, Choices: []string{OnAverage, OnWorstDay}, Label: "Targets hold on", Help: "average: over stations and days. worst_day: on a day on which everything that is the same for all its parts stands to one side."},

	{Path: "probe.use", Kind: Flag, Default: false, Label: "Probe first", Help: "Push first at a low setting: a sound fit stalls in it, a loose part or none lets the ram run on to the probe end and is refused."},
	{Path: "probe.setting", Derived: "proposed", Unit: "%", Label: "Probe setting", Help: "The motor-current limit of the probe, below that of the push."},
	{Path: "probe.end", Derived: "proposed", Unit: "mm", Label: "Probe end", Help: "Where the probe ends when nothing stalls it; before the zone start."},
	{Path: "probe.confirm_time", Low: zero, Derived: "the confirm time of the push", Unit: "s", Label: "Probe confirm time", Help: "From arrival, or the probe end, until the signals are looked at."},
	{Path: "probe.zone_live", Kind: Flag, Default: false, Label: "Zone alive in the probe", Help: "The zone signal works during the probe too, and must then be off."},

	{Path: "sequence.relative_from", Kind: Choice, Default: FromActual, Choices: []string{FromActual, FromTarget}, Label: "A shift counts from", Help: "From where the ram is (actual), or from where it was last sent to (target). Controllers differ."},
	{Path: "sequence.station_zone[0]", Derived: "not stated", Unit: "mm", Label: "Station zone, start", Help: "Its signal comes on by position alone, whatever the step."},
	{Path: "sequence.station_zone[1]", Derived: "not stated", Unit: "mm", Label: "Station zone, end", Help: "More than its start."},
	{Path: "sequence.hold.step", Required: true, Low: zero, High: &Limit{Value: 99}, Whole: true, Label: "Hold in step", Help: "The step in which the hold input goes off; no wait. A plan's file counts steps from 0."},
	{Path: "sequence.hold.pass", Default: 1.0, Low: one, High: hundred, Whole: true, Label: "Hold in pass", Help: "Which pass of a step that is done several times."},
	{Path: "sequence.hold.at", Required: true, Unit: "mm", Label: "Hold at", Help: "Where the ram is when the input goes off."},
	{Path: "sequence.hold.time", Required: true, Low: zero, Unit: "s", Label: "Hold lasts", Help: "From the input going off until it is on again. A hold input is no safety function."},
	{Path: "sequence.steps", Kind: Rows, Required: true, MinRows: 1, MaxRows: 100, Label: "Steps", Help: "What the ram does from home on, in this order: one press, and before it a probe if there is one."},
	{Path: "sequence.steps[].kind", Kind: Choice, Required: true, Choices: []string{StepMove, StepShift, StepWait, StepProbe, StepPress}, Label: "Step", Help: "move: to a position. shift: by a way. wait: stand. probe, press: push at limited force."},
	{Path: "sequence.steps[].name", Kind: Text, Default: "", Label: "Step name", Help: "What the step is for."},
	{Path: "sequence.steps[].to", Required: true, Steps: moveSteps, Unit: "mm", Label: "To", Help: "The position that the ram moves to."},
	{Path: "sequence.steps[].by", Required: true, Steps: shiftSteps, Unit: "mm", Label: "By", Help: "How far the ram shifts: more than 0 toward the work, less than 0 away from it."},
	{Path: "sequence.steps[].times", Default: 1.0, Low: one, High: hundred, Whole: true, Steps: shiftSteps, Label: "Times", Help: "How often the shift is done."},
	{Path: "sequence.steps[].pause", Default: 0.0, Low: zero, Steps: shiftSteps, Unit: "s", Label: "Pause", Help: "A stop after each of them."},
	{Path: "sequence.steps[].speed", Low: aboveZero, Derived: "the approach speed", Steps: goingSteps, Unit: "mm/s", Label: "Step speed", Help: "Of this step alone."},
	{Path: "sequence.steps[].accel", Low: aboveZero, Derived: "the acceleration", Steps: goingSteps, Unit: "mm/s²", Label: "Step acceleration", Help: "Of this step alone."},
	{Path: "sequence.steps[].decel", Low: aboveZero, Derived: "the deceleration", Steps: goingSteps, Unit: "mm/s²", Label: "Step deceleration", Help: "Of this step alone."},
	{Path: "sequence.steps[].hand_over", Kind: Flag, Default: false, Steps: goingSteps, Label: "Without rest", Help: "The next step begins at this one's end without rest."},
	{Path: "sequence.steps[].on_hold", Kind: Choice, Default: GoOn, Choices: []string{GoOn, Cancel}, Steps: goingSteps, Label: "On hold", Help: "When the hold is over: on to the same target (go_on), or the next step begins from there (cancel)."},
	{Path: "sequence.steps[].zone[0]", Derived: "not stated", Steps: goingSteps, Unit: "mm", Label: "Step zone, start", Help: "Where this step makes a signal of its own come on. It stays where it is when the target is changed; a button offers to move it."},
	{Path: "sequence.steps[].zone[1]", Derived: "not stated", Steps: goingSteps, Unit: "mm", Label: "Step zone, end", Help: "More than its start."},
	{Path: "sequence.steps[].time", Required: true, Low: zero, Steps: waitSteps, Unit: "s", Label: "Wait", Help: "How long the ram stands."},

	{Path: "faults.chip", Default: 0.1, Low: zero, Unit: "mm", Label: "Chip", Help: "Thickness of a chip under the part."},
	{Path: "faults.gap", Default: 0.05, Low: zero, Unit: "mm", Label: "Gap", Help: "By how much an unseated part stands off its seat."},
	{Path: "faults.nest_wear", Default: 0.05, Low: zero, Unit: "mm", Label: "Nest wear", Help: "Depth by which the nest has worn or been struck down."},
	{Path: "faults.sample_probability", Default: 0.999, Low: half, High: belowOne, Label: "Sample probability", Help: "How surely the limit samples must be judged."},
	{Path: "faults.other", Kind: Rows, MaxRows: 50, Label: "Own faults", Help: "Faults of your own, by how much taller the part stands."},
	{Path: "faults.other[].name", Kind: Text, Required: true, Label: "Fault", Help: "What went wrong."},
	{Path: "faults.other[].height", Required: true, Unit: "mm", Label: "Taller by", Help: "By how much taller the part stands; negative for shorter."},
	{Path: "faults.other[].good", Kind: Flag, Default: false, Label: "Good part", Help: "The part is good all the same and should pass."},

	{Path: "targets.false_accept_ppm", Default: 100.0, Low: zero, High: million, Unit: "ppm", Label: "False accept", Help: "Parts of a wrong height that are accepted, of all parts."},
	{Path: "targets.false_reject_ppm", Default: 1000.0, Low: zero, High: million, Unit: "ppm", Label: "False reject", Help: "Good parts refused, of all parts."},
	{Path: "targets.early_contact_ppm", Default: 1.0, Low: zero, High: million, Unit: "ppm", Label: "Early contact", Help: "Parts met while the ram still approaches."},
	{Path: "targets.conforming_share", Default: 0.9973, Low: zero, High: one, Label: "Conforming share", Help: "The least share of parts that the process makes within the drawing."},

	{Path: "quality.operation", Kind: Text, Default: "", Label: "Operation", Help: "Number and name of the operation, as your control plan has it."},
	{Path: "quality.machine", Kind: Text, Default: "", Label: "Machine", Help: "The station or machine by its number, as your control plan has it."},
	{Path: "quality.characteristic_number", Kind: Text, Default: "", Label: "Characteristic number", Help: "Of the characteristic in the title, as the drawing or your control plan has it."},
	{Path: "quality.characteristic_class", Kind: Text, Default: "", Label: "Characteristic class", Help: "How your works or your customer mark a special characteristic."},
	{Path: "quality.responsible", Kind: Text, Default: ForTheTeam, Label: "Responsible", Help: "Who carries out the checks of the control plan, by name or function."},
	{Path: "quality.sample_size", Kind: Text, Default: ForTheTeam, Label: "Sample size", Help: "How many parts the periodic measurement takes. The two lamps judge every part, whatever stands here."},
	{Path: "quality.frequency", Kind: Text, Default: ForTheTeam, Label: "Frequency", Help: "How often the periodic measurement is made."},
	{Path: "quality.limit_check", Kind: Text, Default: "at the start of each shift", Label: "Shift check is made", Help: "When the shift check is made; its own page lists the pushes."},
	{Path: "quality.samples_each", Default: 3.0, Low: one, High: &Limit{Value: 100}, Label: "Samples of each height", Help: "How many of each limit sample are made. All are pressed at set-up and after a change; the page of the shift check says which of them it takes."},
	{Path: "quality.reject_place", Kind: Text, Default: "", Label: "Refused parts go to", Help: "Such as a locked box at the station; printed in the reaction plan."},
	{Path: "quality.decides", Kind: Text, Default: "", Label: "Decides on refused parts", Help: "Who alone says what becomes of them, and is called when a check fails; printed in the reaction plan."},
	{Path: "quality.reactions", Kind: Rows, MaxRows: 80, Label: "Own reactions", Help: "Checks of your own works; for a pair of lamps and a situation they take the place of the proposed ones."},
	{Path: "quality.reactions[].lamps", Kind: Choice, Required: true, Choices: LampPairs, Label: "Lamps", Help: "Arrival, then zone."},
	{Path: "quality.reactions[].when", Kind: Choice, Default: "one", Choices: Situations, Label: "When", Help: "one: one part after good ones. run: several in a row. change: first after a change. start: every part since the shift began."},
	{Path: "quality.reactions[].check", Kind: Text, Required: true, Label: "Check", Help: "What to look at or do, in the order of the rows."},

	{Path: "controller.words", Kind: Rows, MaxRows: 20, Label: "Own words", Help: "How the controller names a setpoint, and in which unit it wants it."},
	{Path: "controller.words[].setpoint", Kind: Choice, Required: true, Choices: Setpoints, Label: "Setpoint", Help: "One of the setpoints of the plan."},
	{Path: "controller.words[].name", Kind: Text, Required: true, Label: "Called", Help: "What the controller calls it."},
	{Path: "controller.words[].unit", Kind: Text, Default: "", Label: "Its unit", Help: "As the controller writes it; empty: as the plan."},
	{Path: "controller.words[].factor", Default: 1.0, Low: aboveZero, Label: "Factor", Help: "The plan's figure times this is the controller's, such as 100 for hundredths of a millimetre."},
}
