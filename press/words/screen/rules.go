package screen

func (say Words) ZoneStartAndPushStroke() string {
	return "Zone start and push stroke are set by hand: no rule moves them. Empty one of them to have it proposed."
}

func (say Words) MissesTheTargets() string { return "misses the targets" }
