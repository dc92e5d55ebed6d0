package screen

func (say Words) ThereEmpty() string { return "there, empty" }

func (say Words) CopiedFromTheShelfAnew() string { return "copied from the shelf anew" }

func (say Words) And1More() string { return "and 1 more" }
