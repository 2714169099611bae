package cli

import (
	"os"
	"path/filepath"
	"runtime"
)

// dataFolder is where the rooms are kept: as told, or where this system keeps a person's data.
func dataFolder(told string) (string, error) {
	if told != "" {
		return told, nil
	}
	if data := os.Getenv("XDG_DATA_HOME"); filepath.IsAbs(data) {
		return filepath.Join(data, "dryfit"), nil
	}
	if runtime.GOOS == "linux" { // XDG Base Directory Specification: the default of XDG_DATA_HOME
		home, err := os.UserHomeDir()
		return filepath.Join(home, ".local", "share", "dryfit"), err
	}
	dir, err := os.UserConfigDir() // on other systems programs keep their data there too
	return filepath.Join(dir, "dryfit"), err
}
