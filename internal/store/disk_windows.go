package store

import (
	"errors"
	"syscall"
)

// System error codes of Windows: 112 ERROR_DISK_FULL, 39 ERROR_HANDLE_DISK_FULL, 19 ERROR_WRITE_PROTECT.
func diskFull(err error) bool {
	return errors.Is(err, syscall.Errno(112)) || errors.Is(err, syscall.Errno(39))
}

func readOnlyDisk(err error) bool { return errors.Is(err, syscall.Errno(19)) }

// syncFolder does nothing: Windows gives no way to flush a folder, and its file systems journal a rename.
func syncFolder(string) error { return nil }
