package web

import (
	"fmt"
	"net/http"
	"slices"

	"dryfit/internal/plan"
	"dryfit/internal/store"
)

var photosPage = pageOf{name: "photos", tab: "Photos", fill: photos}

// routePhotos adds the pages of the photos: pictures of a wall before it was closed up, pinned to a face.
func (s *Server) routePhotos(mux *http.ServeMux) {
	d := darkroom{s, make(chan struct{}, 1)}
	mux.Handle("POST /room/{room}/photos", s.wrap(d.upload))
	mux.Handle("GET /room/{room}/photos/{photo}", s.wrap(s.photo))
	mux.Handle("POST /room/{room}/photos/{photo}", s.wrap(s.changePhoto))
	for do, what := range photoSteps {
		mux.Handle("POST /room/{room}/photos/{photo}/"+do, s.wrap(s.stepPhoto(what)))
	}
}

// album is all photos of a room by face.
type album struct {
	Aside                       []snapshot // put aside: they can be brought back
	Faces                       []pinned
	Names                       []string // of the faces that a photo can be moved to
	Longest, MostMB, MostPixels int
}

// pinned are the photos of one face, and what is wrong with those that were just sent.
type pinned struct {
	Name, ID string
	Gone     bool // the document has no such face any more
	Photos   []snapshot
	Wrong    []string
}

// snapshot is one photo.
type snapshot struct {
	Number        int64
	Address       string
	Face          string
	Note, Of      string
	Width, Height int
	When, By      string
}

func photos(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
		return nil, err
	}
	all, err := v.server.store.Photos(v.ctx, v.ID)
	if err != nil {
		return nil, err
	}
	a := album{Names: v.photoFaces(), Longest: longestNote, MostMB: mostPhotoBytes >> 20, MostPixels: mostPhotoPixels / 1_000_000}
	for _, name := range a.Names {
		a.Faces = append(a.Faces, pinned{Name: name, ID: faceID(name)})
	}
	for _, p := range all {
		a.pin(p, v.Address())
	}
	aside, err := v.server.store.BinnedPhotos(v.ctx, v.ID)
	if err != nil {
		return nil, err
	}
	for _, p := range aside {
		a.Aside = append(a.Aside, snapshotOf(p, v.Address()))
	}
	return &frame{Title: "Photos", Question: "What is behind the face?", Answer: countPhotos(len(all)), Body: &a}, nil
}

// photoFaces are the faces that the document names: they are photographed long before the tape has given them a shape.
func (v *view) photoFaces() []string {
	var out []string
	add := func(name string) {
		if !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	for _, w := range v.Plan.Document.Walls {
		add(w.Name)
	}
	for _, f := range v.Plan.Room.Faces {
		add(f.Name)
	}
	add("floor")
	add("ceiling")
	return out
}

// pin puts a photo to its face; one whose face is gone is shown too, so that nothing is lost from sight.
func (a *album) pin(p store.Photo, room string) {
	i := slices.IndexFunc(a.Faces, func(f pinned) bool { return f.Name == p.Face })
	if i < 0 {
		i = len(a.Faces)
		a.Faces = append(a.Faces, pinned{Name: p.Face, ID: faceID(p.Face), Gone: true})
	}
	a.Faces[i].Photos = append(a.Faces[i].Photos, snapshotOf(p, room))
}

func snapshotOf(p store.Photo, room string) snapshot {
	s := snapshot{Number: p.ID, Address: fmt.Sprintf("%s/photos/%d", room, p.ID), Face: p.Face, Note: p.Note, Width: p.Width, Height: p.Height,
		When: p.At.Format("2006-01-02 15:04 UTC"), By: p.By}
	if s.Of = p.Face; p.Note != "" {
		s.Of += ": " + p.Note
	}
	return s
}

func faceID(name string) string { return idOf("photos of " + name) }

func countPhotos(n int) string {
	switch n {
	case 0:
		return "No photo yet. Take one of each wall before it is closed up, with a tape in the picture."
	case 1:
		return "1 photo."
	}
	return fmt.Sprintf("%d photos.", n)
}

// photo gives one picture. Its number is never given to another, so a browser may keep it.
func (s *Server) photo(w http.ResponseWriter, r *http.Request) error {
	id, number, err := photoAsked(r)
	if err != nil {
		return err
	}
	p, b, err := s.store.Photo(r.Context(), id, number)
	if err != nil {
		return err
	}
	if p.Binned && !mayChange(r) {
		return store.NotFound // it was removed for a reason
	}
	w.Header().Set("Content-Type", p.Media)
	w.Header().Set("Cache-Control", "private, max-age=604800, immutable")
	_, err = w.Write(b)
	return gone(err)
}
