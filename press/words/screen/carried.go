package screen

func (say Words) ChosenKindOfJoint() string { return "the chosen kind of joint" }

func (say Words) JointOfNoKind() string { return "a joint of no kind yet" }

func (say Words) JointOfKind(kind string) string { return "a joint of kind " + kind }

func (say Words) KeptAside(kind string, counted string) string {
	return "Kept aside, as " + kind + " has no such fields: " + counted +
		". They come back with the kind that has them; a saved plan leaves them out, a saved draft keeps them."
}
