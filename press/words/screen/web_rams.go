package screen

func (say Words) NothingIsEnteredOfA() string { return "nothing is entered of a ram in that plan" }

func (say Words) TheRamCouldNotBe() string { return "The ram could not be read." }

func (say Words) TheRamWasNotPut() string { return "The ram was not put back." }
