package screen

func (say Words) ThereEmpty() string { return "there, empty" }

func (say Words) CopiedAnew() string { return "copied from the shelf anew" }

func (say Words) OneMore() string { return "and 1 more" }
