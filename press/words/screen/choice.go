package screen

func (say Words) ChangedInBothWindows() string { return "Changed in both windows" }

func (say Words) ChangedInThisWindowOnly() string { return "Changed in this window only" }

func (say Words) ChangedInTheOtherWindow() string { return "Changed in the other window only" }
