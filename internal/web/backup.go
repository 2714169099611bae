package web

import "net/http"

func (s *Server) routeBackup(mux *http.ServeMux) {}
