package export_test

import "math"

// stock checks what is cut from which tile, and what to buy.
func (r *rechecker) stock() {
	pieces, whole := r.byID()
	from := map[string]int{}
	for _, g := range r.plan.Goods {
		r.totals(g, whole)
		r.cutUp(g, pieces, from)
	}
	for id, p := range pieces {
		if want := map[bool]int{true: 0, false: 1}[p.Cut == nil]; from[id] != want {
			r.complain("%s: comes from %d tiles, want %d", id, from[id], want)
		}
	}
}

type goodSize struct {
	tile string
	size int
}

func (r *rechecker) byID() (map[string]*setPiece, map[goodSize]int) {
	pieces, whole := map[string]*setPiece{}, map[goodSize]int{}
	for _, w := range r.plan.Tiling {
		for i := range w.Fields {
			f := &w.Fields[i]
			for _, p := range f.Pieces {
				pieces[p.ID] = &setPiece{readPiece: p, field: f, inTile: shapeOf(p.InTile)}
				if p.Cut == nil {
					whole[goodSize{f.Tile, p.Size}]++
				}
			}
		}
	}
	return pieces, whole
}

// totals: the numbers add up, and boxes are full ones.
func (r *rechecker) totals(g readGood, whole map[goodSize]int) {
	if n := whole[goodSize{g.Tile, g.Size}]; g.Whole != n {
		r.complain("%s: %d whole tiles, said to be %d", g.Tile, n, g.Whole)
	}
	if sum := g.Whole + g.CutFrom + g.Breakage + g.Spares; sum != g.Buy {
		r.complain("%s: the parts of what to buy are %d, said to be %d", g.Tile, sum, g.Buy)
	}
	if g.Least > g.CutFrom {
		r.complain("%s: at least %d are cut up, and %d are", g.Tile, g.Least, g.CutFrom)
	}
	if g.PerBox == 0 {
		return
	}
	over := g.Boxes*g.PerBox - g.Buy
	if over < 0 || over >= g.PerBox || g.Leftover == nil || *g.Leftover != over {
		r.complain("%s: %d boxes of %d for %d tiles", g.Tile, g.Boxes, g.PerBox, g.Buy)
	}
}

// placed is a piece in the tile that it comes out of.
type placed struct {
	id   string
	ring []pt // its outline; the bounds of one with inward corners
	box  []pt
}

// cutUp: pieces lie in their tile, turned only as the good allows, the kept sides on the tile's rim, a kerf from each other; every tile that
// is counted is used; the pieces' area needs no more tiles than that.
func (r *rechecker) cutUp(g readGood, pieces map[string]*setPiece, from map[string]int) {
	tiles := map[int][]placed{}
	total := 0.0
	for _, c := range g.Sources {
		p, ok := pieces[c.Piece]
		if !ok || p.field.Tile != g.Tile || p.Size != g.Size {
			r.complain("%s: a source for %s, which is no piece of it", g.Tile, c.Piece)
			continue
		}
		from[c.Piece]++
		total += p.inTile.area()
		tiles[c.Tile] = append(tiles[c.Tile], r.place(g, c, p))
	}
	for n, list := range tiles {
		if n < 1 || n > g.CutFrom {
			r.complain("%s: tile %d of %d", g.Tile, n, g.CutFrom)
		}
		for i, a := range list {
			for _, b := range list[:i] {
				r.apart(g, n, a, b)
			}
		}
	}
	if len(tiles) != g.CutFrom {
		r.complain("%s: pieces come from %d tiles, said to be %d", g.Tile, len(tiles), g.CutFrom)
	}
	if tile := g.Blank.Length.mm() * g.Blank.Width.mm(); math.Ceil(total/tile-1e-9) > float64(g.CutFrom) {
		r.complain("%s: %.0f mm² out of %d tiles", g.Tile, total, g.CutFrom)
	}
}

// place turns a piece and moves it to where it lies in its tile.
func (r *rechecker) place(g readGood, c readSource, p *setPiece) placed {
	if c.Turn%2 == 1 && !g.Blank.Quarter || c.Turn == 2 && !g.Blank.Half || c.Turn < 0 || c.Turn > 3 {
		r.complain("%s: %d quarter turns are not allowed", p.ID, c.Turn)
	}
	m := [4]motion{{cos: 1}, {sin: 1}, {cos: -1}, {sin: -1}}[c.Turn&3]
	var turned shape
	for _, ring := range p.inTile {
		turned = append(turned, m.ring(ring))
	}
	lo, _ := turned.bounds()
	m.x, m.y = c.At.X.mm()-lo.x, c.At.Y.mm()-lo.y
	for i, ring := range p.inTile {
		turned[i] = m.ring(ring)
	}
	lo, hi := turned.bounds()
	size := pt{g.Blank.Length.mm(), g.Blank.Width.mm()}
	hexagon := len(blankOf(p.field.Bond, 1, 1)) == 6
	if !hexagon && (lo.x < -grid/2 || lo.y < -grid/2 || hi.x > size.x+grid/2 || hi.y > size.y+grid/2) {
		r.complain("%s: lies outside of tile %d", p.ID, c.Tile)
	}
	if !hexagon {
		r.keeps(p, turned, size)
	}
	out := placed{id: p.ID, ring: turned[0], box: turned.box()}
	if len(turned) > 1 || !convex(turned[0]) {
		out.ring = out.box
	}
	return out
}

func convex(ring []pt) bool {
	for i := range ring {
		if cross(ring[i], ring[(i+1)%len(ring)], ring[(i+2)%len(ring)]) < 0 {
			return false
		}
	}
	return true
}

// keeps: a factory side that must stay is a factory side of the tile that the piece is cut from.
func (r *rechecker) keeps(p *setPiece, turned shape, size pt) {
	for _, e := range p.Sides {
		if !e.Kept {
			continue
		}
		for i, ring := range turned {
			for j, a := range ring {
				b := ring[(j+1)%len(ring)]
				if p.InTile[i][j].Edge == e.Label && !onRim(a, b, size) {
					r.complain("%s: side %q must stay, and lies inside the tile", p.ID, e.Name)
				}
			}
		}
	}
}

func onRim(a, b, size pt) bool {
	at := func(x, y, v float64) bool { return math.Abs(x-v) < grid/2 && math.Abs(y-v) < grid/2 }
	return at(a.x, b.x, 0) || at(a.x, b.x, size.x) || at(a.y, b.y, 0) || at(a.y, b.y, size.y)
}

func (r *rechecker) apart(g readGood, tile int, a, b placed) {
	if d := max(gap(a.box, b.box), gap(a.ring, b.ring)); d < g.Blank.Kerf.mm()-grid {
		r.complain("%s and %s: %.4f mm apart in tile %d of %s, the kerf is %v", a.id, b.id, d, tile, g.Tile, g.Blank.Kerf.mm())
	}
}
