// Package place puts what is fixed in a room where the document says: tops and cabinets, basins and taps, traps and stops, WCs,
// doors, boxes, fittings, each on the finished faces. It takes the document and the solved room and gives positions as figures,
// which know the facts that they hang on, and the room that each thing takes as envelopes.
//
// Positions on a wall are x along it from its board's left corner, y up from the level line and off, the distance from the
// finished face there into the room. Nothing is judged here: what lacks its facts is a figure with something missing.
package place

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/site"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Plan is everything that is placed.
type Plan struct {
	Floor    figure.Figure // the finished floor over the level line
	FloorUp  figure.Figure // what lies on the bare floor
	Walls    []Wall
	Cabinets []Cabinet
	Tops     []Top
	Basins   []Basin
	Taps     []Tap
	Stubs    []Stub
	Wastes   []Waste
	Stops    []Stop
	WCs      []WC
	Doors    []Door
	Boxes    []Box
	Fittings []Fitting
	// Solids are the envelopes of what could be placed whole, in the order of the lists above.
	Solids []space.Envelope
}

// placer carries one room while its things are placed.
type placer struct {
	doc  document.Room
	room site.Room
	out  Plan
}

// Make places all that the document has.
func Make(doc document.Room, room site.Room) Plan {
	p := &placer{doc: doc, room: room}
	p.walls()
	p.out.Floor, p.out.FloorUp = p.floor(), p.FloorBuildUp()
	p.stubs()
	p.cabinets()
	p.tops()
	p.basins()
	p.taps()
	p.wastes()
	p.stops()
	p.wcs()
	p.doors()
	p.boxes()
	p.fittings()
	p.trims()
	return p.out
}

// fact is a length that the document states under a key of something, or a missing one.
func fact(v document.Value[unit.Length], owner diag.Place, key string) figure.Figure {
	path := under(owner, key)
	if v.Known {
		return figure.Fact(path, v.V)
	}
	return figure.Missing(path)
}

// factOr is a length that may be silent: then it is what silence means. Unknown is not silent.
func factOr(v document.Value[unit.Length], owner diag.Place, key string, silent unit.Length) figure.Figure {
	if v.Known || v.Unknown {
		return fact(v, owner, key)
	}
	return figure.Number(silent)
}

func under(owner diag.Place, key string) string {
	if owner.Path == "" {
		return key
	}
	return owner.Path + " > " + key
}

// solid adds an envelope.
func (p *placer) solid(e space.Envelope) { p.out.Solids = append(p.out.Solids, e) }

// span is the stretch between two figures; false where one is not known or nothing is between them.
func span(lo, hi figure.Figure) (space.Span, bool) {
	return space.Span{Lo: lo.V, Hi: hi.V}, lo.Known() && hi.Known() && lo.V < hi.V
}

// facts are all that some figures hang on.
func facts(list ...figure.Figure) []string {
	var f figure.Figure
	for _, g := range list {
		f = f.Using(g.Facts()...)
	}
	return f.Used
}
