package screen

func (say Words) ASeedIsAWholeNumber() string { return "A seed is a whole number." }

func (say Words) ThereIsNoSuchLevel() string { return "There is no such level." }
