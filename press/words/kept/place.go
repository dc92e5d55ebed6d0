package kept

import (
	"fmt"
)

func (say Words) FileInPlaceOfFolder(dir string) string {
	return fmt.Sprintf("%s is no folder: what stands in its place is a file. Name the folder in which the archive is.", dir)
}

func (say Words) DeadLinkTo(path string, to string) string {
	return fmt.Sprintf("%s is a link to %s, and nothing is there.", path, to)
}

func (say Words) FolderInPlaceOfFile(path string) string {
	return fmt.Sprintf("%s is a folder, and a file is needed in its place.", path)
}

func (say Words) FolderReadOnly(dir string) string {
	return fmt.Sprintf("The folder %s is read-only: nothing was changed.", dir)
}

func (say Words) FolderMayNotBeWritten(dir string) string {
	return fmt.Sprintf("The folder %s may not be written to by this user: nothing was changed.", dir)
}

func (say Words) MayNotBeRead(path string) string {
	return fmt.Sprintf("%s may not be read by this user.", path)
}
