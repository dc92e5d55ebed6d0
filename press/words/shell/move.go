package shell

import (
	"fmt"
)

func (say Words) FolderToMake() string { return "the name of the folder to make" }

func (say Words) BinStays(binned int) string {
	return fmt.Sprintf("plans in the bin, which stay there: %d", binned)
}

func (say Words) TrainingStays(trainings int) string {
	return fmt.Sprintf("training records, which stay in the archive (a backup holds them, the page People gives them as a table): %d", trainings)
}

func (say Words) WentOut() string { return "went out" }

func (say Words) FilesToBringIn() string { return "the folders and files to bring in" }

func (say Words) NewArchiveIn(path string) string {
	return fmt.Sprintf("there was no archive yet; a new one was made in %s", path)
}

func (say Words) CameIn() string { return "came in" }

func (say Words) StoppedWhatIsCountedIsDone() string { return "stopped; what is counted here was done" }

func (say Words) Progress(verb string, done int, all int, name string) string {
	return fmt.Sprintf("%s: %d of %d done, next %s\n", verb, done, all, name)
}
