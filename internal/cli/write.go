package cli

import (
	"io"
	"os"
	"path/filepath"
)

// writeFile writes a file whole or not at all: beside it first, then renamed over it. What was there stays until then.
func writeFile(name string, content []byte) error {
	return writeWith(name, func(w io.Writer) error {
		_, err := w.Write(content)
		return err
	})
}

// writeWith is writeFile for content that is made while it is written.
func writeWith(name string, fill func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(name), "."+filepath.Base(name)+".*")
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	if err = fill(f); err != nil {
		return err
	}
	if err = f.Chmod(0o644); err != nil {
		return err
	}
	if err = f.Sync(); err != nil {
		return err
	}
	if err = f.Close(); err != nil {
		return err
	}
	return os.Rename(f.Name(), name)
}
