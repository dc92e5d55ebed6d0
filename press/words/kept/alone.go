package kept

import (
	"fmt"
)

func (say Words) IsMissing() string { return "is missing" }

func (say Words) IsEmpty() string { return "is empty" }

// LoneLog tells of a log beside which the archive's file is missing or empty: its size is in bytes.
func (say Words) LoneLog(path, folder, what string, size int64) string {
	log, restore := path+"-wal", "ramplan restore -data "+folder+" "
	return fmt.Sprintf("The archive's file %s %s, but its log %s lies there (%d kB) and may hold the only copy of what was saved last. Nothing was touched.\n"+
		"Copy the log to a safe place first. If the archive's file was moved, put it back beside its log.\n"+
		"If it is gone: \"%s\" makes an archive of the log, where the log holds all of it; \"%sBACKUP\" puts a backup in place and keeps the log.",
		path, what, log, (size+999)/1000, restore+log, restore)
}

// HoldsNoPlans tells of a copy of an archive's file without the log that held its plans.
func (say Words) HoldsNoPlans(path, file string) string {
	return fmt.Sprintf("The file %s holds no plans. It may be a copy of an archive's file alone: what was saved stood in its log, %s-wal, which belongs beside it. "+
		"Copy both together, or better with \"ramplan backup\". To begin a new archive, move this file away.", path, file)
}

func (say Words) NoArchive() string { return "The file is no archive of ramplan." }

func (say Words) LogAlone(log string) string {
	return fmt.Sprintf("%s does not hold a whole archive alone: it needs the file that it belongs to. Nothing was touched; keep it.", log)
}
