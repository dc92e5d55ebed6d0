package proving

import (
	"math"
	"regexp"
	"strings"
	"time"
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
func LooksNoted(all []FirstLook) string {
	word := map[bool]string{true: "on", false: "off"}
	var lines []string
	for _, l := range all {
		end := "not refused"
		if l.Refused() {
			end = "refused"
		}
		lines = append(lines, "First look, "+l.Sample+": arrival "+word[l.Arrival]+", zone "+word[l.Zone]+"; "+end)
	}
	return strings.Join(lines, "\n")
}

// LooksOf reads them from the notes of a study.
func LooksOf(notes string) []FirstLook {
	var out []FirstLook
	for line := range strings.SplitSeq(notes, "\n") {
		if m := lookForm.FindStringSubmatch(strings.TrimSpace(line)); m != nil {
			out = append(out, FirstLook{m[1], m[2] == "on", m[3] == "on"})
		}
	}
	return out
}

// ByLimits gives rows of samples with the reading of those of some names held to limits of their own, mm
// to both sides of the predicted reading.
func ByLimits(rows []SampleRow, within float64, names ...string) []SampleRow {
	out := append([]SampleRow(nil), rows...)
	for i := range out {
		for _, n := range names {
			if out[i].Sample != n {
				continue
			}
			out[i].Allowed = &within
			if d := out[i].Difference; d != nil {
				reading := passes(math.Abs(*d) <= within+slack, Fail)
				out[i].Reading = &reading
			}
		}
	}
	return out
}

// LatestOf is the last moment at which an event may have been that was written down then: a
// bare day is any moment of it, but none after it was written.
func LatestOf(s *Study, written time.Time) time.Time {
	_, last := moments(s.TakenAt)
	if written.Before(last) {
		return written
	}
	return last
}
