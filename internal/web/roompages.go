package web

import "net/http"

// pageOf is one page of a room. The page is at /room/N/name, and its template is page/name.html.
type pageOf struct {
	name, tab string
	fill      func(v *view, r *http.Request) (*frame, error)
	has       func(v *view) bool // whether the room has anything for this page; nil: always
	whole     bool               // it needs the whole plan
	dated     bool               // it reads the clock, to the minute
}

// roomPages are the pages of a room in the order of their tabs. This is the one place that knows which there are.
func roomPages() []pageOf {
	return []pageOf{measurePage, fitPage, layoutPage, cutPage, buyPage, daysPage, bookPage, photosPage, sourcePage, historyPage}
}

// speaksOf is for pages of trades that not every room has: there is a tab where the document has one of the keys.
func speaksOf(keys ...string) func(v *view) bool {
	return func(v *view) bool {
		for _, k := range keys {
			if v.Tree.Get(k) != nil {
				return true
			}
		}
		return false
	}
}

// tab is the way to a page.
type tab struct{ Page, Name string }

// Pages are the tabs of the room. A page that has nothing to say of it is not among them, unless one is on it.
func (f *frame) Pages() []tab { return tabs(roomPages(), f.Room, f.Page) }

func tabs(pages []pageOf, v *view, here string) []tab {
	var out []tab
	for _, p := range pages {
		if p.has == nil || p.name == here || p.has(v) {
			out = append(out, tab{p.name, p.tab})
		}
	}
	return out
}

// routePages adds every page of a room.
func (s *Server) routePages(mux *http.ServeMux) {
	for _, p := range append(roomPages(), wallPage) {
		mux.Handle("GET /room/{room}/"+p.name, s.wrap(s.page(p)))
	}
}
