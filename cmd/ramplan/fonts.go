package main

import (
	"flag"

	"ramplan/press/draw/canvas"
)

// fontFlag asks for a font of letters that the drawings' own typeface lacks.
func fontFlag(flags *flag.FlagSet) *string {
	var file string
	text(flags, &file, "font", "", say.FontFlag())
	return &file
}

// useFonts puts the font that was named before those of the machine.
func useFonts(named string) error {
	machine := canvas.MachineFonts()
	if named == "" {
		canvas.UseFonts(machine)
		return nil
	}
	first, err := canvas.FontFile(named)
	if err != nil {
		return err
	}
	canvas.UseFonts(canvas.FirstOf(first, machine))
	return nil
}
