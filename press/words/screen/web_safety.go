package screen

func (say Words) ThisRequestCameFromA() string {
	return "This request came from a page of another site."
}

func (say Words) OpenTheBenchByIts() string {
	return "Open the bench by its own address and try again there."
}

func (say Words) APageOfAnotherSite() string { return "A page of another site asked for this." }

func (say Words) OpenTheBenchByItsOwn() string { return "Open the bench by its own address." }

func (say Words) ThisServerDoesNotAnswer() string {
	return "This server does not answer for that host name."
}

func (say Words) UseTheAddressThatRamplan() string {
	return "Use the address that ramplan printed when it started."
}
