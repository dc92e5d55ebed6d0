package shell

func (say Words) FontFlag() string {
	return "font `FILE` for names in scripts that the typeface lacks, TrueType or OpenType (default a free font of this machine that has them)"
}
