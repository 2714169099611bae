package tiling

import (
	"slices"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
)

// Make plans all tile work of a room. A face that can not be laid is told of and left out; the rest goes on.
func Make(doc document.Room, room site.Room, o Options) (Plan, diag.List, []diag.Assumption) {
	m := &maker{doc: doc, room: room, options: o}
	var p Plan
	var u usage
	var laid []Face
	for _, t := range m.tasks() {
		switch {
		case o.Face == "" || o.Face == t.face.Name:
			f := m.layFace(t, &u, laid)
			laid, p.Faces = append(laid, f), append(p.Faces, f)
		case m.leads(t.face.Name):
			laid = append(laid, m.aside(t, laid))
		}
	}
	if !o.Quick {
		p.Goods = m.totals(u)
	}
	return p, m.findings, m.assumed
}

// task is one face to lay. Its mark is the same whether the other faces are laid too or not.
type task struct {
	face site.Face
	lay  document.Lay
	mark string
}

// tasks lists the faces in the order in which they are laid.
func (m *maker) tasks() []task {
	var out []task
	for _, l := range inOrder(m.doc.Lay) {
		if face, ok := m.room.Face(l.Face); ok {
			out = append(out, task{face, l, markOf(face.Name, out)})
		}
	}
	return out
}

// leads reports whether the one face that is asked for continues the joints of this one, or those of a face that does,
// and has a field that nobody has pinned.
func (m *maker) leads(name string) bool {
	seen := map[string]bool{}
	for at := m.options.Face; at != "" && !seen[at]; {
		seen[at] = true
		i := slices.IndexFunc(m.doc.Lay, func(l document.Lay) bool { return l.Face == at })
		if i < 0 || !slices.ContainsFunc(m.doc.Lay[i].Fields, func(f document.Field) bool { return !f.Pin.Given }) {
			return false
		}
		at = m.doc.Lay[i].ContinueFrom.V
		if at == name {
			return true
		}
	}
	return false
}

// aside lays a face for its joints alone: what is told of it belongs to a plan of that face.
func (m *maker) aside(t task, laid []Face) Face {
	found, assumed := len(m.findings), len(m.assumed)
	f := m.layFace(t, &usage{}, laid)
	m.findings, m.assumed = m.findings[:found], m.assumed[:assumed]
	return f
}

// inOrder puts each face after the one whose joints it continues; the document's order else. A circle of faces that
// continue each other is broken where the document's order breaks it.
func inOrder(list []document.Lay) []document.Lay {
	var out []document.Lay
	done := map[string]bool{}
	var take func(l document.Lay)
	take = func(l document.Lay) {
		if done[l.Face] {
			return
		}
		done[l.Face] = true
		for _, o := range list {
			if l.ContinueFrom.Known && o.Face == l.ContinueFrom.V {
				take(o)
			}
		}
		out = append(out, l)
	}
	for _, l := range list {
		take(l)
	}
	return out
}

// layFace lays every field of one face.
func (m *maker) layFace(t task, u *usage, before []Face) Face {
	face, l := t.face, t.lay
	out := Face{Name: face.Name, Mark: t.mark, At: l.At}
	c := newCanvas(face)
	zones := m.zones(c, l)
	for i, z := range zones {
		g, ok := m.ground(c, l, z, fieldMark(i, len(zones)))
		if !ok {
			continue
		}
		f := m.layouts(g, before)
		out.Fields = append(out.Fields, f)
		u.add(z.good, out.Mark, f)
		m.worries(g, f.Chosen().Pieces)
		if out.Ledger == nil && len(f.Layouts) > 0 && z.side == nil {
			out.Ledger = ledger(face, c.edges, z.region, g.bond, f.Chosen().Origin)
			m.wideAtFloor(g, out.Ledger)
		}
	}
	out.Edges = c.edges
	out.Movement = m.movement(face, c.edges, out.Fields)
	out.Setting = settingOrder(out.Fields, out.Ledger)
	return out
}

// fieldMark tells the fields of one face apart in addresses; a single field needs none.
func fieldMark(i, of int) string {
	if of == 1 {
		return ""
	}
	return letters(i)
}

// letters counts a, b … z, aa, ab …
func letters(i int) string {
	if i >= 26 {
		return letters(i/26-1) + letters(i%26)
	}
	return string(rune('a' + i))
}

// markOf makes a short unique mark from a face's name: initials, or the first two letters of a single word.
func markOf(name string, before []task) string {
	words := strings.FieldsFunc(name, func(r rune) bool { return r == ' ' || r == '>' })
	mark := ""
	for _, w := range words {
		mark += strings.ToUpper(string([]rune(w)[:1]))
	}
	if len(words) == 1 {
		mark = strings.ToUpper(string([]rune(name)[:min(2, len([]rune(name)))]))
	}
	taken := func(s string) bool {
		return slices.ContainsFunc(before, func(t task) bool { return t.mark == s })
	}
	for i, stem := 2, mark; taken(mark); i++ {
		mark = stem + strconv.Itoa(i)
	}
	return mark
}
