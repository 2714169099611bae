package web

import (
	"fmt"
	"net/http"
	"net/url"

	"dryfit/internal/draw"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
)

// choices are the best few layouts as the search found them, whether one is held or not.
func (v *view) choices(l *laidOut) error {
	free, err := v.free(l.Face, l.Field)
	if err != nil {
		return err
	}
	_, z, ok := free.laid(l.Face, l.Field)
	if !ok {
		return nil
	}
	for i, c := range z.Layouts {
		reason := c.Why.Say(v.Plan.Style)
		if i > 0 {
			reason = c.WhyNot.Say(v.Plan.Style)
		}
		name := "best found"
		if i > 0 {
			name = fmt.Sprintf("other %d", i)
		}
		picture := fmt.Sprintf("%s/thumb.svg?%s", v.Address(), url.Values{"face": {l.Face}, "field": {l.Field}, "k": {fmt.Sprint(i)}, "at": {fmt.Sprint(v.Head)}}.Encode())
		l.Choices = append(l.Choices, choice{i, name, capital(reason), picture, i == 0 && !l.Held})
	}
	if face, ok := v.Plan.Room.Face(l.Face); ok {
		l.Compare = report.Layouts(free.Plan, face, z)
	}
	return nil
}

// thumb draws one of the layouts, small.
func (s *Server) thumb(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	page, err := v.thumbnail(r.FormValue("face"), r.FormValue("field"), r.FormValue("k"))
	if err != nil {
		return err
	}
	w.Header().Set("Cache-Control", "private, max-age=3600")
	return sendDrawing(w, r, page)
}

func (v *view) thumbnail(face, field, k string) (draw.Page, error) {
	none := fault{http.StatusNotFound, "There is no such layout."}
	free, err := v.free(face, field)
	if err != nil {
		return draw.Page{}, err
	}
	_, z, ok := free.laid(face, field)
	var n int
	if _, err := fmt.Sscan(k, &n); err != nil || !ok || n < 0 || n >= len(z.Layouts) {
		return draw.Page{}, none
	}
	if n > 0 {
		op, ok := free.hold(face, z, z.Layouts[n])
		if !ok {
			return draw.Page{}, none
		}
		if free, err = free.with(op); err != nil {
			return draw.Page{}, err
		}
	}
	page, ok := sheet.LayoutOnScreen(free.Plan, face)
	if !ok {
		return draw.Page{}, none
	}
	return page, nil
}
