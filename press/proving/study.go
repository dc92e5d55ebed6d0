package proving

// Format names the document of one study.
const Format = "ramplan.study/1"

// The kinds of a study.
const (
	LoadCell  = "load_cell" // forces at the tool, measured at known settings
	Stiffness = "stiffness" // pushes on a hard block
	Master    = "master"    // many pushes on one master
	Restart   = "restart"   // pushes on one master after each of several restarts
	Trial     = "trial"     // parts as they come
	Samples   = "samples"   // limit samples and the empty nest
	Event     = "event"     // what happened to the station; it has no rows
)

// Kinds are all kinds, in the order in which a station is proved, the event last.
var Kinds = []string{LoadCell, Stiffness, Master, Restart, Trial, Samples, Event}

// What an event tells.
const (
	RamExchanged        = "ram_exchanged"
	ControllerExchanged = "controller_exchanged"
	NestExchanged       = "nest_exchanged"
	ToolExchanged       = "tool_exchanged"
	Moved               = "moved"
	Crash               = "crash"
	SetpointsChanged    = "setpoints_changed"
)

// Events are all events, in the order in which they are offered.
var Events = []string{RamExchanged, ControllerExchanged, NestExchanged, ToolExchanged, Moved, Crash, SetpointsChanged}

// Names of samples that are no part.
const (
	NoInsert = "missing" // the nest holds the hub alone
	BareNest = "empty"   // nothing lies in the nest
)

// Conditions of a station before a push.
const (
	Cold = "cold"
	Warm = "warm"
)

// A Study is what was pushed at a station, as it was given: what was not given is nil, or
// empty in a text. JSON names are those of the document.
type Study struct {
	Format  string `json:"format"`
	Kind    string `json:"kind"`
	TakenAt string `json:"taken_at"` // 2026-11-25, or with time and offset

	TakenBy    string `json:"taken_by,omitempty"`
	Ram        string `json:"ram,omitempty"`
	Notes      string `json:"notes,omitempty"`
	PlanDigest string `json:"plan_digest,omitempty"` // sha256: and at least 12 digits

	Cell            string   `json:"cell,omitempty"`
	CellUncertainty *float64 `json:"cell_uncertainty,omitempty"` // ± % of the reading, two standard deviations
	CalibratedAt    string   `json:"calibrated_at,omitempty"`
	CalibrationDays *float64 `json:"calibration_days,omitempty"` // d

	Height            *float64 `json:"height,omitempty"`             // mm, of the block or master above the nest
	HeightUncertainty *float64 `json:"height_uncertainty,omitempty"` // ± mm, two standard deviations
	Setting           *float64 `json:"setting,omitempty"`            // %
	Resolution        *float64 `json:"resolution,omitempty"`         // mm

	Event string `json:"event,omitempty"`

	Rows []Row `json:"rows,omitempty"`

	empty map[string]bool // texts that were given as empty, by their path
}

// A Row is one push of a study; which of its cells a kind has is the business of the field table.
type Row struct {
	Setting   *float64 `json:"setting,omitempty"` // %
	Force     *float64 `json:"force,omitempty"`   // N
	Reading   *float64 `json:"reading,omitempty"` // mm, where the ram came to rest
	Height    *float64 `json:"height,omitempty"`  // mm above nest or datum
	Arrival   *bool    `json:"arrival,omitempty"`
	Zone      *bool    `json:"zone,omitempty"`
	Sample    string   `json:"sample,omitempty"`
	Start     *float64 `json:"start,omitempty"` // which restart, from 1
	Condition string   `json:"condition,omitempty"`
	Speed     *float64 `json:"speed,omitempty"` // mm/s
	Time      *float64 `json:"time,omitempty"`  // s
	Remark    string   `json:"remark,omitempty"`
}
