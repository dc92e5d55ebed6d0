package label

func (say Words) SideView() string { return "side view" }

func (say Words) SecondInsert() string { return "a second insert on the first" }

func (say Words) NoInsertInside() string { return "no insert in the nest" }

func (say Words) ChipUnderPart() string { return "a chip under the part" }

func (say Words) StopsShort() string { return "stops short of its seat" }

func (say Words) NestGaveWay() string { return "the nest has given way" }
