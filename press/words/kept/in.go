package kept

func (say Words) NoSuchFileOrFolder() string { return "no such file or folder" }
