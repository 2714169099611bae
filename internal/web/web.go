// Package web is the room on a page: the pages of `dryfit serve`, their forms, their drawings and their style.
//
// It takes rooms from the store and requests from a browser, and gives pages. Rules: it runs plan.Make and no stage by
// itself; every change of a room is a list of operations on its document, kept as a new revision; what a page shows is
// worded by report and drawn by sheet; a page works without its script, which only makes it quicker; nothing comes from
// an outside address; what a browser sends is checked here, whatever the page that sent it looked like.
//
// A new page of a room is a file that fills it, a template page/NAME.html, and one entry in roomPages (roompages.go):
//
//	var buyPage = pageOf{name: "buy", tab: "Buy", fill: buy, has: speaksOf("stock")}
//
// The entry makes its address, its tab in that order, and its place in the tests that try every page. "has" says whether
// the room has anything for the page; where it has not, there is no tab. fill makes the plan as far as it needs it
// (v.make), and gives a frame with the page's question, its answer and a Body for the template, worded by report and drawn
// by sheet. A form on it posts inputs named by v.field to edit; "data-live" saves while a person types, an element
// with an id and "data-part" is brought up to date.
package web

import (
	"net/http"
	"time"

	"dryfit/internal/store"
)

// Options say what is served to whom.
type Options struct {
	Store *store.Store
	Now   func() time.Time // for the dates of revisions
	Share *Share           // links for other machines; nil serves this machine alone
}

// Server serves the rooms of one store.
type Server struct {
	store  *store.Store
	now    func() time.Time
	share  *Share
	plans  *planner
	sent   sentPages
	past   remembered
	look   looks
	assets assets
}

// New readies a server.
func New(o Options) *Server {
	return &Server{store: o.Store, now: o.Now, share: o.Share, look: allLooks(), assets: allAssets(), plans: &planner{}}
}

// Handler answers every request. What is no known path is not found; no path reaches the file system.
func (s *Server) Handler() http.Handler {
	mux := http.NewServeMux()
	for pattern, h := range map[string]handler{
		"GET /{$}":                    s.rooms,
		"POST /rooms":                 s.newRoom,
		"POST /bin":                   s.bin,
		"GET /everything.db":          s.everything,
		"POST /look":                  s.setLook,
		"GET /room/{room}":            s.toMeasure,
		"POST /room/{room}/edit":      s.edit,
		"POST /room/{room}/corners":   s.changeCorners,
		"POST /room/{room}/source":    s.replace,
		"POST /room/{room}/face":      s.layFace,
		"POST /room/{room}/pin":       s.pin,
		"POST /room/{room}/ticks":     s.tick,
		"POST /room/{room}/undo":      s.undo,
		"POST /room/{room}/redo":      s.redo,
		"GET /room/{room}/live":       s.live,
		"GET /corners/{n}":            s.cornerSketch,
		"GET /room/{room}/plan.svg":   s.planPicture,
		"GET /room/{room}/bare.svg":   s.bare,
		"GET /room/{room}/thumb.svg":  s.thumb,
		"GET /room/{room}/sheet/{n}":  s.sheet,
		"GET /room/{room}/get/{file}": s.download,
		"GET /share":                  s.sharePage,
		"GET /s/{secret}":             s.enter,
	} {
		mux.Handle(pattern, s.wrap(h))
	}
	s.routePages(mux)
	s.routePhotos(mux)
	mux.HandleFunc("GET /static/{file}", s.assets.serve)
	return s.guard(mux)
}

// handler answers a request or says why it can not.
type handler func(w http.ResponseWriter, r *http.Request) error

func (s *Server) wrap(h handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if err := h(w, r); err != nil {
			s.fail(w, r, err)
		}
	})
}
