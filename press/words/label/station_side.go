package label

func (say Words) SideView() string { return "side view" }

func (say Words) ASecondInsertOnThe() string { return "a second insert on the first" }

func (say Words) NoInsertInTheNest() string { return "no insert in the nest" }

func (say Words) AChipUnderThePart() string { return "a chip under the part" }

func (say Words) StopsShortOfItsSeat() string { return "stops short of its seat" }

func (say Words) TheNestHasGivenWay() string { return "the nest has given way" }
