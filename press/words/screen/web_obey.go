package screen

func (say Words) WasRemovedUndoBringsIt(rowName string) string {
	return rowName + " was removed. Undo brings it back."
}

func (say Words) TheFormAsksForSomething(toValidUTF8 string) string {
	return "The form asks for something that this program does not know: " + toValidUTF8 + "."
}

func (say Words) GoBackAndPressThe() string { return "Go back and press the button again." }
