package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Front is one door, drawer front, fixed panel or open place at its place.
type Front struct {
	Name   string // of the leaf: "doors, left"
	Of     string // as the document has it: "doors"
	At     diag.Place
	Kind   document.FrontKind
	Column int // from 1
	Box    Box // of the front itself
	Behind Box // the room inside that it closes
	Hinge  string
	Opens  int
	Cups   []unit.Length // heights of the hinge cups over the finished floor
}

func (o outline) overlay() bool { return o.doc.Set.Or(document.Overlay) == document.Overlay }

// reveal is the gap round and between fronts.
func (r *room) reveal(o outline) unit.Length {
	return r.usual(o.doc.Reveal, r.round(unit.Inch/8, 3*unit.Millimetre), o.doc.At, "the reveal of the fronts of "+o.doc.Name)
}

// frontThickness is how thick the fronts are; 0 where the cabinet has none.
func (r *room) frontThickness(o outline) unit.Length {
	if len(o.doc.Fronts) == 0 {
		return 0
	}
	return r.frontGood(o).thick
}

func (r *room) frontGood(o outline) good {
	return r.good(or(o.doc.Stock.Fronts, o.doc.Stock.Panels), "the fronts of "+o.doc.Name, o.doc.At)
}

// fronts lays the fronts of every column out and makes them.
func (b *builder) fronts(o outline) (all []Front, drawers []Drawer) {
	if len(o.doc.Fronts) == 0 {
		return nil, nil
	}
	s := b.r.frontGood(o)
	if !s.known || !b.columnsClose(o) {
		return nil, nil
	}
	cols, _ := o.columnsOf(b.r.mark())
	for i := range cols {
		for _, f := range b.rows(o, cols, i, s) {
			b.front(o, &f, s)
			all = append(all, f)
			if f.Kind == document.DrawerFront {
				if d, ok := b.drawer(o, f); ok {
					drawers = append(drawers, d)
				}
			}
		}
	}
	b.match(o)
	return all, drawers
}

// columnsClose tells of columns whose widths do not add up to what is between the sides.
func (b *builder) columnsClose(o outline) bool {
	sum := unit.Length(0)
	for _, c := range o.doc.Columns {
		if !c.Known {
			b.r.lacks(c.At, "the width of a column of "+b.name)
			return false
		}
		sum += c.V
	}
	_, free := o.columnsOf(b.r.mark())
	if len(o.doc.Columns) > 0 && sum != free {
		b.r.stop("columns-open", o.doc.Columns[0].At, "the columns of {0} are {1} together, and between its sides there are {2}", "make them add up, or leave columns out: then they are alike", diag.T(b.name), diag.X(sum), diag.X(free))
		return false
	}
	return true
}

// rows are the fronts of one column from the top.
func (b *builder) rows(o outline, cols [][2]unit.Length, i int, s good) []Front {
	var docs []document.Front
	for _, f := range o.doc.Fronts {
		if f.Column.Or(1) == i+1 {
			docs = append(docs, f)
		}
	}
	if len(docs) == 0 {
		return nil
	}
	area := b.frontArea(o, cols, i, s)
	heights, ok := b.heights(docs, area.Size(yAxis)-unit.Length(len(docs)-1)*b.r.reveal(o))
	if !ok {
		return nil
	}
	var all []Front
	gap := b.r.reveal(o)
	top := area.Hi[yAxis]
	for k, f := range docs {
		box := area
		box.Hi[yAxis], box.Lo[yAxis] = top, top-heights[k]
		behind := span(cols[i][0], cols[i][1], box.Lo[yAxis]-gap/2, box.Hi[yAxis]+gap/2, o.backFace, area.Lo[zAxis])
		if k == 0 {
			behind.Hi[yAxis] = o.ceiling
		}
		if k == len(docs)-1 {
			behind.Lo[yAxis] = o.floor
		}
		one := Front{Name: f.Name, Of: f.Name, At: f.At, Kind: f.Kind, Column: i + 1, Box: box, Behind: behind, Hinge: f.Hinge.Or("left"), Opens: f.Opens.Or(usualOpening)}
		all = append(all, one.leaves(f.Leaves.Or(1), gap)...)
		top -= heights[k] + gap
	}
	return all
}

// leaves are both leaves of a door that is made of two, left and right, with the gap between them; or the front itself.
func (f Front) leaves(n int, gap unit.Length) []Front {
	if n < 2 || f.Kind != document.DoorFront {
		return []Front{f}
	}
	l, r := f, f
	middle := (f.Box.Lo[xAxis] + f.Box.Hi[xAxis] - gap) / 2
	l.Name, l.Hinge, l.Box.Hi[xAxis] = f.Name+", left", "left", middle
	r.Name, r.Hinge, r.Box.Lo[xAxis] = f.Name+", right", "right", middle+gap
	return []Front{l, r}
}

// usualOpening is how far a cup hinge opens, in degrees (common practice: 95 to 110).
const usualOpening = 95

// frontArea is where the fronts of a column lie: within the opening less the reveal, or over the carcass.
func (b *builder) frontArea(o outline, cols [][2]unit.Length, i int, s good) Box {
	gap := b.r.reveal(o)
	if !o.overlay() {
		return span(cols[i][0]+gap, cols[i][1]-gap, o.floor+gap, o.ceiling-gap, o.d-s.thick, o.d)
	}
	edge := b.r.usual(o.doc.EdgeShows, gap/2, o.doc.At, "the edge reveal of the fronts of "+b.name)
	box := span(edge, o.w-edge, o.floor-o.panels.thick+edge, o.h-edge, o.d, o.d+s.thick)
	if i > 0 {
		box.Lo[xAxis] = (cols[i-1][1]+cols[i][0])/2 + gap/2
	}
	if i < len(cols)-1 {
		box.Hi[xAxis] = (cols[i][1]+cols[i+1][0])/2 - (gap - gap/2)
	}
	return box
}

// heights are those of the fronts of one column. Told ones stand; the others share what is left, to the mark.
func (b *builder) heights(docs []document.Front, free unit.Length) ([]unit.Length, bool) {
	all := make([]unit.Length, len(docs))
	var silent []int
	left := free
	for i, f := range docs {
		if f.Height.Unknown {
			b.r.lacks(f.Height.At, "the height of "+f.Name)
			return nil, false
		}
		if !f.Height.Known {
			silent = append(silent, i)
			continue
		}
		all[i] = f.Height.V
		left -= f.Height.V
	}
	switch {
	case len(silent) == 0 && left != 0:
		b.r.stop("fronts-open", docs[0].At, "the fronts under and with {0} are {1} high together, and there is room for {2}", "make them add up, or leave the height of one of them out", diag.T(docs[0].Name), diag.X(free-left), diag.X(free))
		return nil, false
	case len(silent) > 0 && left <= 0:
		b.r.stop("fronts-open", docs[silent[0]].At, "nothing is left for {0}: the other fronts of its column take {1} of {2}", "make them lower", diag.T(docs[silent[0]].Name), diag.X(free-left), diag.X(free))
		return nil, false
	}
	mark := b.r.mark()
	for k, i := range silent {
		all[i] = (left * unit.Length(k+1) / unit.Length(len(silent))).Round(mark) - (left * unit.Length(k) / unit.Length(len(silent))).Round(mark)
		if k == len(silent)-1 {
			all[i] = left - (left * unit.Length(k) / unit.Length(len(silent))).Round(mark)
		}
	}
	return all, true
}

// front makes one front, its bores and its grip.
func (b *builder) front(o outline, f *Front, s good) {
	doc := b.frontDoc(o, f.Of)
	if f.Kind == document.OpenFront {
		return
	}
	if doc.Made.Or(document.SlabFront) == document.FramedFront {
		b.framedFront(o, *f, s)
	} else {
		b.slabFront(o, *f, s)
	}
	if f.Kind == document.DoorFront {
		b.hang(o, f, s)
	}
	b.grip(o, *f, doc)
}

func (b *builder) frontDoc(o outline, name string) document.Front {
	for _, f := range o.doc.Fronts {
		if f.Name == name {
			return f
		}
	}
	return document.Front{}
}

// slabFront is one piece. Doors have upright grain, and so has all that is matched; drawer fronts and low panels have level
// grain.
func (b *builder) slabFront(o outline, f Front, s good) {
	turn := Upright
	low := f.Kind == document.PanelFront && f.Box.Size(yAxis) < f.Box.Size(xAxis)
	if (low || f.Kind == document.DrawerFront) && !o.doc.Matched.Or(false) {
		turn = Level
	}
	p := b.add(f.Name, s, f.Box, turn, FrontRole)
	p.Of = f.Name
	if o.doc.Banding.Known && !s.solid {
		for _, w := range []way{left, right, up, down} {
			p.band(w, o.band)
		}
	}
}

// framedFront is two stiles, two rails and a panel.
func (b *builder) framedFront(o outline, f Front, s good) {
	fo := o
	fo.frame = s
	panel := b.r.good(o.doc.Stock.FrontPanels, "the panels of framed fronts", o.doc.At)
	if !panel.known {
		return
	}
	if f.Box.Size(xAxis) <= 2*o.stile || f.Box.Size(yAxis) <= 2*o.frameRail {
		b.r.stop("frame-full", f.At, "{0} is {1} x {2}: its stiles and rails leave nothing for a panel", "make it a slab, or its frame narrower", diag.T(f.Name), diag.X(f.Box.Size(xAxis)), diag.X(f.Box.Size(yAxis)))
		return
	}
	l, r := f.Box, f.Box
	l.Hi[xAxis], r.Lo[xAxis] = f.Box.Lo[xAxis]+o.stile, f.Box.Hi[xAxis]-o.stile
	posts := []*Piece{b.add(f.Name+" left stile", s, l, Upright, FrontRole), b.add(f.Name+" right stile", s, r, Upright, FrontRole)}
	for _, p := range posts {
		p.Of = f.Name
	}
	open := f.Box
	open.Lo[xAxis], open.Hi[xAxis] = l.Hi[xAxis], r.Lo[xAxis]
	framing{b: b, o: fo, of: f.Name, posts: posts, turn: Level, panelTurn: Upright, role: FrontRole, face: out, panel: panel, front: f.Name}.fill(open)
}

// match notes the fronts of one column that come from one piece of stock, from the foot up, so that their figure runs on.
func (b *builder) match(o outline) {
	if !o.doc.Matched.Or(false) {
		return
	}
	count := map[unit.Length]int{}
	for i := len(b.pieces) - 1; i >= 0; i-- {
		p := b.pieces[i]
		if p.Role == FrontRole && p.Part.Name == p.Of {
			x := p.Box.Lo[xAxis]
			count[x]++
			p.Part.Match, p.Part.Order = b.name+" from "+b.r.doc.Units.String()+" "+x.JSON(), count[x]
		}
	}
}

// grip routs a pull in the edge of a front, from its back.
func (b *builder) grip(o outline, f Front, doc document.Front) {
	pull := doc.Pull
	if !pull.Given {
		return
	}
	if !pull.Length.Known || !pull.Deep.Known {
		b.r.lacks(pull.At, "the length or the depth of the grip of "+f.Name)
		return
	}
	edge := map[string]way{"top": up, "bottom": down, "left": left, "right": right}[pull.Edge.Or("top")]
	if f.Name != f.Of && f.Hinge == "right" && edge.axis == xAxis { // the right leaf is the left one in a mirror
		edge = edge.opposite()
	}
	box := f.Box
	run := xAxis
	if edge.axis == xAxis {
		run = yAxis
	}
	box.Lo[run] += (box.Size(run) - pull.Length.V) / 2
	box.Hi[run] = box.Lo[run] + pull.Length.V
	if edge.back {
		box.Hi[edge.axis] = box.Lo[edge.axis] + pull.Deep.V
	} else {
		box.Lo[edge.axis] = box.Hi[edge.axis] - pull.Deep.V
	}
	box.Hi[zAxis] = box.Lo[zAxis] + pull.Width.Or(box.Size(zAxis)/2)
	for _, p := range b.pieces {
		if p.Of == f.Name && p.Role == FrontRole && p.holds(box) {
			p.channel(part.Recess, box, edge, "grip")
			return
		}
	}
	b.r.stop("grip-outside", pull.At, "the grip of {0}, {1} long and {2} deep, does not lie in one piece of it", "make it shorter or less deep", diag.T(f.Name), diag.X(pull.Length.V), diag.X(pull.Deep.V))
}

// holds reports whether a box lies in the piece's own.
func (p *Piece) holds(o Box) bool { return p.Box.And(o) == o }
