package label

import "strconv"

// The history of the checks of the shifts, on paper.

func (say Words) ShiftHistoryTitle() string { return "Shift checks" }

func (say Words) ShiftHeads() []string {
	return []string{"When", "Who", "Rev.", "Sample", "Predicted", "Came", "Result"}
}

// ShiftResult is that of one sample.
func (say Words) ShiftResult(passed bool) string {
	if passed {
		return "pass"
	}
	return "FAIL"
}

// ShiftLead says of which station the checks are, and how many failed.
func (say Words) ShiftLead(number, name string, n, failed int, from, to, day string) string {
	s := name
	if number != "" {
		s = number + ", " + name
	}
	s += ": "
	if n == 0 {
		s += "no check was kept."
	} else {
		s += counting(n, "sample", "samples") + " pressed in checks of shifts from " + from + " to " + to + ", "
		if failed == 0 {
			s += "none failed."
		} else {
			s += whole(failed) + " failed."
		}
	}
	if day != "" {
		s += " Printed on " + day + "."
	}
	return s
}

func (say Words) ShiftNote() string {
	return "A sample that failed stops the station: set no part free, quarantine back to the last good check, and find out why."
}

func (say Words) PageOf(number, of int) string {
	return "page " + strconv.Itoa(number) + " of " + strconv.Itoa(of)
}

// ShiftRowText is one sample in a sentence.
func (say Words) ShiftRowText(when, who, sample, predicted, came string, passed bool) string {
	return when + ", " + who + ", " + sample + ": predicted " + predicted + ", came " + came + ", " + say.ShiftResult(passed) + "."
}
