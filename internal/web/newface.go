package web

import (
	"net/http"
	"net/url"

	"dryfit/internal/text"
)

// layFace puts a face among those to be laid, with one field of one tile.
func (s *Server) layFace(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	base, err := s.base(r, v)
	if err != nil {
		return err
	}
	face, tile, bond := r.PostFormValue("face"), r.PostFormValue("tile"), r.PostFormValue("bond")
	if face == "" || tile == "" || bond == "" {
		return fault{http.StatusUnprocessableEntity, "Choose a face, a tile and a bond."}
	}
	value := "{fields: {main: {tile: " + text.Quote(tile) + ", bond: " + text.Quote(bond) + "}}}"
	r.PostForm.Set("back", v.Address()+"/layout?face="+url.QueryEscape(face))
	r.Form.Set("back", r.PostForm.Get("back"))
	return s.change(w, r, v, base, []text.Op{{Do: text.Add, Path: []string{"lay", face}, Value: value}})
}
