package screen

func (say Words) SharesRamplan() string { return "Shares · ramplan" }

func (say Words) TheEntriesAreNoSoundPlan(text string) string {
	return "The entries are no sound plan yet: " + text
}

func (say Words) SharesOfRamplan(name string) string { return "Shares of " + name + " · ramplan" }
