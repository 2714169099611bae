package store

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// Restore puts a backup into a data folder that no program has open. The backup is read through and checked first; it
// may be of an older form of the database. A folder that has something in it is refused with NotEmpty, unless over is
// true: then the database there is set aside as replaced-1.db (or 2, 3, …), never removed. A restore that is cut off
// leaves the old database, or is finished when the folder is next opened.
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
	return fault(doing, errors.Join(replace(ctx, from, dir), lock.release()))
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

func replace(ctx context.Context, from, dir string) error {
	restoring, path := filepath.Join(dir, restoringFile), filepath.Join(dir, dataFile)
	part := filepath.Join(dir, restoringPart)
	if err := copyFile(from, part); err != nil {
		return errors.Join(err, forget(part))
	}
	if err := moveInto(part, restoring); err != nil {
		return err
	}
	if err := setAside(ctx, dir, path); err != nil {
		return err
	}
	return moveInto(restoring, path)
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

// setAside renames the database that is there. Its log is folded in first; where the database is too damaged for that,
// the log goes aside with it, and before it, so that it can never be taken for the log of the next.
func setAside(ctx context.Context, dir, path string) error {
	if _, err := os.Stat(path); errors.Is(err, fs.ErrNotExist) {
		return setAsideFiles(path, freeName(dir), "-wal", "-shm")
	}
	old := open(path, forWriting)
	_, _ = old.ExecContext(ctx, `PRAGMA wal_checkpoint(TRUNCATE)`)
	_ = old.Close()
	return setAsideFiles(path, freeName(dir), "-wal", "-shm", "-journal", "")
}

func setAsideFiles(path, aside string, ends ...string) error {
	for _, end := range ends {
		if err := os.Rename(path+end, aside+end); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	return nil
}

// freeName is the first replaced-N.db that is not there.
func freeName(dir string) string {
	for n := 1; ; n++ {
		path := filepath.Join(dir, fmt.Sprintf("replaced-%d.db", n))
		if _, err := os.Lstat(path); errors.Is(err, fs.ErrNotExist) {
			return path
		}
	}
}
