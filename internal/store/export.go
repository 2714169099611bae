package store

import (
	"bytes"
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"
)

// Export writes all that is stored, the bin included, into a new or empty folder of plain files:
//
//	rooms.json                       numbers, names and folders of the rooms
//	room-0001/room.yaml              the document
//	room-0001/revisions/000001.yaml  every revision of it
//	room-0001/revisions.json         who changed what and when
//	room-0001/ticks.json             every tick, in order
//	room-0001/photos.json            faces, files and notes of the photos
//	room-0001/photos/000001.jpg
//
// It holds the state of one moment. File names are numbers: nothing that a person typed becomes a path. The folder
// appears when it is whole; if anything fails nothing is left.
func (s *Store) Export(ctx context.Context, dir string) error {
	doing := "export to " + dir
	dir, err := filepath.Abs(dir)
	if err != nil {
		return fault(doing, err)
	}
	if err := vacantOrMissing(dir); err != nil {
		return fault(doing, err)
	}
	part, err := os.MkdirTemp(filepath.Dir(dir), "export-*.part")
	if err != nil {
		return fault(doing, err)
	}
	if err := s.exportAll(ctx, part); err != nil {
		return fault(doing, errors.Join(err, os.RemoveAll(part)))
	}
	if err := errors.Join(removeEmpty(dir), os.Rename(part, dir)); err != nil {
		return fault(doing, errors.Join(err, os.RemoveAll(part)))
	}
	return fault(doing, syncFolder(filepath.Dir(dir)))
}

func vacantOrMissing(dir string) error {
	entries, err := os.ReadDir(dir)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return nil
	case err != nil:
		return err
	case len(entries) > 0:
		return NotEmpty
	}
	return nil
}

// removeEmpty makes way for the finished folder. os.Remove takes no folder that has something in it.
func removeEmpty(dir string) error {
	if err := os.Remove(dir); err != nil && !errors.Is(err, os.ErrNotExist) {
		return err
	}
	return nil
}

// exportRoom is a line of rooms.json.
type exportRoom struct {
	ID      RoomID     `json:"id"`
	Folder  string     `json:"folder"`
	Name    string     `json:"name"`
	Head    int64      `json:"head"`
	Created time.Time  `json:"created"`
	Changed time.Time  `json:"changed"`
	Binned  *time.Time `json:"binned,omitempty"`
}

func (s *Store) exportAll(ctx context.Context, dir string) error {
	tx, err := s.reader.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer tx.Rollback()
	rooms, err := listRooms(ctx, tx, `ORDER BY id`)
	if err != nil {
		return err
	}
	index := []exportRoom{}
	for _, r := range rooms {
		line := exportRoom{r.ID, fmt.Sprintf("room-%04d", r.ID), r.Name, r.Head, r.Created, r.Changed, nil}
		if !r.Binned.IsZero() {
			line.Binned = &r.Binned
		}
		index = append(index, line)
		if err := exportOne(ctx, tx, r, filepath.Join(dir, line.Folder)); err != nil {
			return err
		}
	}
	return writeJSON(filepath.Join(dir, "rooms.json"), index)
}

func exportOne(ctx context.Context, tx *sql.Tx, r Room, dir string) error {
	for _, sub := range []string{"revisions", "photos"} {
		if err := os.MkdirAll(filepath.Join(dir, sub), 0o700); err != nil {
			return err
		}
	}
	for _, write := range []func(context.Context, *sql.Tx, Room, string) error{exportRevisions, exportTicks, exportPhotos} {
		if err := write(ctx, tx, r, dir); err != nil {
			return err
		}
	}
	return nil
}

type exportRevision struct {
	Number int64           `json:"number"`
	Base   int64           `json:"base"`
	Seen   int64           `json:"seen"`
	Undoes int64           `json:"undoes,omitempty"`
	By     string          `json:"by"`
	At     time.Time       `json:"at"`
	Ops    json.RawMessage `json:"operations"`
}

func exportRevisions(ctx context.Context, tx *sql.Tx, room Room, dir string) error {
	lines := []exportRevision{}
	for number := int64(1); number <= room.Head; number++ {
		r, err := at(ctx, tx, room.ID, number)
		if err != nil {
			return err
		}
		lines = append(lines, exportRevision{number, r.Base(), r.Seen, r.Undoes, r.By, r.At, r.Ops})
		if err := writeFile(filepath.Join(dir, "revisions", fmt.Sprintf("%06d.yaml", number)), r.Text); err != nil {
			return err
		}
		if number < room.Head {
			continue
		}
		if err := writeFile(filepath.Join(dir, "room.yaml"), r.Text); err != nil {
			return err
		}
	}
	return writeJSON(filepath.Join(dir, "revisions.json"), lines)
}

type exportTick struct {
	Address string    `json:"address"`
	Outline string    `json:"outline"`
	Ticked  bool      `json:"ticked"`
	By      string    `json:"by"`
	At      time.Time `json:"at"`
}

func exportTicks(ctx context.Context, tx *sql.Tx, room Room, dir string) error {
	ticks, err := collect(ctx, tx, scanTick, tickColumns+`WHERE room = ? AND late = 0 ORDER BY id`, room.ID)
	lines := []exportTick{}
	for _, t := range ticks {
		lines = append(lines, exportTick{t.Address, t.Outline, t.Ticked, t.By, t.At})
	}
	return errors.Join(err, writeJSON(filepath.Join(dir, "ticks.json"), lines))
}

type exportPhoto struct {
	File   string    `json:"file"`
	Face   string    `json:"face"`
	Width  int       `json:"width"`
	Height int       `json:"height"`
	By     string    `json:"by"`
	At     time.Time `json:"at"`
	Note   string    `json:"note,omitempty"`
}

func exportPhotos(ctx context.Context, tx *sql.Tx, room Room, dir string) error {
	photos, err := collect(ctx, tx, scanPhoto, photoColumns+`WHERE room = ? AND binned IS NULL ORDER BY id`, room.ID)
	if err != nil {
		return err
	}
	lines := []exportPhoto{}
	for _, p := range photos {
		file := fmt.Sprintf("photos/%06d.jpg", p.ID)
		if p.Media == "image/png" {
			file = fmt.Sprintf("photos/%06d.png", p.ID)
		}
		lines = append(lines, exportPhoto{file, p.Face, p.Width, p.Height, p.By, p.At, p.Note})
		bytes, err := picture(ctx, tx, p.SHA)
		if err != nil {
			return err
		}
		if err := writeFile(filepath.Join(dir, filepath.FromSlash(file)), bytes); err != nil {
			return err
		}
	}
	return writeJSON(filepath.Join(dir, "photos.json"), lines)
}

func writeJSON(path string, v any) error {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return err
	}
	return writeFile(path, b.Bytes())
}

// writeFile makes a new file and flushes it.
func writeFile(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	return errors.Join(err, f.Sync(), f.Close())
}
