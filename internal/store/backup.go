package store

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// Backup writes all that is stored into one file, while others go on reading and writing; it holds the state of one
// moment. A file of that name is replaced when the new one is whole and checked, and kept if anything fails. The data
// folder itself is no place for a backup.
func (s *Store) Backup(ctx context.Context, to string) error {
	return fault("write a backup to "+to, s.backup(ctx, to))
}

func (s *Store) backup(ctx context.Context, to string) (err error) {
	to, err = filepath.Abs(to)
	if err != nil {
		return err
	}
	inside, err := sameFolder(filepath.Dir(to), s.dir)
	if err != nil {
		return err
	}
	if inside {
		return fmt.Errorf("%w: put a backup outside of the data folder", Unusable)
	}
	part, err := partFile(to)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			err = errors.Join(err, removeDatabase(part))
		}
	}()
	if err := s.copyInto(ctx, part); err != nil {
		return err
	}
	if err := inspectFile(ctx, part); err != nil {
		return err
	}
	return moveInto(part, to)
}

// copyInto copies the database as it is at one moment, and leaves no log beside the copy. VACUUM INTO takes an empty file.
func (s *Store) copyInto(ctx context.Context, part string) error {
	db := open(filepath.Join(s.dir, dataFile), forCopying)
	_, err := db.ExecContext(ctx, `VACUUM INTO ?`, part)
	return errors.Join(err, db.Close())
}

// partFile makes an empty file beside the target for what is not whole yet: only in the same folder is a rename sure
// to be one step.
func partFile(to string) (string, error) {
	f, err := os.CreateTemp(filepath.Dir(to), filepath.Base(to)+".*.part")
	if err != nil {
		return "", err
	}
	return f.Name(), f.Close()
}

func sameFolder(a, b string) (bool, error) {
	ia, err := os.Stat(a)
	if err != nil {
		return false, err
	}
	ib, err := os.Stat(b)
	return err == nil && os.SameFile(ia, ib), err
}
