package shell

func (say Words) TheArchivesFolderDirDefault() string {
	return "the archive's folder `DIR` (default ramplan in the user's data folder)"
}
