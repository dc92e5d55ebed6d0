package model

// Probing is the first push at a low setting.
type Probing struct {
	Use         bool     `json:"use"`
	Setting     *float64 `json:"setting"`      // %
	End         *float64 `json:"end"`          // mm
	ConfirmTime float64  `json:"confirm_time"` // s; that of the press when absent
	ZoneLive    bool     `json:"zone_live"`
}

// Sequence is the whole cycle as steps of the ram.
type Sequence struct {
	RelativeFrom string      `json:"relative_from"` // FromActual or FromTarget
	StationZone  *[2]float64 `json:"station_zone"`  // mm
	Hold         *Hold       `json:"hold"`
	Steps        []Step      `json:"steps"`
}

// Hold is the case in which the hold input goes off.
type Hold struct {
	Step float64 `json:"step"` // index from 0
	Pass float64 `json:"pass"` // from 1
	At   float64 `json:"at"`   // mm
	Time float64 `json:"time"` // s
}

// Step is one step of the ram.
type Step struct {
	Kind     string      `json:"kind"`
	Name     string      `json:"name"`
	To       float64     `json:"to"` // mm
	By       float64     `json:"by"` // mm
	Times    float64     `json:"times"`
	Pause    float64     `json:"pause"` // s
	Speed    *float64    `json:"speed"` // mm/s
	Accel    *float64    `json:"accel"` // mm/s²
	Decel    *float64    `json:"decel"` // mm/s²
	HandOver bool        `json:"hand_over"`
	OnHold   string      `json:"on_hold"` // GoOn or Cancel
	Zone     *[2]float64 `json:"zone"`    // mm
	Time     float64     `json:"time"`    // s
}

// Kinds of steps.
const (
	StepMove  = "move"
	StepShift = "shift"
	StepWait  = "wait"
	StepProbe = "probe"
	StepPress = "press"
)

// What a shift counts from.
const (
	FromActual = "actual"
	FromTarget = "target"
)

// What the hold input does to a step.
const (
	GoOn   = "go_on"
	Cancel = "cancel"
)

// goes tells whether the step is a move or a shift.
func (s Step) goes() bool { return s.Kind == StepMove || s.Kind == StepShift }

// Probes tells whether the station has a first push at a low setting.
func (in *Input) Probes() bool { return in.Probe != nil && in.Probe.Use }
