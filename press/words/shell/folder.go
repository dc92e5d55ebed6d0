package shell

func (say Words) DataFlag() string {
	return "the archive's folder `DIR` (default ramplan in the user's data folder)"
}
