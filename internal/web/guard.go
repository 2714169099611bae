package web

import (
	"errors"
	"io"
	"net"
	"net/http"
	"net/netip"
	"strings"

	"dryfit/internal/store"
)

// maxBody bounds what a form may send: a room document has 1 MiB at most.
const maxBody = 1<<20 + 64<<10

// mostDrained is how much more than its bound a form may bring before the connection is cut.
const mostDrained = 1 << 30

// policy lets a page load its own files and nothing else; no script or style stands in the page itself.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; " +
	"form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// guard stands before every request: who may ask, from where, and how much.
func (s *Server) guard(next http.Handler) http.Handler {
	same := http.NewCrossOriginProtection()
	return same.Handler(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		if !s.known(r.Host) {
			http.Error(w, "This address is not one that these rooms are served at.", http.StatusMisdirectedRequest)
			return
		}
		role := s.roleOf(r)
		switch {
		case strings.HasPrefix(r.URL.Path, "/s/") || strings.HasPrefix(r.URL.Path, "/static/"):
		case role == nobody:
			http.Error(w, "This room opens with the link that was shared with you.", http.StatusForbidden)
			return
		case role == looker && r.Method != http.MethodGet && r.Method != http.MethodHead && r.URL.Path != "/look":
			http.Error(w, "This link is for looking only.", http.StatusForbidden)
			return
		}
		sent := r.Body
		r.Body = http.MaxBytesReader(nil, sent, bodyLimit(r)) // nil: the connection stays, so that the answer arrives
		next.ServeHTTP(w, withRole(r, role))
		io.CopyN(io.Discard, sent, mostDrained) // what was too much is read and dropped: a browser shows an answer only after it has sent all
	}))
}

// known refuses names: a page of another site can point a name of its own at this machine, but not an address.
func (s *Server) known(host string) bool {
	name, _, err := net.SplitHostPort(host)
	if err != nil {
		name = host
	}
	if strings.EqualFold(name, "localhost") {
		return true
	}
	at, err := netip.ParseAddr(strings.Trim(name, "[]"))
	return err == nil && (at.IsLoopback() || s.share != nil)
}

// fault is an error with what to tell the person.
type fault struct {
	status int
	words  string
}

func (f fault) Error() string { return f.words }

// fail says in words why a request could not be answered.
func (s *Server) fail(w http.ResponseWriter, r *http.Request, err error) {
	f := fault{http.StatusInternalServerError, "Something failed on this machine: " + err.Error() + ". What was kept before is still there."}
	var tooLarge *http.MaxBytesError
	switch {
	case errors.As(err, &f):
	case errors.As(err, &tooLarge):
		f = fault{http.StatusRequestEntityTooLarge, "That is too much for a room document: up to 1 MB is taken. Nothing was changed. Go back: what you typed is still in the form."}
	case errors.Is(err, store.Stale):
		f = overtaken
	case statusOf[store.KindOf(err)] != 0:
		f = fault{statusOf[store.KindOf(err)], capital(err.Error()) + "."}
	case r.Context().Err() != nil:
		return // nobody is listening any more
	}
	s.show(w, r, "fault", f.status, &frame{Title: "That did not work", Body: f.words})
}

// statusOf maps what a store says once; what is not here is a failure of the machine.
var statusOf = map[store.Kind]int{
	store.NotFound: http.StatusNotFound, store.Binned: http.StatusGone, store.TooBig: http.StatusRequestEntityTooLarge,
	store.Reused: http.StatusConflict, store.Full: http.StatusInsufficientStorage, store.ReadOnly: http.StatusInsufficientStorage,
	store.Busy: http.StatusServiceUnavailable, store.Damaged: http.StatusInternalServerError,
}
