package plan

import (
	"slices"
	"strings"

	"dryfit/internal/clash"
	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/place"
	"dryfit/internal/site"
	"dryfit/internal/space"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// clashes hands the envelopes of all trades over. A cabinet whose parts are worked out is no longer one block.
func clashes(p *Plan, _ Options) told {
	var all []space.Envelope
	for _, e := range p.Fit.Solids {
		if e.Kind != space.Carcass || !built(p.Wood, e.Owner) {
			all = append(all, e)
		}
	}
	for _, f := range p.Room.Faces {
		all = append(all, inWall(f)...)
	}
	all = append(all, tiles(p.Tiling)...)
	for _, c := range p.Wood.Cabinets {
		if w, ok := p.Fit.Places.Wall(c.Wall); ok && p.Room.FinishedKnown {
			all = append(all, cabinet(c, w, p.Room.FinishedFloor)...)
		}
	}
	met, findings := clash.Make(all)
	p.Clash = met
	return told{findings: findings}
}

// drawerCuts are what clears plumbing, to be carried into the parts of the drawers before these are sawn.
func drawerCuts(p Plan, wood joinery.Plan) []joinery.DrawerCut {
	var cuts []joinery.DrawerCut
	for _, c := range wood.Cabinets {
		w, ok := p.Fit.Places.Wall(c.Wall)
		if !ok || !p.Room.FinishedKnown || len(c.Drawers) == 0 {
			continue
		}
		all := append(slices.Clone(p.Fit.Solids), cabinet(c, w, p.Room.FinishedFloor)...)
		for _, k := range clash.CutOuts(all) {
			drawer := strings.TrimPrefix(k.Drawer, c.Name+", ")
			cuts = append(cuts, joinery.DrawerCut{Cabinet: c.Name, Drawer: drawer, For: strings.Join(k.For, ", "), From: k.From, To: k.To, Deep: k.Deep, Up: k.Up})
		}
	}
	return cuts
}

func built(wood joinery.Plan, owner string) bool {
	for _, c := range wood.Cabinets {
		if c.At.Path == owner && len(c.Pieces) > 0 {
			return true
		}
	}
	return false
}

// inWall are what is recorded in a wall.
func inWall(f site.Face) []space.Envelope {
	kinds := map[string]space.Kind{"stud": space.Stud, "blocking": space.Blocking, "pipe": space.Pipe, "cable": space.Cable, "nail plate": space.NailPlate}
	var out []space.Envelope
	for _, b := range f.Buried {
		out = append(out, space.Envelope{Name: b.Name, Owner: b.At.Path, At: b.At, Kind: kinds[b.Kind], Wall: f.Name, X: space.Span{Lo: b.Rect.Min.X, Hi: b.Rect.Max.X}, Y: space.Span{Lo: b.Rect.Min.Y, Hi: b.Rect.Max.Y},
			Uses: []string{b.At.Path + " > across", b.At.Path + " > up"}})
	}
	return out
}

// tiles are the pieces of tile of the chosen layouts, with their outlines on the face.
func tiles(laid tiling.Plan) []space.Envelope {
	var out []space.Envelope
	for _, f := range laid.Faces {
		for _, field := range f.Fields {
			for _, piece := range field.Chosen().Pieces {
				for _, ring := range piece.OnFace {
					if ring.Area2() <= 0 {
						continue
					}
					b := ring.Bounds()
					out = append(out, space.Envelope{Name: f.Mark + " " + piece.Address, Owner: field.At.Path, At: field.At, Kind: space.Tile, Wall: f.Name, Face: ring,
						X: space.Span{Lo: b.Min.X, Hi: b.Max.X}, Y: space.Span{Lo: b.Min.Y, Hi: b.Max.Y}})
				}
			}
		}
	}
	return out
}

// cabinet are the parts of a cabinet, its drawers and the ways of its fronts. A cabinet's frame counts x from its left side, y from the finished floor.
func cabinet(c joinery.Cabinet, w place.Wall, floor unit.Length) []space.Envelope {
	var out []space.Envelope
	put := func(name string, kind space.Kind, b joinery.Box) space.Envelope {
		e := space.Envelope{Name: c.Name + ", " + name, Owner: c.At.Path, At: c.At, Kind: kind, Uses: []string{c.At.Path}}
		return w.Frame.Box(e, space.Span{Lo: c.X + b.Lo[0], Hi: c.X + b.Hi[0]}, space.Span{Lo: floor + b.Lo[1], Hi: floor + b.Hi[1]}, space.Span{Lo: b.Lo[2], Hi: b.Hi[2]})
	}
	for _, p := range c.Pieces {
		switch p.Role {
		case joinery.DrawerRole, joinery.FrontRole:
		case joinery.ShelfRole:
			out = append(out, put(p.Part.Name, space.Shelf, p.Box))
		default:
			for _, b := range p.Solid() {
				out = append(out, put(p.Part.Name, space.Panel, b))
			}
		}
	}
	travel := map[string]unit.Length{}
	for _, d := range c.Drawers {
		e := put(d.Name, space.Drawer, d.Box)
		e.Travel = d.Travel
		travel[d.Name] = d.Travel
		out = append(out, e)
	}
	for _, f := range c.Fronts {
		b := f.Box
		switch f.Kind {
		case document.DrawerFront:
			b.Lo[2], b.Hi[2] = b.Hi[2], b.Hi[2]+travel[f.Name]
			if travel[f.Name] > 0 {
				out = append(out, put(f.Name+", drawn out", space.Pull, b))
			}
		case document.DoorFront:
			wide := b.Hi[0] - b.Lo[0]
			b.Lo[2], b.Hi[2] = b.Hi[2], b.Hi[2]+wide
			out = append(out, put(f.Name+", opening", space.Swing, b))
		}
	}
	for i, s := range c.Hung {
		e := space.Envelope{Name: c.Name + ", screw " + string(rune('1'+i%9)), Owner: c.At.Path, At: c.At, Kind: space.Screw, Wall: c.Wall, Round: true, Holds: true, Uses: []string{c.At.Path + " > screws"},
			X: space.Span{Lo: s.X, Hi: s.X}, Y: space.Span{Lo: s.Y, Hi: s.Y}, High: space.Span{Lo: s.Y, Hi: s.Y}}
		out = append(out, e)
	}
	return out
}
