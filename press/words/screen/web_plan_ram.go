package screen

func (say Words) TheShelfsRamHasNot() string {
	return "The shelf's ram has not changed since it was copied."
}

func (say Words) TheRamsEntriesAreThose() string {
	return "The ram's entries are those of the shelf again. Undo brings the old ones back."
}
