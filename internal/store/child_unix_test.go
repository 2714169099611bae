//go:build !windows

package store

import "syscall"

// becomeNobody gives up the rights of root, whom no folder's permissions stop.
func becomeNobody() {
	if err := syscall.Setuid(65534); err != nil {
		panic(err)
	}
}
