package kept

func (say Words) RamNameTaken() string { return "another ram on the shelf has this name" }
