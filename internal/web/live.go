package web

import (
	"fmt"
	"net/http"
	"time"
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
	fmt.Fprintf(w, "event: head\ndata: %d\n\n", v.Head)
	for out.Flush() == nil {
		select {
		case <-r.Context().Done():
			return nil
		case <-beat.C:
			fmt.Fprint(w, ": still here\n\n")
		case c, open := <-changes:
			switch {
			case !open:
				return nil
			case c.Head > 0:
				fmt.Fprintf(w, "event: head\ndata: %d\n\n", c.Head)
			default:
				fmt.Fprintf(w, "event: tick\ndata: %d\n\n", c.Tick)
			}
		}
	}
	return nil
}
