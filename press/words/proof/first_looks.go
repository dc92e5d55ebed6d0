package proof

import (
	"regexp"
	"strings"

	"ramplan/press/words"
)

// A FirstLook is one push of a shift check with the probe in use: the lamps of the first look
// are all that comes of it. It is no row of the study, whose pushes are judged by one look.
type FirstLook struct {
	Sample        string
	Arrival, Zone bool // that came
}

// Refused tells whether the press did not follow: arrival on and zone off alone go on.
func (l FirstLook) Refused() bool { return !l.Arrival || l.Zone }

var lookForm = regexp.MustCompile(`^First look, (.+): arrival (on|off), zone (on|off); (?:refused|not refused)$`)

// LooksNoted writes first looks as notes of the study that they belong to, a line for each.
func (say Words) LooksNoted(all []FirstLook) string {
	var lines []string
	for _, l := range all {
		end := "not refused"
		if l.Refused() {
			end = "refused"
		}
		lines = append(lines, "First look, "+l.Sample+": arrival "+words.OnOff(l.Arrival)+", zone "+words.OnOff(l.Zone)+"; "+end)
	}
	return strings.Join(lines, "\n")
}

// LooksOf reads them from the notes of a study.
func (say Words) LooksOf(notes string) []FirstLook {
	var out []FirstLook
	for line := range strings.SplitSeq(notes, "\n") {
		if m := lookForm.FindStringSubmatch(strings.TrimSpace(line)); m != nil {
			out = append(out, FirstLook{m[1], m[2] == "on", m[3] == "on"})
		}
	}
	return out
}

// LookWord says at which look the lamps of a push were read, in a table.
func (say Words) LookWord(first bool) string {
	if first {
		return "first look"
	}
	return "end of the push"
}
