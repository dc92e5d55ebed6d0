package words

// SetOf says of the questions of an exam who had been given them before; empty for a
// set that was new to everybody.
func SetOf(repeat, known bool) string {
	switch {
	case repeat:
		return "repeat of a seen set"
	case known:
		return "a set given before to another person"
	}
	return ""
}
