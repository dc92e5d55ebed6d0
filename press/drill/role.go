package drill

import "slices"

// A Role is whose exam it is. Who works at the station is asked what the lamps mean and
// what to do; who sets it up is asked for zones, checks and predictions, in an exam of its
// own. Both are asked about hands: who sets up jogs, homes and takes guards away. The empty role asks everything.
type Role string

// The roles.
const (
	Technician Role = "technician"
	Setter     Role = "setter"
)

// Roles are all roles, in the order in which they are learned.
var Roles = []Role{Technician, Setter}

// Kinds are what a role is asked.
func (r Role) Kinds() []Kind {
	switch r {
	case Technician:
		return []Kind{Read, Act, Safe}
	case Setter:
		return []Kind{Safe, Predict, React, Blind, Zone}
	}
	return Kinds
}

// keysFor are the items of a level, and of those below it, that a role is asked.
func (d *Drill) keysFor(role Role, level int) []string {
	return slices.DeleteFunc(d.Keys(level), func(key string) bool { return !slices.Contains(role.Kinds(), d.KindOf(key)) })
}
