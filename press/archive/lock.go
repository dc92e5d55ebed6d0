package archive

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
)

// LockName is the name of the file beside the archive that tells who serves it.
const LockName = "ramplan.lock"

// errLocked says that another process holds the lock of a file.
var errLocked = errors.New("archive: another process holds the lock")

// A Lock says that this process serves the archive in a folder. The system holds
// it: it ends with the process, however that ends, and what is left of the file
// stands in nobody's way.
type Lock struct{ file *os.File }

// Held says that another process serves the archive.
type Held struct {
	PID     int    // 0 when it is not known
	Address string // where it serves; empty while it starts
}

func (e *Held) Error() string {
	who := say.AnotherProcess()
	if e.PID > 0 {
		who += say.ProcessNumber(e.PID)
	}
	if e.Address == "" {
		return "archive: " + who + " holds this archive"
	}
	return "archive: " + who + " serves this archive at " + e.Address
}

// TakeLock takes the lock of the archive in a folder and makes the folder when it is
// not there. Where another process has it, the error is [*Held].
func TakeLock(dir string) (*Lock, error) {
	path, err := fileIn(dir)
	if err != nil {
		return nil, explain(err)
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, folderFault(dir, err)
	}
	f, err := os.OpenFile(filepath.Join(filepath.Dir(path), LockName), os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return nil, folderFault(filepath.Dir(path), err)
	}
	if err := lockFile(f); err != nil {
		defer f.Close()
		if errors.Is(err, errLocked) {
			return nil, readHeld(f)
		}
		return nil, explain(err)
	}
	l := &Lock{f}
	if err := l.write(""); err != nil {
		_ = l.Release()
		return nil, explain(err)
	}
	return l, nil
}

// Say tells whoever comes later where this process serves the archive.
func (l *Lock) Say(address string) error { return explain(l.write(address)) }

// Release lets the archive go. The file stays: removing it could remove the one
// that the next process has locked already.
func (l *Lock) Release() error {
	err := l.file.Truncate(0)
	return errors.Join(err, l.file.Close())
}

const (
	linePID     = "process: "
	lineAddress = "address: "
)

func (l *Lock) write(address string) error {
	text := linePID + strconv.Itoa(os.Getpid()) + "\n"
	if address != "" {
		text += lineAddress + address + "\n"
	}
	if err := l.file.Truncate(0); err != nil {
		return err
	}
	_, err := l.file.WriteAt([]byte(text), 0)
	return err
}

// readHeld reads what the process that holds the lock has said.
func readHeld(f io.ReaderAt) *Held {
	text := make([]byte, 1000)
	n, _ := f.ReadAt(text, 0)
	held := &Held{}
	for line := range strings.Lines(string(text[:n])) {
		line, whole := strings.CutSuffix(line, "\n")
		if v, ok := strings.CutPrefix(line, linePID); ok && whole {
			held.PID, _ = strconv.Atoi(v)
		} else if v, ok := strings.CutPrefix(line, lineAddress); ok && whole {
			held.Address = v
		}
	}
	return held
}
