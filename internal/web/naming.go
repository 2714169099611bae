package web

import (
	"context"
	"strings"

	"dryfit/internal/store"
	"dryfit/internal/text"
)

// naming is a form that calls a thing something else, wherever the document speaks of it. It is a form of its own and
// brings the whole page anew: the inputs of a thing bear its name.
type naming struct {
	Frame *frame
	Field field
}

// Naming pairs the frame with the field of a new name, for a template of both.
func (f *frame) Naming(of field) naming { return naming{f, of} }

// rename asks for another name of the thing at a path. What is refused is said here as well as at the thing.
func (v *view) rename(label string, path ...string) field {
	f := v.input(doRename, label, path)
	if f.Value != "" {
		for _, r := range v.Refused {
			f.Says = append(f.Says, v.say(r))
		}
	} else {
		f.Value = path[len(path)-1]
	}
	return f
}

func hasName(ops []text.Op) bool {
	for _, op := range ops {
		if op.Do == text.Rename {
			return true
		}
	}
	return false
}

// photosFollow pins the photos of a face that has another name now to that name.
func (s *Server) photosFollow(ctx context.Context, id store.RoomID, ops []text.Op) error {
	if !hasName(ops) {
		return nil
	}
	photos, err := s.store.Photos(ctx, id)
	if err != nil {
		return err
	}
	aside, err := s.store.BinnedPhotos(ctx, id)
	if err != nil {
		return err
	}
	for _, p := range append(photos, aside...) {
		face := p.Face
		for _, op := range ops {
			face = renamedFace(face, op)
		}
		if face == p.Face {
			continue
		}
		if err := s.store.MovePhoto(ctx, id, p.ID, face); err != nil {
			return err
		}
	}
	return nil
}

// renamedFace is what a face is called after an operation: a wall by its name, a face of an opening by the opening's.
func renamedFace(face string, op text.Op) string {
	if op.Do != text.Rename || len(op.Path) != 2 {
		return face
	}
	switch part, of := strings.CutPrefix(face, op.Path[1]+" > "); {
	case op.Path[0] == "walls" && face == op.Path[1]:
		return op.Value
	case op.Path[0] == "openings" && of:
		return op.Value + " > " + part
	}
	return face
}
