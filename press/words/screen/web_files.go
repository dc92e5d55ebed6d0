package screen

func (say Words) ChooseAFileFirstThen() string { return "Choose a file first, then open it." }

func (say Words) WasNotOpened(cleanName string) string { return cleanName + " was not opened." }

func (say Words) WasNotOpenedItIs(cleanName string) string {
	return cleanName + " was not opened: it is neither a plan nor a sheet with a plan inside."
}

func (say Words) AndMore() string { return "and more" }

func (say Words) TheFile() string { return "the file" }
