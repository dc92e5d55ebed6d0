package press

// Quality is what the pages beside the sheet say about checking and reacting.
type Quality struct {
	Operation            string     `json:"operation"`
	Machine              string     `json:"machine"`
	CharacteristicNumber string     `json:"characteristic_number"`
	CharacteristicClass  string     `json:"characteristic_class"`
	Responsible          string     `json:"responsible"` // for the checks
	SampleSize           string     `json:"sample_size"` // of the periodic measurement
	Frequency            string     `json:"frequency"`   // of the periodic measurement
	LimitCheck           string     `json:"limit_check"`
	SamplesEach          float64    `json:"samples_each"`
	RejectPlace          string     `json:"reject_place"`
	Decides              string     `json:"decides"` // on refused parts
	Reactions            []Reaction `json:"reactions"`
}

// ForTheTeam stands where the works' own quality planning has not said yet.
const ForTheTeam = "for the team to set"

// Reaction is one check of the user's own, for a pair of lamps in a situation.
type Reaction struct {
	Lamps string `json:"lamps"` // one of LampPairs
	When  string `json:"when"`  // one of Situations
	Check string `json:"check"`
}

// LampPairs are the four pairs of signals as a plan writes them: arrival, zone.
var LampPairs = []string{"on-on", "on-off", "off-on", "off-off"}

// Situations are what a reaction plan tells apart.
var Situations = []string{"one", "run", "change", "start"}

// Controller is what the user's own controller calls the setpoints.
type Controller struct {
	Words []SetpointWord `json:"words"`
}

// SetpointWord is the controller's name of one setpoint.
type SetpointWord struct {
	Setpoint string  `json:"setpoint"` // one of Setpoints
	Name     string  `json:"name"`
	Unit     string  `json:"unit"`
	Factor   float64 `json:"factor"`
}

// Setpoints are what is typed into a controller, as a plan writes them.
var Setpoints = []string{
	"setting", "approach_end", "push_stroke", "push_end", "zone_start", "zone_end",
	"approach_speed", "slow_speed", "retract_speed", "accel", "decel", "confirm_time", "hold_time", "watch_time",
	"probe_setting", "probe_end", "probe_confirm_time", "probe_watch_time", "station_zone_start", "station_zone_end",
}
