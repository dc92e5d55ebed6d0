package kept

func (say Words) AnotherRamOnTheShelf() string { return "another ram on the shelf has this name" }
