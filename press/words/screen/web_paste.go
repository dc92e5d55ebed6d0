package screen

import (
	"fmt"
)

func (say Words) Line(line int, text string, message string) string {
	return fmt.Sprintf("Line %d, %q: %s", line, text, message)
}

func (say Words) NothingToReadPasteTwo() string {
	return "Nothing to read: paste two columns of figures, setting and force."
}
