package proving

func (j *judging) loadCell()  {}
func (j *judging) stiffness() {}
