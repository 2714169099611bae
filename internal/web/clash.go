package web

import (
	"net/http"
	"slices"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

// clashed is one value that two people changed, as it is shown to the second.
type clashed struct {
	Where              string
	Theirs, Yours, Was string
	Offers             []offer
}

// offer is one way out beside keeping what is there: an input of the form that edits, and what it says.
type offer struct{ Label, Name, Value string }

// shown readies clashes for the page, each with what can be done about it on the head.
func shown(list []document.Clash, ops []text.Op, head *text.Node) []clashed {
	var out []clashed
	for _, c := range list {
		out = append(out, clashed{strings.Join(c.Path, " > "), c.Theirs, c.Yours, c.Was, offers(c, ops, head)})
	}
	return out
}

// offers are the ways out of one clash. What stands in it stands as behind a colon, so it is set as that; where a name was
// given, the name is what is at stake.
func offers(c document.Clash, ops []text.Op, head *text.Node) []offer {
	for _, op := range ops {
		if op.Do == text.Rename {
			if ways := namingOffers(c, op, head); ways != nil {
				return ways
			}
		}
	}
	if c.Yours == "" {
		return []offer{{"Take mine", "remove", pathName(c.Path)}}
	}
	mine := offer{"Take mine", doValue + ":" + pathName(c.Path), c.Yours}
	if c.Was == "" && c.Theirs != "" && len(c.Path) == 2 { // two things of one name
		other := freeName(head, c.Path)
		return []offer{mine, {"Keep both: call mine " + other, doValue + ":" + pathName(beside(c.Path, other)), c.Yours}}
	}
	return []offer{mine}
}

// namingOffers are those where the second person gave a thing a name. Nil where the clash is of something else.
func namingOffers(c document.Clash, op text.Op, head *text.Node) []offer {
	last, old := len(c.Path)-1, op.Path[len(op.Path)-1]
	switch {
	case c.Yours == op.Value && c.Was == old: // both named it
		return []offer{{"Take mine", doRename + ":" + pathName(c.Path), c.Yours}}
	case c.Yours == op.Value && c.Theirs == "" && slices.Equal(c.Path, op.Path): // they took it out
		return []offer{{"Put it back, and call it " + c.Yours, doValue + ":" + pathName(beside(c.Path, c.Yours)), c.Was}}
	case c.Yours == op.Value && len(op.Path) == 3 && slices.Equal(c.Path, op.Path[:2]): // they took that corner out
		return []offer{{"Put it back, and call it " + c.Yours, doValue + ":" + pathName(c.Path), renamedWord(c.Was, old, c.Yours)}}
	case c.Path[last] == op.Value && c.Was == "" && text.At(head, op.Path) != nil: // another thing has the name
		other := freeName(head, c.Path)
		return []offer{{"Call mine " + other, doRename + ":" + pathName(op.Path), other}}
	}
	return nil
}

// beside is a path with another last key.
func beside(path []string, name string) []string {
	return append(slices.Clone(path[:len(path)-1]), name)
}

// freeName is a name like the last of a path that nothing has there.
func freeName(tree *text.Node, path []string) string {
	name := path[len(path)-1]
	for n := 2; ; n++ {
		if other := name + " " + itoa(int64(n)); text.At(tree, beside(path, other)) == nil {
			return other
		}
	}
}

func renamedWord(words, old, now string) string {
	all := strings.Fields(words)
	for i, w := range all {
		if w == old {
			all[i] = now
		}
	}
	return strings.Join(all, " ")
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
