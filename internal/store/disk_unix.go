//go:build !windows

package store

import (
	"errors"
	"os"
	"syscall"
)

func diskFull(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT)
}

func readOnlyDisk(err error) bool { return errors.Is(err, syscall.EROFS) }

// syncFolder makes a rename in a folder last through a power cut.
func syncFolder(dir string) error {
	d, err := os.Open(dir)
	if err != nil {
		return err
	}
	return errors.Join(d.Sync(), d.Close())
}
