package kept

func (say Words) NothingThere() string { return "no such file or folder" }
