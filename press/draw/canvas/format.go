package canvas

import (
	"fmt"
	"io"
	"slices"
	"strings"
)

var formats = []struct {
	name  string
	write func(*Picture, io.Writer) error
}{
	{"svg", (*Picture).SVG},
	{"png", (*Picture).PNG},
	{"pdf", (*Picture).PDF},
}

// Formats lists the formats that a picture can be written in; each is also the ending of the
// names of its files.
func Formats() []string {
	var names []string
	for _, f := range formats {
		names = append(names, f.name)
	}
	return names
}

// CheckFormat tells which formats there are where one of no such name is asked for.
func CheckFormat(format string) error {
	if slices.Contains(Formats(), format) {
		return nil
	}
	return fmt.Errorf("draw: no format is called %q; there are %s", format, strings.Join(Formats(), ", "))
}

// Write writes the drawing in one of [Formats].
func (d *Picture) Write(w io.Writer, format string) error {
	for _, f := range formats {
		if f.name == format {
			return f.write(d, w)
		}
	}
	return CheckFormat(format)
}
