package web

import (
	"fmt"
	"io"
	"net/http"
	"time"

	"dryfit/internal/store"
)

// quiet is how long a stream may say nothing before it says that it is still there, so that a page notices when it is not.
const quiet = 20 * time.Second

// live tells a page of new revisions and ticks as they come (server-sent events).
func (s *Server) live(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	changes, stop := s.store.Subscribe(v.ID)
	defer stop()
	w.Header().Set("Content-Type", "text/event-stream")
	w.Header().Set("Cache-Control", "no-store")
	out := http.NewResponseController(w)
	beat := time.NewTicker(quiet)
	defer beat.Stop()
	var told store.Change
	tell(w, &told, store.Change{Head: v.Head})
	for out.Flush() == nil {
		select {
		case <-r.Context().Done():
			return nil
		case <-beat.C:
			fmt.Fprint(w, ": still here\n\n")
		case c, open := <-changes:
			if !open {
				return nil
			}
			tell(w, &told, c)
		}
	}
	return nil
}

// tell writes what is newer than what was told before.
func tell(w io.Writer, told *store.Change, c store.Change) {
	for _, e := range []struct {
		name string
		was  *int64
		is   int64
	}{{"head", &told.Head, c.Head}, {"tick", &told.Tick, c.Tick}, {"photo", &told.Photo, c.Photo}} {
		if e.is > *e.was {
			*e.was = e.is
			fmt.Fprintf(w, "event: %s\ndata: %d\n\n", e.name, e.is)
		}
	}
}
