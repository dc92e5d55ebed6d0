package screen

func (say Words) MoreAbout(toLower string) string { return "More about the " + toLower }

func (say Words) NoneGiven() string { return "none given" }
