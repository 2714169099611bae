package web

import (
	"context"
	"errors"
	"fmt"
	"io"
	"mime/multipart"
	"net/http"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"dryfit/internal/store"
)

const (
	mostPhotosSent = 20       // in one form
	mostSent       = 64 << 20 // bytes of such a form
	longestNote    = 240      // runes; the store takes 1000 bytes
)

// bodyLimit is how much a request may send.
func bodyLimit(r *http.Request) int64 {
	if r.Method == http.MethodPost && strings.HasPrefix(r.URL.Path, "/room/") && strings.HasSuffix(r.URL.Path, "/photos") {
		return mostSent
	}
	return maxBody
}

// darkroom takes photos in. One is developed at a time, since each takes much memory while it is.
type darkroom struct {
	*Server
	one chan struct{}
}

// upload keeps the photos of a form that can be read, and says of the others at their input why they can not. The face
// stands in the address, so that it is known even where the form is too large to be read.
func (d darkroom) upload(w http.ResponseWriter, r *http.Request) error {
	v, err := d.view(r)
	if err != nil {
		return err
	}
	f, err := photos(v, r)
	if err != nil {
		return err
	}
	face := r.URL.Query().Get("face")
	if !slices.Contains(f.Body.(*album).Names, face) {
		return fault{http.StatusUnprocessableEntity, "This room has no face of that name."}
	}
	wrong, err := d.take(r, v, face)
	if err != nil {
		return err
	}
	if len(wrong) == 0 {
		http.Redirect(w, r, v.Address()+"/photos#"+faceID(face), http.StatusSeeOther)
		return nil
	}
	return d.render(w, r, v, pageOf{name: photosPage.name, fill: saying(face, wrong)}, http.StatusUnprocessableEntity)
}

// saying is the page with what is wrong at the input of a face.
func saying(face string, wrong []string) func(*view, *http.Request) (*frame, error) {
	return func(v *view, r *http.Request) (*frame, error) {
		f, err := photos(v, r)
		if err != nil {
			return nil, err
		}
		for i, p := range f.Body.(*album).Faces {
			if p.Name == face {
				f.Body.(*album).Faces[i].Wrong = wrong
			}
		}
		return f, nil
	}
}

func (d darkroom) take(r *http.Request, v *view, face string) (wrong []string, err error) {
	const inMemory = 1 << 20 // larger files wait in the system's folder for what is temporary, under names of its own
	if err := r.ParseMultipartForm(inMemory); err != nil {
		return notTaken(err)
	}
	defer r.MultipartForm.RemoveAll()
	files := r.MultipartForm.File["photo"]
	switch {
	case len(files) == 0:
		return []string{"Choose a photo first."}, nil
	case len(files) > mostPhotosSent:
		return []string{fmt.Sprintf("Send up to %d photos at a time.", mostPhotosSent)}, nil
	}
	for _, file := range files {
		err := d.takeOne(r, v, face, file)
		var u unfit
		switch {
		case errors.As(err, &u):
			wrong = append(wrong, nameOfFile(file.Filename)+": "+u.Error()+".")
		case err != nil:
			return nil, err
		}
	}
	return wrong, nil
}

// notTaken words why a form can not be read.
func notTaken(err error) ([]string, error) {
	var large *http.MaxBytesError
	switch {
	case errors.As(err, &large):
		return []string{fmt.Sprintf("That is too much at a time: send up to %d MB of photos.", mostSent>>20)}, nil
	case errors.Is(err, http.ErrNotMultipart), errors.Is(err, http.ErrMissingBoundary):
		return nil, fault{http.StatusUnsupportedMediaType, "Photos come as files of a form."}
	}
	return []string{"The photos did not arrive whole. Send them once more."}, nil
}

func nameOfFile(s string) string {
	if s = strings.ToValidUTF8(s, "?"); s == "" {
		return "the file"
	}
	return s
}

func (d darkroom) takeOne(r *http.Request, v *view, face string, file *multipart.FileHeader) error {
	if file.Size > mostPhotoBytes {
		return tooManyMB
	}
	p, err := d.develop(r, file)
	if err != nil {
		return err
	}
	_, err = d.store.AddPhoto(r.Context(), v.ID, store.NewPhoto{Face: face, Media: "image/jpeg", Width: p.Width, Height: p.Height,
		Bytes: p.JPEG, By: d.who(r), At: d.now(), Note: strings.TrimSpace(clip(r.PostFormValue("note")))})
	if errors.Is(err, store.TooBig) {
		return unfit("this room has as many photos as are kept. Remove some first")
	}
	return err
}

// develop waits its turn.
func (d darkroom) develop(r *http.Request, file *multipart.FileHeader) (developed, error) {
	select {
	case d.one <- struct{}{}:
		defer func() { <-d.one }()
	case <-r.Context().Done():
		return developed{}, r.Context().Err()
	}
	in, err := file.Open()
	if err != nil {
		return developed{}, err
	}
	defer in.Close()
	b, err := io.ReadAll(in)
	if err != nil {
		return developed{}, err
	}
	return develop(b)
}

// clip keeps the beginning of a note that is too long for its input.
func clip(note string) string {
	note = strings.ToValidUTF8(note, "?")
	if utf8.RuneCountInString(note) <= longestNote {
		return note
	}
	return string([]rune(note)[:longestNote])
}

func photoAsked(r *http.Request) (store.RoomID, int64, error) {
	id, err := roomID(r)
	if err != nil {
		return 0, 0, err
	}
	number, err := strconv.ParseInt(r.PathValue("photo"), 10, 64)
	if err != nil {
		return 0, 0, fault{http.StatusNotFound, "There is no such photo."}
	}
	return id, number, nil
}

// changePhoto notes something on a photo, and moves it where another face is named.
func (s *Server) changePhoto(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	id, number, err := photoAsked(r)
	if err != nil {
		return err
	}
	f, err := photos(v, r)
	if err != nil {
		return err
	}
	now, _, err := s.store.Photo(r.Context(), id, number)
	if err != nil {
		return err
	}
	note, face := strings.TrimSpace(r.PostFormValue("note")), r.PostFormValue("face")
	switch {
	case utf8.RuneCountInString(note) > longestNote || !utf8.ValidString(note):
		return fault{http.StatusUnprocessableEntity, fmt.Sprintf("A note has up to %d letters.", longestNote)}
	case face != now.Face && !slices.Contains(f.Body.(*album).Names, face):
		return fault{http.StatusUnprocessableEntity, "This room has no face of that name."}
	}
	if err := s.store.NotePhoto(r.Context(), id, number, note); err != nil {
		return err
	}
	if face != now.Face {
		if err := s.store.MovePhoto(r.Context(), id, number, face); err != nil {
			return err
		}
	}
	http.Redirect(w, r, v.Address()+"/photos#"+faceID(face), http.StatusSeeOther)
	return nil
}

// photoSteps are what can be done with a photo by one button. One that is removed can be put back; for good it goes only
// from there, since it may show more than its owner wants to keep.
var photoSteps = map[string]func(s *Server, ctx context.Context, id store.RoomID, number int64) error{
	"remove": func(s *Server, ctx context.Context, id store.RoomID, number int64) error {
		return s.store.BinPhoto(ctx, id, number, s.now())
	},
	"back": func(s *Server, ctx context.Context, id store.RoomID, number int64) error {
		return s.store.UnbinPhoto(ctx, id, number)
	},
	"forever": func(s *Server, ctx context.Context, id store.RoomID, number int64) error {
		return s.store.RemovePhoto(ctx, id, number)
	},
}

func (s *Server) stepPhoto(do func(*Server, context.Context, store.RoomID, int64) error) handler {
	return func(w http.ResponseWriter, r *http.Request) error {
		id, number, err := photoAsked(r)
		if err != nil {
			return err
		}
		p, _, err := s.store.Photo(r.Context(), id, number)
		if err != nil {
			return err
		}
		if err := do(s, r.Context(), id, number); err != nil {
			return err
		}
		http.Redirect(w, r, fmt.Sprintf("/room/%d/photos#%s", id, faceID(p.Face)), http.StatusSeeOther)
		return nil
	}
}
