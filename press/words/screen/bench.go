package screen

func (say Words) NewPlan() string { return "New plan" }

func (say Words) PageTitle(name string) string { return name + " · ramplan" }

func (say Words) OlderThanEntriesThis() string {
	return "Older than the entries: this is the last state that was a sound plan."
}

func (say Words) NotSavedSeeTop() string {
	return "Not saved: what to do stands at the top of the page."
}

func (say Words) NotSavedChangedElsewhereSeeTop() string {
	return "Not saved: another window changed this plan. What to do stands at the top of the page."
}

func (say Words) TypedIsKeptInPage(failure string) string {
	return failure + " What you typed is kept in this page."
}

func (say Words) NotSavedChangedElsewhere() string {
	return "Not saved: another window changed this plan."
}

func (say Words) UpToDate() string { return "Up to date with the entries." }

func (say Words) StillNeeded(counted string) string { return counted + " still needed." }

func (say Words) FaultsInEntries(counted string) string { return counted + " in the entries." }

func (say Words) FaultsAndNeeded(counted string, counted2 string) string {
	return counted + " in the entries, and " + counted2 + " still needed."
}

func (say Words) ThatPlan() string { return "The plan" }
