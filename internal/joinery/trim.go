package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Trim is one kind of trim with all its lengths.
type Trim struct {
	Name string
	At   diag.Place
	Kind document.TrimKind
	Runs []Run
}

// Run is one straight line of trim: along a wall between corners, doors and cabinets, or one side of an opening.
type Run struct {
	Wall   string
	Where  string      // "from corner A to door, left", "window, head"
	From   unit.Length // along the wall, in its frame; of a wall's run only
	Length unit.Length // of the back, which lies on the wall
	Ends   [2]TrimEnd  // left, right
	Pieces []Length
	Scarfs []Scarf
	Into   []Stud      // of a ledger: what it is screwed into
	Falls  unit.Length // how much the floor under it falls: what a level lower edge has to be scribed by
}

// TrimEnd is how one end meets what is there.
type TrimEnd struct {
	What  string     // "corner A", "door, left", "vanity"
	Joint string     // "coped", "mitered", "square", "scarf"
	Angle unit.Angle // of the corner between the finished faces; 0 where there is none
	Saw   unit.Angle // how far the saw is swung from square
}

// Length is one piece of trim: to its long and to its short point.
type Length struct {
	Part        part.Part
	Long, Short unit.Length
}

// Parts are all pieces of a trim.
func (t Trim) Parts() []part.Part {
	var all []part.Part
	for _, r := range t.Runs {
		for _, p := range r.Pieces {
			all = counted(all, p.Part)
		}
	}
	return all
}

// trimmer carries one trim through the work.
type trimmer struct {
	r    *room
	doc  document.Trim
	good good
	wide unit.Length
	t    Trim
}

// trim works one kind of trim out.
func (r *room) trim(doc document.Trim) (Trim, bool) {
	m := &trimmer{r: r, doc: doc, t: Trim{Name: doc.Name, At: doc.At, Kind: doc.Kind}}
	if !r.sure(doc, doc.Name, "Jamb", "Reveal") {
		return m.t, false
	}
	m.good = r.good(doc.Stock, doc.Name+" and its like", doc.At)
	if !m.good.known || !m.good.stock.Width.Known {
		r.lacks(doc.At, "the size of the stick for "+doc.Name)
		return m.t, false
	}
	m.wide = m.good.stock.Width.V
	switch doc.Kind {
	case document.Casing:
		m.casings()
	case document.JambExtension:
		m.extensions()
	default:
		m.walls()
	}
	return m.t, len(m.t.Runs) > 0
}

// piece makes the part of one length. Its length is to the long point; the finished face is up.
func (m *trimmer) piece(name string, long unit.Length, ends ...part.End) Length {
	p := part.Part{Name: name, At: m.doc.At, For: m.doc.Name, Count: 1, Stock: m.good.name, Grain: part.Along,
		Size:   part.Size{Length: long, Width: m.wide, Thick: m.good.thick},
		Labels: []part.Label{{On: part.Face, Text: "this face up"}, {On: part.Front, Text: m.frontEdge()}}, Ends: ends}
	m.r.found = append(m.r.found, p.Check()...)
	front, rear := p.Points()
	face, back := p.Faces()
	return Length{Part: p, Long: long, Short: min(front, rear, face, back)}
}

// frontEdge names the edge that lies toward the person: the outer one of what frames an opening, the lower one of what runs along a floor.
func (m *trimmer) frontEdge() string {
	switch m.doc.Kind {
	case document.Casing:
		return "outer edge"
	case document.JambExtension:
		return "edge to the room"
	}
	return "lower edge"
}

// fits tells of a piece that is longer than its stick.
func (m *trimmer) fits(what string, long unit.Length) {
	if have := m.good.stock.Length; have.Known && long > have.V {
		m.r.stop("trim-long", m.doc.At, "{0}: {1} has to be {2} long in one piece, and {3} is {4}", "use a longer stick", diag.T(m.doc.Name), diag.T(what), diag.X(long), diag.T(m.good.name), diag.X(have.V))
	}
}
