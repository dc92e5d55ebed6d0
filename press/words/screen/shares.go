package screen

func (say Words) SharesTitle() string { return "Shares · ramplan" }

func (say Words) SharesOfTitle(name string) string { return "Shares of " + name + " · ramplan" }
