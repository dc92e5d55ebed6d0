package screen

func (say Words) ThisIsANewEmpty() string {
	return "This is a new, empty plan. It is saved as you type."
}
