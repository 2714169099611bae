package web

import "net/http"

func (s *Server) routePhotos(mux *http.ServeMux) {}
