package label

func (say Words) LooseNoGrip() string { return "loose: no grip" }

func (say Words) TightStalls() string { return "tight: stalls on its way" }

func (say Words) GoOn() string { return "go on" }

func (say Words) RefusedLooseOrMissing() string { return "refused: loose or missing" }

func (say Words) Findings() string { return "Findings" }

func (say Words) UndetectedHead() string { return "What this logic cannot detect" }

func (say Words) Cautions() string { return "Cautions" }

func (say Words) NotesOfThePlan() string { return "Notes of the plan" }

func (say Words) TitleBlockWhole() string { return "Fields of the title block, whole" }

// NoWindow says that the rule of the plan leaves none; ruled names it.
func (say Words) NoWindow(ruled string) string { return "no window " + ruled }

// GoodButNoWindow says what the drawing takes where the rule of the plan leaves no window.
func (say Words) GoodButNoWindow(good, ruled string) string {
	return "Good by the drawing: readings " + good + "; no window " + ruled
}

// GoodAndWindow says what the drawing takes, and the window by the rule of the plan.
func (say Words) GoodAndWindow(good, ruled, window string) string {
	return "Good by the drawing: readings " + good + "; window " + ruled + ": " + window
}
