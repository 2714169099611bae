package store

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// Restore puts a backup into a data folder that no program has open. The backup is read through and checked first; it
// may be of an older form of the database. A folder that has something in it is refused with NotEmpty, unless over is
// true: then the database there is moved into replaced-1 (or 2, 3, …), which is itself a data folder, and never removed.
// A restore that is cut off leaves the old database, or is finished when the folder is next opened.
func Restore(ctx context.Context, from, dir string, over bool) error {
	doing := "restore " + from + " into " + dir
	dir, err := filepath.Abs(dir)
	if err != nil {
		return fault(doing, err)
	}
	if err := checkBackup(ctx, from); err != nil {
		return fault(doing, err)
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return fault(doing, err)
	}
	if err := vacant(dir); err != nil && !over {
		return fault(doing, err)
	}
	lock, err := lockFolder(ctx, dir)
	if err != nil {
		return fault(doing, err)
	}
	return fault(doing, errors.Join(replace(from, dir), lock.release()))
}

// checkBackup wants a whole database in one file. A log beside it holds changes that the file alone does not.
func checkBackup(ctx context.Context, from string) error {
	info, err := os.Stat(from)
	if err != nil {
		return err
	}
	if info.IsDir() || info.Size() == 0 {
		return Foreign
	}
	if log, err := os.Stat(from + "-wal"); err == nil && log.Size() > 0 {
		return fmt.Errorf("%w: beside %s stands its log, so it is a database at work: open its folder and make a backup there", Unusable, from)
	}
	return inspectFile(ctx, from)
}

// vacant says NotEmpty of a folder that holds anything but a lock file, which means nothing.
func vacant(dir string) error {
	entries, err := os.ReadDir(dir)
	for _, e := range entries {
		if e.Name() != lockFile {
			return NotEmpty
		}
	}
	return err
}

func replace(from, dir string) error {
	part := filepath.Join(dir, restoringPart)
	if err := copyFile(from, part); err != nil {
		return errors.Join(err, forget(part))
	}
	if err := moveInto(part, filepath.Join(dir, restoringFile)); err != nil {
		return err
	}
	return takeOver(dir)
}

// takeOver puts a whole copy in the place of what is there. It can be cut off anywhere and done again.
func takeOver(dir string) error {
	if err := errors.Join(forget(filepath.Join(dir, restoringPart)), setAside(dir)); err != nil {
		return err
	}
	return moveInto(filepath.Join(dir, restoringFile), filepath.Join(dir, dataFile))
}

func copyFile(from, to string) (err error) {
	in, err := os.Open(from)
	if err != nil {
		return err
	}
	defer in.Close()
	out, err := os.OpenFile(to, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		return err
	}
	_, err = io.Copy(out, in)
	return errors.Join(err, out.Close())
}

// The files of a database in the order in which they are moved: the log last, so that it tells whether all were.
var databaseEnds = [...]string{"", "-journal", "-shm", "-wal"}

// setAside moves the database that is there, damaged or not, with what stands beside it. Nothing opens it meanwhile.
func setAside(dir string) error {
	path := filepath.Join(dir, dataFile)
	if !slices.ContainsFunc(databaseEnds[:], func(end string) bool { return there(path + end) }) {
		return nil
	}
	aside := asideFolder(dir)
	if err := os.MkdirAll(aside, 0o700); err != nil {
		return err
	}
	for _, end := range databaseEnds {
		if err := os.Rename(path+end, filepath.Join(aside, dataFile+end)); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	return errors.Join(syncFolder(aside), syncFolder(dir))
}

// asideFolder is the first replaced-N that is not there; or the last that is, where its database has lost its log on
// the way: moving it was cut off.
func asideFolder(dir string) string {
	for n, last := 1, ""; ; n++ {
		folder := filepath.Join(dir, fmt.Sprintf("replaced-%d", n))
		if there(folder) {
			last = folder
			continue
		}
		if last != "" && !there(filepath.Join(dir, dataFile)) && !there(filepath.Join(last, dataFile+"-wal")) {
			return last
		}
		return folder
	}
}

// Holds tells whether a folder has rooms in it, or what is left of them; it opens nothing and makes nothing.
func Holds(dir string) bool {
	for _, name := range []string{dataFile, dataFile + "-wal", restoringFile} {
		if there(filepath.Join(dir, name)) {
			return true
		}
	}
	return false
}

func there(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}
