package takeoff

import (
	"strings"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// build reckons what stands behind the tile and beside it: board with its tape and screws, membrane, primer, filler, paint.
func (m *maker) build() {
	for _, f := range m.room.Faces {
		layers, at := m.layers(f)
		for _, l := range layers {
			m.layer(f, l, at)
		}
		if len(layers) > 0 {
			m.primer(f)
			m.filler(f)
			m.paint(f)
		}
	}
	m.protect()
}

// layers are a face's own build-up, as the document has it.
func (m *maker) layers(f site.Face) ([]document.Layer, diag.Place) {
	if f.Kind == site.FloorFace {
		return m.doc.Floor.BuildUp, m.doc.Floor.At
	}
	for _, w := range m.doc.Walls {
		if w.Name == f.Name {
			return w.BuildUp, w.At
		}
	}
	return nil, f.At
}

func (m *maker) layer(f site.Face, l document.Layer, at diag.Place) {
	a := f.Board.Area()
	switch l.What {
	case document.BoardLayer:
		m.board(f, l, a)
	case document.MembraneLayer:
		kind, what := document.Membrane, "membrane"
		if strings.HasSuffix(l.Label, "primer") {
			kind, what = document.Primer, "primer"
		}
		g, named := m.good(kind, f.Name, anyGood)
		m.add(kind, what, g, named, part{Part: Part{Face: f.Name, For: "build-up", Amount: unit.Spreads(a)}})
	}
}

// board is reckoned where the document has a board for the face: what is on the wall already is nobody's purchase.
func (m *maker) board(f site.Face, l document.Layer, a unit.Area) {
	g, named := m.good(document.BackerBoard, f.Name, func(g document.Good) bool { return !g.Thick.Known || !l.Thick.Known || g.Thick.V == l.Thick.V })
	if !named {
		return
	}
	if laid := m.laid(f.Name); len(laid) > 0 { // its sheets are laid out one by one, and bought as stock
		m.fixings(f, g, joints(f, laid), func(stud, screw unit.Length) int { return screwsOf(laid, stud, screw) })
		return
	}
	m.add(document.BackerBoard, "board", g, true, part{Part: Part{Face: f.Name, For: l.Label, Amount: unit.Spreads(a)}})
	m.assume(g.At, "common practice", "board on {0} is reckoned by its area and a share for offcuts: name a stock that covers it to have each sheet laid out", diag.T(f.Name))
	sheet := sides(g)
	if sheet[0] == 0 {
		m.found(diag.Unchecked, "board-sheet", g.At, "not reckoned: tape and screws of {0} on {1}; the sides of a sheet are missing", "write its pack like 3 x 5 ft sheet", diag.T(g.Name), diag.T(f.Name))
		return
	}
	b := f.Board.Bounds()
	s := sheets(b.W(), b.H(), sheet)
	m.assume(g.At, "common practice", "sheets of {0} lie with their long side across, from the lower left corner", diag.T(g.Name))
	m.fixings(f, g, s.seams, s.screws)
}

// fixings are tape for the seams and for the corner at a wall's left end, that at its right end being its neighbor's, and screws.
func (m *maker) fixings(f site.Face, g document.Good, seams unit.Length, screws func(stud, screw unit.Length) int) {
	tape, ok := m.good(document.JointTape, f.Name, anyGood)
	if f.Kind == site.WallFace {
		seams += f.Board.Bounds().H()
	}
	m.add(document.JointTape, "tape", tape, ok, part{Part: Part{Face: f.Name, For: "seams and corners of " + g.Name, Amount: unit.Stretches(seams)}})
	screw, ok := m.good(document.Screws, f.Name, anyGood)
	m.add(document.Screws, "board screws", screw, ok, part{Part: Part{Face: f.Name, For: g.Name, Amount: unit.Count(screws(m.apart(f, screw, ok)))}})
}

// apart is how far studs and screws are from each other; a floor is screwed as close each way.
func (m *maker) apart(f site.Face, g document.Good, named bool) (stud, screw unit.Length) {
	stud, screw = catalog.StudApart, catalog.ScrewApart
	if m.doc.Units == unit.Millimetres {
		stud, screw = catalog.StudApartMetric, catalog.ScrewApartMetric
	}
	screw = g.Spacing.Or(screw)
	if !g.Spacing.Known {
		m.assume(placeOf(g, named), "common practice", "a screw every {0}", diag.L(screw))
	}
	if f.Kind == site.FloorFace {
		return screw, screw
	}
	m.assume(diag.Place{Path: "walls"}, "common practice", "studs every {0}", diag.L(stud))
	return stud, screw
}

// sides are those of the sheet that a board is sold as.
func sides(g document.Good) [2]unit.Length {
	for _, p := range g.Packs {
		if p.Sides[0] > 0 {
			return p.Sides
		}
	}
	return [2]unit.Length{}
}

// rows is a face covered with sheets.
type rows struct {
	width, height, deep unit.Length // deep: the sheet's short side
	count, across       int64
	seams               unit.Length
}

// sheets lays sheets over a rectangle in rows, their long side across.
func sheets(width, height unit.Length, sheet [2]unit.Length) rows {
	long, short := max(sheet[0], sheet[1]), min(sheet[0], sheet[1])
	r := rows{width: width, height: height, deep: short, count: up(height, short), across: up(width, long)}
	r.seams = unit.Length(r.count-1)*width + unit.Length(r.across-1)*height
	return r
}

func up(a, b unit.Length) int64 { return int64((a + b - 1) / b) }

// screws: on every stud one at each end of a sheet and one for each begun spacing between.
func (r rows) screws(stud, screw unit.Length) int {
	studs := up(r.width, stud) + 1
	each := int64(0)
	for y := unit.Length(0); y < r.height; y += r.deep {
		each += up(min(r.deep, r.height-y), screw) + 1
	}
	return int(studs * each)
}

// primer is reckoned where the document has one that names the face.
func (m *maker) primer(f site.Face) {
	g, named := m.good(document.Primer, f.Name, func(g document.Good) bool { return len(g.For) > 0 })
	if named {
		m.add(document.Primer, "primer", g, true, part{Part: Part{Face: f.Name, For: "before setting", Amount: unit.Spreads(f.Board.Area())}})
	}
}

// filler makes a face flat enough for its tile, where the document has a filler for it.
func (m *maker) filler(f site.Face) {
	if g, named := m.good(document.Leveler, f.Name, anyGood); named && f.Flat.Fill > 0 {
		m.add(document.Leveler, "filler", g, true, part{Part: Part{Face: f.Name, For: "hollows", Amount: unit.Fills(f.Flat.Fill)}})
	}
}

// paint covers the board of a wall that no tile covers.
func (m *maker) paint(f site.Face) {
	if f.Kind != site.WallFace {
		return
	}
	bare := f.Board.Area()
	for _, t := range m.tiles.Faces {
		for _, z := range t.Fields {
			if t.Name == f.Name && len(z.Chosen().Pieces) > 0 {
				bare -= z.Region.Area()
			}
		}
	}
	if bare < unit.Area(unit.Spreads(f.Board.Area()).Share(int64(leastBare), int64(unit.One)).N) {
		return
	}
	g, named := m.good(document.Paint, f.Name, anyGood)
	m.add(document.Paint, "paint", g, named, part{Part: Part{Face: f.Name, For: "board without tile", Amount: unit.Spreads(bare)}, typical: &catalog.PaintCoat, coats: catalog.Coats})
}

// leastBare is the share of a wall from where on what has no tile is a surface of its own: less is the joint round the tile (our own judgment).
const leastBare = unit.One / 20

// protect covers the floor while the walls are worked on, where the document has something for it.
func (m *maker) protect() {
	f, ok := m.room.Face("floor")
	g, named := m.good(document.Protection, "floor", anyGood)
	if ok && named {
		m.add(document.Protection, "floor protection", g, true, part{Part: Part{Face: f.Name, For: "while work goes on above it", Amount: unit.Spreads(f.Board.Area())}})
	}
}
