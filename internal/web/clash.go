package web

import (
	"net/http"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

// clashed is one value that two people changed, as it is shown to the second.
type clashed struct {
	Where              string
	Theirs, Yours, Was string
	Name, Value        string // of the input that does it after all; no name: it can not be done with one input
}

// shown readies clashes for the page. What stands in them stands as behind a colon, so it is set as that; where a name
// was given there is no single value to set.
func shown(list []document.Clash, ops []text.Op) []clashed {
	named := hasName(ops)
	var out []clashed
	for _, c := range list {
		e := clashed{Where: strings.Join(c.Path, " > "), Theirs: c.Theirs, Yours: c.Yours, Was: c.Was}
		switch {
		case named:
		case c.Yours == "":
			e.Name, e.Value = "remove", pathName(c.Path)
		default:
			e.Name, e.Value = doValue+":"+pathName(c.Path), c.Yours
		}
		out = append(out, e)
	}
	return out
}

// clashing keeps what of a form clashes with nothing, and shows the rest with both values. A form may ask for a dozen
// things: one that another changed is no reason to lose the others.
func (s *Server) clashing(w http.ResponseWriter, r *http.Request, v *view, base store.Revision, ops []text.Op, list []clashed) error {
	f := &frame{Title: "Two people changed the same thing", Room: v, Body: list}
	o, err := s.peaceful(r, v, base, ops)
	if err == nil && len(o.ops) > 0 && r.PostFormValue("preview") == "" {
		if err = s.append(r, v, o, store.Edit{Seen: base.Number}); err == nil {
			f.Answer = "What else you had typed is kept."
			f.Room, err = s.view(r)
		}
	}
	if err != nil {
		return err
	}
	return s.show(w, r, "clash", http.StatusConflict, f)
}

// peaceful puts those operations onto the head that clash with nothing, if they can stand without the others.
func (s *Server) peaceful(r *http.Request, v *view, base store.Revision, ops []text.Op) (outcome, error) {
	var rest []text.Op
	for _, op := range ops {
		o, err := s.onto(r.Context(), base, v, []text.Op{op})
		if err != nil {
			return outcome{}, err
		}
		if len(o.clashes) == 0 {
			rest = append(rest, op)
		}
	}
	o, err := s.onto(r.Context(), base, v, rest)
	if err != nil || len(o.clashes) > 0 || len(o.refused) > 0 {
		return outcome{}, err
	}
	return o, nil
}
