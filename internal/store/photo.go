package store

import (
	"context"
	"crypto/sha256"
	"database/sql"
	"errors"
	"fmt"
	"time"
)

// Photo is a picture pinned to a face of a room.
type Photo struct {
	ID            int64
	Face          string // in the caller's words
	Media         string // image/jpeg or image/png
	Size          int    // bytes
	Width, Height int    // pixels
	SHA           [sha256.Size]byte
	By            string
	At            time.Time
	Note          string // what a person says of it
	Binned        bool   // put aside: it can be brought back
}

// NewPhoto is a picture to be pinned. Its bytes are stored as they are: the caller has read and written them anew, which
// leaves out where they were taken and whatever else was hidden in them.
type NewPhoto struct {
	Face          string
	Media         string
	Width, Height int
	Bytes         []byte
	By            string
	At            time.Time
	Note          string
	From          Delivery
}

// AddPhoto pins a picture. The same picture on the same face is one photo, however often it is sent.
func (s *Store) AddPhoto(ctx context.Context, id RoomID, n NewPhoto) (p Photo, err error) {
	const doing = "store a photo"
	if err := n.check(s.limits); err != nil {
		return Photo{}, fault(doing, err)
	}
	err = s.change(ctx, doing, func(tx *sql.Tx) error {
		number, err := s.pin(ctx, tx, id, n)
		if err != nil {
			return err
		}
		p, err = onePhoto(ctx, tx, id, number)
		return err
	})
	if err == nil {
		s.feed.tellPhotos(id)
	}
	return p, err
}

func (n NewPhoto) check(l Limits) error {
	switch {
	case len(n.Bytes) > l.Photo:
		return TooBig
	case n.Media != "image/jpeg" && n.Media != "image/png":
		return fmt.Errorf("%w: a photo is image/jpeg or image/png", Unusable)
	case len(n.Bytes) == 0 || n.Width <= 0 || n.Height <= 0 || n.Face == "":
		return fmt.Errorf("%w: a photo without bytes, size or face", Unusable)
	}
	return errors.Join(l.paths(n.Face, n.Note), l.words(n.By, n.From.Client))
}

func (s *Store) pin(ctx context.Context, tx *sql.Tx, id RoomID, n NewPhoto) (number int64, err error) {
	number, again, err := n.From.earlier(ctx, tx, id, madePhoto)
	if err != nil || again {
		return number, err
	}
	if _, err := openRoom(ctx, tx, id); err != nil {
		return 0, err
	}
	sum := sha256.Sum256(n.Bytes)
	err = tx.QueryRowContext(ctx, `SELECT id FROM photo WHERE room = ? AND face = ? AND sha = ?`, id, n.Face, sum[:]).Scan(&number)
	switch {
	case errors.Is(err, sql.ErrNoRows):
		number, err = s.insertPhoto(ctx, tx, id, n, sum[:])
	case err == nil: // sent again after it was put aside
		_, err = tx.ExecContext(ctx, `UPDATE photo SET binned = NULL WHERE id = ?`, number)
	}
	if err != nil {
		return 0, err
	}
	return number, n.From.record(ctx, tx, id, id, madePhoto, number)
}

func (s *Store) insertPhoto(ctx context.Context, tx *sql.Tx, id RoomID, n NewPhoto, sum []byte) (int64, error) {
	var have int
	if err := tx.QueryRowContext(ctx, `SELECT count(*) FROM photo WHERE room = ?`, id).Scan(&have); err != nil {
		return 0, err
	}
	if have >= s.limits.Photos {
		return 0, TooBig
	}
	if _, err := tx.ExecContext(ctx, `INSERT INTO picture (sha, bytes) VALUES (?, ?) ON CONFLICT DO NOTHING`, sum, n.Bytes); err != nil {
		return 0, err
	}
	done, err := tx.ExecContext(ctx, `INSERT INTO photo (room, face, sha, media, size, width, height, author, at, note)
		VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`, id, n.Face, sum, n.Media, len(n.Bytes), n.Width, n.Height, n.By, stamp(n.At), n.Note)
	if err != nil {
		return 0, err
	}
	return done.LastInsertId()
}

// Photos lists a room's photos by face, the oldest first, without those that were put aside.
func (s *Store) Photos(ctx context.Context, id RoomID) ([]Photo, error) {
	list, err := collect(ctx, s.reader, scanPhoto, photoColumns+`WHERE room = ? AND binned IS NULL ORDER BY face, id`, id)
	return list, fault("list the photos", err)
}

// BinnedPhotos lists those that were put aside, the last first.
func (s *Store) BinnedPhotos(ctx context.Context, id RoomID) ([]Photo, error) {
	list, err := collect(ctx, s.reader, scanPhoto, photoColumns+`WHERE room = ? AND binned IS NOT NULL ORDER BY binned DESC, id DESC`, id)
	return list, fault("list the photos", err)
}

// BinPhoto puts a photo aside.
func (s *Store) BinPhoto(ctx context.Context, id RoomID, number int64, at time.Time) error {
	return s.binned(ctx, "put a photo aside", id, number, stamp(at))
}

// UnbinPhoto brings it back.
func (s *Store) UnbinPhoto(ctx context.Context, id RoomID, number int64) error {
	return s.binned(ctx, "bring a photo back", id, number, nil)
}

func (s *Store) binned(ctx context.Context, doing string, id RoomID, number int64, when any) error {
	err := s.change(ctx, doing, func(tx *sql.Tx) error {
		if _, err := openRoom(ctx, tx, id); err != nil {
			return err
		}
		return must(tx.ExecContext(ctx, `UPDATE photo SET binned = ? WHERE room = ? AND id = ?`, when, id, number))
	})
	if err == nil {
		s.feed.tellPhotos(id)
	}
	return err
}

// Photo gives one photo of a room with its bytes.
func (s *Store) Photo(ctx context.Context, id RoomID, number int64) (Photo, []byte, error) {
	const doing = "read a photo"
	p, err := onePhoto(ctx, s.reader, id, number)
	if err != nil {
		return Photo{}, nil, fault(doing, err)
	}
	bytes, err := picture(ctx, s.reader, p.SHA)
	return p, bytes, fault(doing, err)
}

func picture(ctx context.Context, q queryer, sum [sha256.Size]byte) (bytes []byte, err error) {
	err = q.QueryRowContext(ctx, `SELECT bytes FROM picture WHERE sha = ?`, sum[:]).Scan(&bytes)
	if errors.Is(err, sql.ErrNoRows) {
		err = NotFound // unpinned between two reads
	}
	return bytes, err
}

// MovePhoto pins a photo to another face, as when the face gets another name. If the same picture is there already, it
// is the photo that stays.
func (s *Store) MovePhoto(ctx context.Context, id RoomID, number int64, face string) error {
	const doing = "move a photo"
	if err := s.limits.paths(face); err != nil {
		return fault(doing, err)
	}
	if face == "" {
		return fault(doing, fmt.Errorf("%w: a photo without a face", Unusable))
	}
	err := s.change(ctx, doing, func(tx *sql.Tx) error {
		if _, err := openRoom(ctx, tx, id); err != nil {
			return err
		}
		return must(tx.ExecContext(ctx, `UPDATE OR REPLACE photo SET face = ? WHERE room = ? AND id = ?`, face, id, number))
	})
	if err == nil {
		s.feed.tellPhotos(id)
	}
	return err
}

// NotePhoto says something else of a photo.
func (s *Store) NotePhoto(ctx context.Context, id RoomID, number int64, note string) error {
	const doing = "note something on a photo"
	if err := s.limits.paths(note); err != nil {
		return fault(doing, err)
	}
	err := s.change(ctx, doing, func(tx *sql.Tx) error {
		if _, err := openRoom(ctx, tx, id); err != nil {
			return err
		}
		return must(tx.ExecContext(ctx, `UPDATE photo SET note = ? WHERE room = ? AND id = ?`, note, id, number))
	})
	if err == nil {
		s.feed.tellPhotos(id)
	}
	return err
}

// RemovePhoto unpins a photo for good. Its picture goes when it is pinned nowhere else.
func (s *Store) RemovePhoto(ctx context.Context, id RoomID, number int64) error {
	const doing = "remove a photo"
	err := s.change(ctx, doing, func(tx *sql.Tx) error {
		if _, err := openRoom(ctx, tx, id); err != nil {
			return err
		}
		return must(tx.ExecContext(ctx, `DELETE FROM photo WHERE room = ? AND id = ?`, id, number))
	})
	if err == nil {
		s.feed.tellPhotos(id)
	}
	return err
}

const photoColumns = `SELECT id, face, media, size, width, height, sha, author, at, note, binned FROM photo `

func onePhoto(ctx context.Context, q queryer, id RoomID, number int64) (Photo, error) {
	list, err := collect(ctx, q, scanPhoto, photoColumns+`WHERE room = ? AND id = ?`, id, number)
	if err == nil && len(list) == 0 {
		err = NotFound
	}
	if err != nil {
		return Photo{}, err
	}
	return list[0], nil
}

func scanPhoto(row *sql.Rows) (p Photo, err error) {
	var at int64
	var sum []byte
	var binned sql.NullInt64
	err = row.Scan(&p.ID, &p.Face, &p.Media, &p.Size, &p.Width, &p.Height, &sum, &p.By, &at, &p.Note, &binned)
	p.Binned = binned.Valid
	copy(p.SHA[:], sum)
	p.At = moment(at)
	return p, err
}
