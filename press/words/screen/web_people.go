package screen

func (say Words) TrainingRecordsOfEverybody() string { return "Training records of everybody" }

func (say Words) ThereAreNoRecordsOf() string { return "There are no records of this person." }

func (say Words) TheyMayHaveBeenRemoved() string { return "They may have been removed." }

func (say Words) TrainingRecordsOf(who string) string { return "Training records of " + who }

func (say Words) NothingWasRemovedTickThat() string {
	return "Nothing was removed: tick that it is meant."
}

func (say Words) FreshSet() string { return "fresh set" }
