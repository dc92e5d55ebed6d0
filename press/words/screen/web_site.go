package screen

func (say Words) ThereIsNoSuchPage() string { return "There is no such page." }

func (say Words) ThisPageCannotBeAsked() string { return "This page cannot be asked for in this way." }
