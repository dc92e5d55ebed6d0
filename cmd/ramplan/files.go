package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// put puts data into a file, or on standard output for -, and gives the status.
func (c console) put(name string, data []byte) int {
	return c.putAll([]string{name}, [][]byte{data})
}

// putAll puts files that belong together into their places, all of them or none:
// each is written whole beside its place first, so that what stood there outlives
// a full disk.
func (c console) putAll(names []string, data [][]byte) int {
	var beside []string
	defer func() {
		for _, b := range beside {
			_ = os.Remove(b) // those in their places are gone from here
		}
	}()
	var places, there []string
	for i, name := range names {
		place, err := placeOf(name)
		switch {
		case err == nil && place == "":
			err = c.straight(name, data[i])
		case err == nil:
			var b string
			if b, err = writeBeside(place, data[i]); b != "" {
				beside, places, there = append(beside, b), append(places, place), append(there, name)
			}
		}
		if err != nil {
			c.complain("%s", say.CannotWriteFile(name, pathless(err)))
			return statusRefused
		}
	}
	for i, b := range beside {
		if err := os.Rename(b, places[i]); err != nil {
			c.complain("%s", say.CannotWriteFile(there[i], pathless(err)))
			return statusRefused
		}
	}
	return statusGood
}

// placeOf gives the file that a name leads to, through links; empty where data can
// only be written as it comes: standard output, a pipe, a device.
func placeOf(name string) (string, error) {
	if name == "-" {
		return "", nil
	}
	info, err := os.Stat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		if _, err := os.Lstat(name); err == nil {
			return "", errors.New(say.DeadLink())
		}
		return name, nil
	case err != nil:
		return "", err
	case info.IsDir():
		return "", errors.New(say.IsFolder())
	case !info.Mode().IsRegular():
		return "", nil
	}
	return filepath.EvalSymlinks(name)
}

func (c console) straight(name string, data []byte) error {
	if name == "-" {
		_, err := c.out.Write(data)
		return err
	}
	f, err := os.OpenFile(name, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	return errors.Join(err, f.Close())
}

// writeBeside writes a new file beside the place that it is for, whole and on the
// disk, with the rights of the file there; it gives its name once it is made. A file
// that may not be written is not replaced either.
func writeBeside(place string, data []byte) (name string, err error) {
	mode := fs.FileMode(0)
	if old, err := os.OpenFile(place, os.O_WRONLY, 0); err == nil {
		if info, err := old.Stat(); err == nil {
			mode = info.Mode().Perm()
		}
		_ = old.Close()
	} else if !errors.Is(err, fs.ErrNotExist) {
		return "", err
	}
	f, name, err := newBeside(place)
	if err != nil {
		return "", err
	}
	_, err = f.Write(data)
	if err == nil && mode != 0 {
		err = f.Chmod(mode)
	}
	if err == nil {
		err = f.Sync()
	}
	return name, errors.Join(err, f.Close())
}

// newBeside makes an empty file beside a place, with the rights that a new file has
// here.
func newBeside(place string) (*os.File, string, error) {
	for i := 1; ; i++ {
		name := filepath.Join(filepath.Dir(place), fmt.Sprintf(".%s.%d.part", shortened(filepath.Base(place)), i))
		f, err := os.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o666)
		if errors.Is(err, fs.ErrExist) && i < 1000 {
			continue // of another process, or of one that was stopped
		}
		return f, name, err
	}
}

// shortened keeps a name short enough to have something added.
func shortened(name string) string {
	const most = 60 // characters, of up to four bytes
	if runes := []rune(name); len(runes) > most {
		return string(runes[:most])
	}
	return name
}

// pathless is a fault without the name of the file, which is said already.
func pathless(err error) error {
	if path := (*fs.PathError)(nil); errors.As(err, &path) {
		return path.Err
	}
	if link := (*os.LinkError)(nil); errors.As(err, &link) {
		return link.Err
	}
	return err
}
