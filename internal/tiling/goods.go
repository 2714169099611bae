package tiling

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/unit"
)

// good is one tile good as it is laid in one field: its real sizes and the joint.
type good struct {
	tile  document.Tile
	sizes []bond.Size
	joint unit.Length
}

// good resolves a field's tile. It is false where a fact that the layout needs is missing.
func (m *maker) good(f document.Field) (good, bool) {
	t, ok := m.tileNamed(f.Tile.Text)
	if !ok {
		return good{}, false
	}
	g := good{tile: t, sizes: sizes(t), joint: m.joint(f, t)}
	if len(g.sizes) == 0 {
		return good{}, false
	}
	m.dryLay(&g)
	m.lots(t)
	return g, true
}

func (m *maker) tileNamed(name string) (document.Tile, bool) {
	for _, t := range m.doc.Tiles {
		if t.Name == name {
			return t, true
		}
	}
	return document.Tile{}, false
}

// sizes lists the factory sizes as labelled; none if the document does not give them.
func sizes(t document.Tile) []bond.Size {
	if len(t.Set) > 0 {
		var out []bond.Size
		for _, s := range t.Set {
			out = append(out, bond.Size{Name: s.Name, Length: s.Length, Width: s.Width})
		}
		return out
	}
	if !t.Length.Known || !t.Width.Known {
		return nil
	}
	return []bond.Size{{Length: t.Length.V, Width: t.Width.V}}
}

// joint is the field's, else the tile's, else a stated default: 1/8 in or 3 mm.
func (m *maker) joint(f document.Field, t document.Tile) unit.Length {
	switch {
	case f.Joint.Known:
		return f.Joint.V
	case t.Joint.Known:
		return t.Joint.V
	}
	d := unit.Inch / 8
	if m.doc.Units == unit.Millimetres {
		d = 3 * unit.Millimetre
	}
	m.assume(f.At, "joint of {0} taken as {1}", "common practice", diag.T(t.Name), diag.F(d))
	return d
}

// dryLay replaces the label's size along one side by what a row of tiles really measured: ten tiles and nine 3 mm
// joints of 3,021 mm make a tile of 299.4 mm. The row's own joints are taken off, whatever joint is set later.
func (m *maker) dryLay(g *good) {
	d := g.tile.DryLay
	if !d.Given || d.Tiles <= 0 || len(g.tile.Set) > 0 {
		return
	}
	real := (d.Length - unit.Length(d.Joints)*d.Joint).MulDiv(1, int64(d.Tiles))
	side := &g.sizes[0].Length
	if d.Along.Or("length") == "width" {
		side = &g.sizes[0].Width
	}
	if off := (real - *side).Abs(); off > side.MulDiv(1, dryLayDoubt) {
		m.found(diag.Look, "dry-lay-doubtful", d.At,
			"the dry lay makes {0} {1} instead of {2}: more than a lot of tile can differ",
			"count the tiles and joints of the row again; a row of n tiles has n-1 joints",
			diag.T(g.tile.Name), diag.F(real), diag.F(*side))
		return
	}
	m.found(diag.Note, "dry-lay", d.At, "{0} is really {1} where the label says {2}: the dry lay counts", "",
		diag.T(g.tile.Name), diag.F(real), diag.F(*side))
	*side = real
}

// lots: tiles of two lots differ in shade, tiles of two calibers in size.
func (m *maker) lots(t document.Tile) {
	if strings.Contains(t.Lot.V, ",") {
		m.found(diag.Look, "lots-mixed", t.Lot.At, "{0} comes in more than one lot: {1}",
			"mix tiles of all boxes as you lay, or keep each lot to a face of its own", diag.T(t.Name), diag.T(t.Lot.V))
	}
	if strings.Contains(t.Caliber.V, ",") {
		m.found(diag.Look, "calibers-mixed", t.Caliber.At, "{0} comes in more than one caliber, so its sizes differ: {1}",
			"send back all but one caliber; joints can not take up the difference", diag.T(t.Name), diag.T(t.Caliber.V))
	}
}

// dryLayDoubt: a dry lay off by more than a fiftieth (2 %) of the label is a slip of counting, since dry-pressed
// tile of one lot keeps within 0.6 % (ISO 13006, from memory).
const dryLayDoubt = 50

// variation and warpage fall back to stated defaults; unknown stays said.
func (m *maker) variation(t document.Tile) unit.Length {
	return m.assumedLength(t.Variation, t, "variation in size", defaultVariation)
}

func (m *maker) warpage(t document.Tile) unit.Length {
	return m.assumedLength(t.Warpage, t, "warpage", defaultWarpage)
}

// Defaults for a tile that nobody has measured yet; the measuring card asks for ten tiles and a straightedge.
const (
	defaultVariation = unit.Inch / 32 // common practice
	defaultWarpage   = unit.Inch / 32 // common practice
)

func (m *maker) assumedLength(v document.Value[unit.Length], t document.Tile, what string, d unit.Length) unit.Length {
	if v.Known {
		return v.V
	}
	at := v.At
	if at.Path == "" {
		at = t.At
	}
	m.assume(at, "{0} of {1} taken as {2}: measure ten tiles (measuring card)", "common practice",
		diag.T(what), diag.T(t.Name), diag.F(d))
	return d
}

// large reports whether any side is over 15 in (ANSI A108.02).
func (g good) large() bool {
	for _, s := range g.sizes {
		if max(s.Length, s.Width) > rule.LargeSide.Limit {
			return true
		}
	}
	return false
}
