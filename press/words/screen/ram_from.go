package screen

func (say Words) ShelfRamChanged(name string) string {
	return "The shelf's ram “" + name + "” has changed since it was copied into this plan."
}

func (say Words) ShelfRamIsThePlans() string { return " What it holds now is what this plan holds." }
