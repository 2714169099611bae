package web

import (
	"context"
	"crypto/rand"
	"crypto/subtle"
	"encoding/base64"
	"html/template"
	"net"
	"net/http"
	"net/netip"
	"strings"
)

// role is what a person may do.
type role uint8

const (
	nobody role = iota
	looker
	editor
)

// Share holds the secrets of the two links that open the rooms on other machines.
type Share struct {
	Addresses    []string // http://192.0.2.7:8080
	Look, Change string   // secrets
}

// NewShare makes fresh secrets of 128 bits each.
func NewShare(addresses ...string) *Share {
	return &Share{Addresses: addresses, Look: secret(), Change: secret()}
}

func secret() string {
	b := make([]byte, 16)
	rand.Read(b) // never fails
	return base64.RawURLEncoding.EncodeToString(b)
}

// Link is the address that opens the rooms, for looking or for changing.
func (s *Share) Link(address string, change bool) string {
	if change {
		return address + "/s/" + s.Change
	}
	return address + "/s/" + s.Look
}

func (s *Share) roleOf(secret string) role {
	same := func(a string) bool { return subtle.ConstantTimeCompare([]byte(a), []byte(secret)) == 1 }
	switch {
	case same(s.Change):
		return editor
	case same(s.Look):
		return looker
	}
	return nobody
}

const pass = "dryfit-pass" // the cookie that holds a secret

// roleOf: the person at this machine may change; any other needs the secret.
func (s *Server) roleOf(r *http.Request) role {
	if atThisMachine(r) {
		return editor
	}
	if c, err := r.Cookie(pass); err == nil && s.share != nil {
		return s.share.roleOf(c.Value)
	}
	return nobody
}

// atThisMachine: what a browser says of the address that it asked for is its word alone, so where it asks from counts too.
func atThisMachine(r *http.Request) bool {
	from, err := netip.ParseAddrPort(r.RemoteAddr)
	return err == nil && from.Addr().Unmap().IsLoopback() && loopback(r.Host)
}

func loopback(host string) bool {
	name, _, err := net.SplitHostPort(host)
	if err != nil {
		name = host
	}
	at, err := netip.ParseAddr(strings.Trim(name, "[]"))
	return strings.EqualFold(name, "localhost") || err == nil && at.IsLoopback()
}

type roleKey struct{}

func withRole(r *http.Request, is role) *http.Request {
	return r.WithContext(context.WithValue(r.Context(), roleKey{}, is))
}

func mayChange(r *http.Request) bool { return r.Context().Value(roleKey{}) == editor }

// who labels a person's revisions.
func (s *Server) who(r *http.Request) string {
	if atThisMachine(r) {
		return "here"
	}
	return "shared link"
}

// enter takes the secret of a link and keeps it in a cookie, so that it stands in no further address.
func (s *Server) enter(w http.ResponseWriter, r *http.Request) error {
	if s.share == nil || s.share.roleOf(r.PathValue("secret")) == nobody {
		return fault{http.StatusForbidden, "This link does not open these rooms. Ask for the one that is shown now."}
	}
	http.SetCookie(w, &http.Cookie{Name: pass, Value: r.PathValue("secret"), Path: "/", HttpOnly: true, SameSite: http.SameSiteLaxMode, MaxAge: 30 * 24 * 3600})
	http.Redirect(w, r, "/", http.StatusSeeOther)
	return nil
}

// invitation is one link with its picture.
type invitation struct {
	Link    string
	Change  bool
	Picture template.HTML
}

// sharing is the links, and what a phone can take away instead of them.
type sharing struct {
	Links []invitation
	Rooms []roomLine
}

// sharePage shows the links to whoever may change rooms.
func (s *Server) sharePage(w http.ResponseWriter, r *http.Request) error {
	if !mayChange(r) {
		return fault{http.StatusForbidden, "Only who may change the rooms can share them."}
	}
	var all []invitation
	if s.share != nil {
		for _, a := range s.share.Addresses {
			for _, change := range []bool{false, true} {
				link := s.share.Link(a, change)
				picture, err := picture(link)
				if err != nil {
					return err
				}
				all = append(all, invitation{link, change, picture})
			}
		}
	}
	rooms, err := s.store.Rooms(r.Context())
	if err != nil {
		return err
	}
	return s.show(w, r, "share", http.StatusOK, &frame{Title: "Share", Body: sharing{all, roomLines(rooms)}})
}
