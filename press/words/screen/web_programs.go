package screen

func (say Words) SayInIfMatchWhich() string {
	return "Say in If-Match which version this changes: the ETag that GET gave."
}

func (say Words) IfMatchNamesNoVersion() string { return "If-Match names no version of this plan." }

func (say Words) ThePlanWasChangedSince() string {
	return "The plan was changed since that version; nothing was done."
}

func (say Words) TheDocumentIsNeitherA() string {
	return "The document is neither a sound plan nor a draft."
}

func (say Words) TheDraftIsNoSoundPlanYet() string {
	return "The draft is no sound plan yet: it has no result."
}
