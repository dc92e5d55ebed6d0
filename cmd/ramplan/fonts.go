package main

import (
	"flag"

	"ramplan/press/draw"
)

// fontFlag asks for a font of letters that the drawings' own typeface lacks.
func fontFlag(flags *flag.FlagSet) *string {
	var file string
	text(flags, &file, "font", "", say.FontFileForNamesIn())
	return &file
}

// useFonts puts the font that was named before those of the machine.
func useFonts(named string) error {
	machine := draw.MachineFonts()
	if named == "" {
		draw.UseFonts(machine)
		return nil
	}
	first, err := draw.FontFile(named)
	if err != nil {
		return err
	}
	draw.UseFonts(draw.FirstOf(first, machine))
	return nil
}
