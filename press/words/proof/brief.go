package proof

import (
	"slices"
	"strings"

	"ramplan/press/proving"
)

// What is said of a station in few words, on sheets, heads and shelves.

// Brief is the state of a station in a line: until when it is proved, or why it is not.
func (say Words) Brief(p *proving.Proved) string {
	if p.State == proving.StateProved && p.Until != nil {
		return "proved until " + *p.Until
	}
	return "not proved: " + say.WhyNot(p)
}

// Standing says of the last revision whether its station is proved; no letter where it is
// named already.
func (say Words) Standing(letter, state, until string, damaged bool) string {
	name := ""
	if letter != "" {
		name = "revision " + letter + " "
	}
	switch {
	case damaged:
		return name + "not proved: " + say.StudyDamaged()
	case state == proving.StateProved:
		return name + "proved until " + until
	case state == proving.StateWithdrawn, state == proving.StateExpired:
		return name + "no longer proved"
	}
	return name + "not proved"
}

// CardStanding says of a revision on the card at the station whether it is proved. A card is
// read by those who judge parts: it names the state, and the sheet says why.
func (say Words) CardStanding(letter string, p *proving.Proved, damaged bool) string {
	name := "Revision " + letter + ", "
	switch {
	case damaged:
		return name + "not proved"
	case p.State == proving.StateProved && p.Until != nil:
		return name + "proved until " + *p.Until
	case p.State == proving.StateWithdrawn, p.State == proving.StateExpired:
		return name + "no longer proved"
	}
	return name + "not proved yet"
}

// StudyDamaged is why nothing is proved where a kept study cannot be read.
func (say Words) StudyDamaged() string { return "a kept study is damaged" }

// RecordName names the pages of the proof behind a sheet.
func (say Words) RecordName() string { return "Proof of the station" }

// WhyNot is why a station is not proved, in few words.
func (say Words) WhyNot(p *proving.Proved) string {
	if p.PlanBlocked {
		return "the plan has a blocker"
	}
	var out []string
	for _, state := range []string{string(proving.Fail), proving.StateWithdrawn, proving.StateExpired, proving.StateOtherRam, proving.StateOtherPlan, string(proving.Open), proving.StateMissing} {
		var kinds []string
		for _, kind := range proving.Kinds {
			k, known := p.Kinds[kind]
			if !known || k.State != state || !slices.Contains(proving.Needed, kind) && state != string(proving.Fail) {
				continue
			}
			kinds = append(kinds, strings.ToLower(say.KindName(kind)))
		}
		if len(kinds) > 0 {
			out = append(out, listed(kinds)+" "+say.StateWord(state))
		}
	}
	if len(out) == 0 {
		return "as found it misses the targets"
	}
	return strings.Join(out, "; ")
}
