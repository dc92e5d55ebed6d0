package main

import (
	"errors"
	"flag"
	"os"
	"path/filepath"
	"runtime"
)

// dataFlag adds the flag that names the archive's folder.
func dataFlag(flags *flag.FlagSet) *string {
	var dir string
	text(flags, &dir, "data", "", say.DataFlag())
	return &dir
}

// dataFolder gives the folder that was named, or else the user's.
func dataFolder(named string) (string, error) {
	if named != "" {
		return filepath.Abs(named)
	}
	home, _ := os.UserHomeDir()
	return userFolder(runtime.GOOS, home, os.Getenv)
}

// userFolder is where the archive stands when nobody says where: a folder of its
// own in what each system keeps for the data of one user.
func userFolder(system, home string, env func(string) string) (string, error) {
	var base, under string
	switch system {
	case "windows":
		base, under = env("LocalAppData"), "AppData/Local"
	case "darwin":
		under = "Library/Application Support"
	default:
		base, under = env("XDG_DATA_HOME"), ".local/share"
	}
	if !filepath.IsAbs(base) { // as the desktop's base directory rule wants it
		if home == "" {
			return "", errors.New(say.NoHomeFolder())
		}
		base = filepath.Join(home, filepath.FromSlash(under))
	}
	return filepath.Join(base, "ramplan"), nil
}
