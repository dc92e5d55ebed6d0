package proof

import "ramplan/press/proving"

// A Field of a study, for people: of its head, or a column of its rows.
type Field struct {
	Label, Unit, Spoken string
	Help                string
}

// FieldOf names a field of a study of a kind.
func (say Words) FieldOf(kind, name string) Field {
	f, ok := fields[name]
	if !ok {
		return Field{Label: name}
	}
	if name == "height" {
		f.Help = heightHelp(kind)
	}
	return f
}

// HeadHelp is the help of a field of the head, which differs from that of the rows.
func (say Words) HeadHelp(kind, name string) string {
	if name == "height" {
		if kind == proving.Master {
			return "Of the master, above the nest."
		}
		return "Of the block, above the nest, where it is the same for all pushes."
	}
	return say.FieldOf(kind, name).Help
}

func heightHelp(kind string) string {
	if kind == proving.Trial || kind == proving.Samples {
		return "Measured, above the datum."
	}
	return "Above the nest."
}

const spokenMM, spokenPercent = "in millimetres", "in percent"

var fields = map[string]Field{
	"taken_at":           {Label: "Taken on", Help: "Such as 2026-11-25, or with the time, 2026-11-25T14:05:00+01:00."},
	"taken_by":           {Label: "Taken by", Help: "Who pushed."},
	"ram":                {Label: "Ram", Help: "Name or number of the ram that pushed."},
	"notes":              {Label: "Notes"},
	"plan_digest":        {Label: "Plan", Help: "The beginning of its digest, as a sheet prints it: sha256: and 12 digits."},
	"cell":               {Label: "Load cell", Help: "Its number."},
	"cell_uncertainty":   {Label: "Uncertainty of the cell", Unit: "± %", Spoken: "plus or minus percent of the reading", Help: "Of the reading, two standard deviations, from its certificate. Empty: taken as perfect."},
	"calibrated_at":      {Label: "Calibrated on", Help: "Such as 2026-05-11."},
	"calibration_days":   {Label: "Calibration holds", Unit: "d", Spoken: "in days", Help: "365 where nothing is given."},
	"height":             {Label: "Height", Unit: "mm", Spoken: spokenMM},
	"height_uncertainty": {Label: "Uncertainty of heights", Unit: "± mm", Spoken: "plus or minus millimetres", Help: "Two standard deviations. Empty: taken as perfect."},
	"setting":            {Label: "Setting", Unit: "%", Spoken: spokenPercent, Help: "Of the current. Empty: the plan's."},
	"resolution":         {Label: "Resolution", Unit: "mm", Spoken: spokenMM, Help: "The step of the reading."},
	"force":              {Label: "Force", Unit: "N", Spoken: "in newtons", Help: "Measured at the tool."},
	"reading":            {Label: "Reading", Unit: "mm", Spoken: spokenMM, Help: "Where the ram came to rest."},
	"arrival":            {Label: "Arrival", Help: "Arrival lamp: on or off."},
	"zone":               {Label: "Zone", Help: "Zone lamp: on or off."},
	"sample":             {Label: "Sample", Help: "Its name; missing: no insert; empty: bare nest."},
	"start":              {Label: "Start", Help: "After which restart it was pushed, from 1."},
	"condition":          {Label: "Cold or warm", Help: "cold or warm."},
	"speed":              {Label: "Speed", Unit: "mm/s", Spoken: "in millimetres per second", Help: "Of the push."},
	"time":               {Label: "Time", Unit: "s", Spoken: "in seconds", Help: "Of the push, in all rows or in none: in s, or as 14:05:30."},
	"remark":             {Label: "Remark"},
}
